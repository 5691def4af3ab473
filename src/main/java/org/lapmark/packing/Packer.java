package org.lapmark.packing;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.lapmark.geometry.Affine;

/**
 * Arranges shapes on islands of tiles so that as few tiles as possible carry something, then so
 * that as few lines between tiles as possible are crossed by a shape, then so that what is left
 * free lies together.
 *
 * <p>Shapes are placed one after the other at the best free place; then, again and again, a few
 * tiles, emptier ones more often, or a few islands are cleared and their shapes placed anew in
 * another order, keeping what isn't worse; what would take more tiles than before is given up
 * halfway. The random choices start from a stated seed. Shapes are compared as cells of 1 by 2 mm
 * that cover them, so that they never overlap and lie apart by the gap at least, and by 4 mm more
 * at most where they could touch.
 */
public final class Packer {
  /** How many arrangements on one tile are tried for the one that reaches least far down. */
  private static final int ONE_TILE_STARTS = 30;

  /** A limit on the tiles a side of an island, which bounds the work on absurd shapes. */
  private static final int MAX_SIDE = 60;

  /** How much worse than now an arrangement may have been so many steps ago. */
  private static final int MEMORY = 20;

  /** A join weighs so much of a tile while searching. */
  private static final double JOIN = 0.005;

  /** Free room that lies together counts so much of a tile while searching. */
  private static final double TOGETHER = 0.1;

  /**
   * Full tiles beside empty ones count so much more of a tile than all equally full, while
   * searching: an emptier one is on its way out.
   */
  private static final double UNEVEN = 0.3;

  /** How often tiles are cleared rather than whole islands. */
  private static final double TILES_CLEARED = 0.9;

  /** How many tiles are cleared at most. */
  private static final int MOST_CLEARED = 3;

  /** Of so many tiles the emptiest is cleared. */
  private static final int EMPTIEST_OF = 3;

  private final List<Shape> shapes;
  private final TileGrid grid;
  private final Searcher searcher;
  private final SplittableRandom random;

  /** The islands that were there before; they come first and are never given up. */
  private List<Board> kept = List.of();

  private Packer(List<Shape> shapes, TileGrid grid, Search search) {
    this.shapes = shapes;
    this.grid = grid;
    List<List<Turned>> turned = new ArrayList<>();
    for (Shape shape : shapes) {
      turned.add(turns(shape, search.gap()));
    }
    this.searcher = new Searcher(shapes, turned, grid);
    this.random = new SplittableRandom(search.seed());
  }

  private static List<Turned> turns(Shape shape, double gap) {
    List<Turned> list = new ArrayList<>();
    for (double angle : shape.angles()) {
      Turned turn = Turned.of(shape.outline(), angle, gap);
      if (list.stream().noneMatch(turn::sameCells)) {
        list.add(turn);
      }
    }
    return list;
  }

  /**
   * Arranges shapes.
   *
   * @param shapes the shapes; one that must lie in a first tile has to fit there
   * @param grid the tiles
   * @param search how long to search
   * @return a place for every shape; the islands in the order in which they were opened
   * @throws IllegalArgumentException when a shape would need more than 60 tiles a side, or must lie
   *     in one tile and is too large for it
   */
  public static Arrangement pack(List<Shape> shapes, TileGrid grid, Search search) {
    return pack(
        shapes,
        grid,
        search,
        Collections.nCopies(shapes.size(), Optional.<Placement>empty()),
        List.of());
  }

  /**
   * Arranges shapes some of which have their place already.
   *
   * @param shapes the shapes
   * @param grid the tiles
   * @param search how long to search
   * @param fixed where each shape lies already, if it does; these must not overlap each other
   * @param islands the islands that there are already; they keep their order and size, and further
   *     ones come behind them
   * @return a place for every shape
   * @throws IllegalArgumentException when a shape would need more than 60 tiles a side, or must lie
   *     in one tile and is too large for it
   */
  public static Arrangement pack(
      List<Shape> shapes,
      TileGrid grid,
      Search search,
      List<Optional<Placement>> fixed,
      List<Island> islands) {
    if (shapes.isEmpty()) {
      return new Arrangement(List.of(), List.of(), 0, 0);
    }
    Packer packer = new Packer(shapes, grid, search);
    Solution best = packer.solution(fixed, islands, search);
    return arrangement(best, packer.places(best, fixed));
  }

  /**
   * Arranges shapes, and then one of several guests, each of which lies in one tile: the first for
   * which there is room between the shapes or, failing that, in the guesthouse, so that it takes no
   * tile of its own.
   *
   * @param shapes the shapes, one at least
   * @param grid the tiles
   * @param search how long to search
   * @param fixed where each shape lies already, if it does; these must not overlap each other
   * @param islands the islands that there are already
   * @param guests the guests, the preferred one first
   * @param guesthouse where a guest may lie on a shape
   * @return nothing when there is no room for any of the guests
   * @throws IllegalArgumentException when a shape would need more than 60 tiles a side
   */
  public static Optional<Hosted> host(
      List<Shape> shapes,
      TileGrid grid,
      Search search,
      List<Optional<Placement>> fixed,
      List<Island> islands,
      List<Shape> guests,
      Guesthouse guesthouse) {
    List<Shape> all = new ArrayList<>(shapes);
    for (Shape guest : guests) {
      all.add(new Shape(guest.outline(), guest.angles(), true));
    }
    Packer packer = new Packer(all, grid, search);
    Solution best = packer.solution(fixed, islands, search);
    List<Placement> places = packer.places(best, fixed);
    Arrangement arrangement = arrangement(best, places);
    for (int guest = 0; guest < guests.size(); guest++) {
      Optional<Placement> place = packer.between(best, shapes.size() + guest);
      if (place.isEmpty()) {
        place = guesthouse.place(guest, places, arrangement.islands());
      }
      if (place.isPresent()) {
        return Optional.of(new Hosted(arrangement, guest, place.get()));
      }
    }
    return Optional.empty();
  }

  /** A place that costs nothing, on the fullest island that has one. */
  private Optional<Placement> between(Solution solution, int shape) {
    int where = -1;
    Place best = Place.NONE;
    List<Board> boards = solution.boards();
    for (int b = 0; b < boards.size(); b++) {
      for (int t = searcher.firstTurn(shape); t < searcher.endTurn(shape); t++) {
        Place place = searcher.find(boards.get(b), shape, t);
        boolean free = place.turn() >= 0 && place.costsNothing();
        if (free && (where < 0 || boards.get(b).free() < boards.get(where).free())) {
          where = b;
          best = place;
        }
      }
    }
    return where < 0
        ? Optional.empty()
        : Optional.of(
            placement(
                where,
                new Board.Put(shape, searcher.turned(best.turn()), best.x(), best.y(), false)));
  }

  /** Arranges as many shapes as there are places; those behind them are guests. */
  private Solution solution(List<Optional<Placement>> fixed, List<Island> islands, Search search) {
    List<Board> boards = new ArrayList<>();
    for (Island island : islands) {
      boards.add(searcher.empty().sized(island.columns(), island.rows()));
    }
    List<Integer> loose = new ArrayList<>();
    for (int i = 0; i < fixed.size(); i++) {
      if (fixed.get(i).isEmpty()) {
        loose.add(i);
        continue;
      }
      Placement placement = fixed.get(i).get();
      Turned turned =
          Turned.of(
              shapes.get(i).outline(), placement.map(), search.gap(), grid.edge(), grid.edge());
      boards.set(
          placement.island(),
          boards.get(placement.island()).with(new Board.Put(i, turned, 0, 0, true)));
    }
    kept = boards;
    return search(boards, loose, fixed.size(), search);
  }

  /** Boards with what they cost. */
  private record Solution(
      List<Board> boards, int tiles, int joins, int reach, double together, double uneven)
      implements Comparable<Solution> {
    static Solution of(List<Board> boards) {
      int tiles = 0;
      int joins = 0;
      double together = 0;
      double uneven = 0;
      for (Board board : boards) {
        tiles += board.tiles();
        joins += board.joins();
        together += board.free() * board.free() / Math.max(1, board.tiles());
        uneven += board.uneven();
      }
      int reach = boards.size() == 1 ? boards.get(0).lastRow() : 0;
      return new Solution(boards, tiles, joins, reach, together, uneven);
    }

    double weight() {
      return tiles + JOIN * joins - TOGETHER * together - UNEVEN * uneven;
    }

    @Override
    public int compareTo(Solution other) {
      int byTiles = Integer.compare(tiles, other.tiles);
      int byJoins = byTiles != 0 ? byTiles : Integer.compare(joins, other.joins);
      int byReach = byJoins != 0 ? byJoins : Integer.compare(reach, other.reach);
      return byReach != 0 ? byReach : Double.compare(other.together, together);
    }
  }

  private Solution search(List<Board> fixed, List<Integer> loose, int count, Search search) {
    Solution best = null;
    for (int start = 0;
        start < 2 || (start < ONE_TILE_STARTS && best.boards().size() == 1);
        start++) {
      if (best != null && searcher.work() > search.work()) {
        break;
      }
      List<Board> boards = new ArrayList<>(fixed);
      place(
          boards, ordered(loose, start % 2 == 1, start < 2 ? 0 : 0.4), false, 0, Integer.MAX_VALUE);
      Solution solution = Solution.of(boards);
      best = best == null || solution.compareTo(best) < 0 ? solution : best;
    }
    long cells = 0;
    for (int i = 0; i < count; i++) {
      cells += searcher.turned(searcher.firstTurn(i)).cells();
    }
    int least = leastTiles(cells);
    Solution now = best;
    double[] memory = new double[MEMORY];
    java.util.Arrays.fill(memory, now.weight());
    int idle = 0;
    int patience = Math.max(search.patience(), search.patience() * loose.size() / 4);
    for (int run = 0; run < search.runs(); run++) {
      if (searcher.work() > search.work() || idle > patience) {
        break;
      }
      if (best.tiles() <= least && best.joins() == 0) {
        break;
      }
      Optional<Solution> varied =
          random.nextDouble() < TILES_CLEARED ? withTilesCleared(now) : withIslandsCleared(now);
      idle++;
      if (varied.isPresent()) {
        Solution next = varied.get();
        double weight = next.weight();
        if (weight <= now.weight() || weight <= memory[run % MEMORY]) {
          now = next;
        }
        if (next.tiles() < best.tiles()
            || (next.tiles() == best.tiles() && next.joins() < best.joins())) {
          idle = 0;
        }
        if (next.compareTo(best) < 0) {
          best = next;
        }
      }
      memory[run % MEMORY] = now.weight();
    }
    return best;
  }

  /** No arrangement does with fewer tiles than the shapes' areas fill. */
  private int leastTiles(long cells) {
    // Cells overstate the area along the outline; a tenth is more than they can.
    return (int) Math.max(1, Math.ceil(0.9 * Turned.ROW * cells / (grid.width() * grid.height())));
  }

  private List<Integer> ordered(List<Integer> list, boolean bySide, double noise) {
    double[] keys = new double[shapes.size()];
    for (int i : list) {
      Turned turned = searcher.turned(searcher.firstTurn(i));
      double key = bySide ? Math.max(turned.width(), turned.height() * Turned.ROW) : turned.cells();
      keys[i] = noise > 0 ? key * (1 + noise * (2 * random.nextDouble() - 1)) : key;
    }
    return list.stream()
        .sorted(Comparator.<Integer>comparingDouble(i -> -keys[i]).thenComparing(i -> i))
        .toList();
  }

  /** Clears a few tiles and places their shapes anew; nothing if that takes more tiles. */
  private Optional<Solution> withTilesCleared(Solution from) {
    List<Board> boards = new ArrayList<>(from.boards());
    TreeMap<Integer, BitSet> cleared = new TreeMap<>();
    int count = 1 + random.nextInt(MOST_CLEARED);
    for (int i = 0; i < count; i++) {
      clearOne(boards, cleared);
    }
    List<Integer> loose = new ArrayList<>();
    for (int index : cleared.descendingKeySet()) {
      Board old = boards.get(index);
      Board board = index < kept.size() ? kept.get(index) : searcher.empty();
      boolean left = index < kept.size();
      for (int i = 0; i < old.puts().size(); i++) {
        Board.Put put = old.puts().get(i);
        if (cleared.get(index).get(i)) {
          loose.add(put.shape());
        } else if (!put.fixed()) {
          board = board.with(put);
          left = true;
        }
      }
      searcher.countRows(board.lastRow());
      if (left) {
        boards.set(index, board);
      } else {
        boards.remove(index);
      }
    }
    Collections.sort(loose);
    return place(
            boards,
            ordered(loose, random.nextInt(3) == 0, 0.05 + 0.3 * random.nextDouble()),
            random.nextBoolean(),
            0.01,
            from.tiles())
        ? Optional.of(Solution.of(boards))
        : Optional.empty();
  }

  /** Chooses a tile, and marks what reaches into it by its box, by board. */
  private void clearOne(List<Board> boards, TreeMap<Integer, BitSet> cleared) {
    int emptiest = -1;
    int row = 0;
    int column = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < EMPTIEST_OF; i++) {
      int index = random.nextInt(boards.size());
      Board board = boards.get(index);
      int tile = random.nextInt(board.columns() * board.tileRows());
      double filled = board.filled(tile / board.columns(), tile % board.columns());
      if (filled > 0 && filled < least) {
        least = filled;
        emptiest = index;
        row = tile / board.columns();
        column = tile % board.columns();
      }
    }
    if (emptiest >= 0) {
      Board board = boards.get(emptiest);
      BitSet marked = cleared.computeIfAbsent(emptiest, key -> new BitSet());
      for (int i = 0; i < board.puts().size(); i++) {
        if (!board.puts().get(i).fixed() && board.reaches(board.puts().get(i), row, column)) {
          marked.set(i);
        }
      }
    }
  }

  /** Clears a few islands and places their shapes anew; nothing if that takes more tiles. */
  private Optional<Solution> withIslandsCleared(Solution from) {
    List<Board> boards = new ArrayList<>(from.boards());
    int count = 2 + random.nextInt(2);
    TreeSet<Integer> cleared = new TreeSet<>();
    for (int i = 0; i < count && i < boards.size(); i++) {
      int one = random.nextInt(boards.size());
      // Of two, the one with more room is more often worth it.
      int other = random.nextInt(boards.size());
      cleared.add(boards.get(one).free() >= boards.get(other).free() ? one : other);
    }
    List<Integer> loose = new ArrayList<>();
    for (int index : cleared.descendingSet()) {
      for (Board.Put put : boards.get(index).puts()) {
        if (!put.fixed()) {
          loose.add(put.shape());
        }
      }
      if (index < kept.size()) {
        boards.set(index, kept.get(index));
      } else {
        boards.remove(index);
      }
    }
    Collections.sort(loose);
    return place(
            boards,
            ordered(loose, random.nextInt(3) == 0, 0.05 + 0.2 * random.nextDouble()),
            random.nextBoolean(),
            0.05,
            from.tiles())
        ? Optional.of(Solution.of(boards))
        : Optional.empty();
  }

  /** Places shapes; false as soon as that takes more tiles than a limit. */
  private boolean place(
      List<Board> boards, List<Integer> order, boolean grow, double blink, int limit) {
    int old = boards.size();
    int tiles = 0;
    for (Board board : boards) {
      tiles += board.tiles();
    }
    for (int shape : order) {
      Place best = Place.NONE;
      int where = -1;
      double room = Double.POSITIVE_INFINITY;
      for (int b : fullestFirst(boards)) {
        Board board = boards.get(b);
        if (best.turn() >= 0 && best.costsNothing() && board.free() > room + 1e-9) {
          // None of those that follow is better.
          break;
        }
        if (blink > 0 && random.nextDouble() < blink) {
          continue;
        }
        for (int t = searcher.firstTurn(shape); t < searcher.endTurn(shape); t++) {
          Place place = searcher.find(board, shape, t);
          int order1 = place.turn() < 0 ? 1 : place.compareCost(best);
          // Among equals the fuller board, then what reaches least far.
          if (order1 < 0
              || (order1 == 0 && board.free() < room - 1e-9)
              || (order1 == 0 && where == b && reach(place) < reach(best))) {
            best = place;
            where = b;
            room = board.free();
          }
        }
      }
      if (grow && searcher.large(shape) && !best.costsNothing()) {
        for (int b = 0; b < boards.size(); b++) {
          if (b < kept.size() || (b < old && random.nextInt(20) > 0)) {
            continue;
          }
          for (int t = searcher.firstTurn(shape); t < searcher.endTurn(shape); t++) {
            Place place = searcher.findGrowing(boards.get(b), shape, t);
            if (place.compareCost(best) < 0) {
              best = place;
              where = b;
            }
          }
        }
      }
      if (best.newTiles() > 0) {
        List<Place> alone = searcher.alone(shape);
        if (!alone.isEmpty() && alone.get(0).compareCost(best) <= 0) {
          best = alone.get(blink > 0 ? random.nextInt(alone.size()) : 0);
          where = boards.size();
          boards.add(searcher.empty());
        }
      }
      tiles += best.newTiles();
      if (tiles > limit) {
        return false;
      }
      if (best.turn() < 0) {
        throw new IllegalArgumentException("shape " + shape + " does not fit");
      }
      boards.set(
          where,
          boards
              .get(where)
              .with(new Board.Put(shape, searcher.turned(best.turn()), best.x(), best.y(), false)));
    }
    return true;
  }

  private static int[] fullestFirst(List<Board> boards) {
    double[] free = new double[boards.size()];
    int[] order = new int[free.length];
    for (int i = 0; i < free.length; i++) {
      free[i] = boards.get(i).free();
      int at = i;
      for (; at > 0 && free[order[at - 1]] > free[i]; at--) {
        order[at] = order[at - 1];
      }
      order[at] = i;
    }
    return order;
  }

  private long reach(Place place) {
    Turned turned = searcher.turned(place.turn());
    return (long) (place.y() + turned.height()) * 100_000 + place.x() + turned.width();
  }

  private static Arrangement arrangement(Solution solution, List<Placement> places) {
    List<Island> islands =
        solution.boards().stream()
            .map(board -> new Island(board.columns(), board.tileRows()))
            .toList();
    return new Arrangement(places, islands, solution.tiles(), solution.joins());
  }

  private List<Placement> places(Solution solution, List<Optional<Placement>> fixed) {
    Placement[] places = new Placement[fixed.size()];
    for (int island = 0; island < solution.boards().size(); island++) {
      for (Board.Put put : solution.boards().get(island).puts()) {
        places[put.shape()] =
            put.fixed() ? fixed.get(put.shape()).orElseThrow() : placement(island, put);
      }
    }
    return List.of(places);
  }

  private Placement placement(int island, Board.Put put) {
    Turned turned = put.turned();
    double x = grid.edge() + put.x() - turned.minX();
    double y = grid.edge() + put.y() * Turned.ROW - turned.minY();
    return new Placement(island, Affine.translation(x, y).after(turned.turn()));
  }

  static int maxSide() {
    return MAX_SIDE;
  }
}
