package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
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
  /** More than cells make a shape larger by, in millimetres. */
  private static final double ROUNDED_UP = 20;

  /** How many arrangements on one tile are tried for the one that reaches least far down. */
  private static final int ONE_TILE_STARTS = 30;

  /** How much worse than now an arrangement may have been so many steps ago. */
  private static final int MEMORY = 20;

  /** How often tiles are cleared rather than whole islands. */
  private static final double TILES_CLEARED = 0.9;

  private final List<Shape> shapes;
  private final TileGrid grid;
  private final Searcher searcher;
  private final SplittableRandom random;

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
   * Whether a shape has a place on an island of its own as it stands, which all arranging falls
   * back on: told by its box, with more room than cells round it up by.
   *
   * @param width its box's width in millimetres
   * @param height its box's height in millimetres
   * @param grid the tiles
   */
  public static boolean isSurelyPlaced(double width, double height, TileGrid grid) {
    return grid.columns(width + grid.edge() + ROUNDED_UP) <= Searcher.MAX_SIDE
        && grid.rows(height + grid.edge() + ROUNDED_UP) <= Searcher.MAX_SIDE;
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
  public static Optional<ShapesWithGuest> host(
      List<Shape> shapes,
      TileGrid grid,
      Search search,
      List<Optional<Placement>> fixed,
      List<Island> islands,
      List<Shape> guests,
      GuestPlaces guesthouse) {
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
        return Optional.of(new ShapesWithGuest(arrangement, guest, place.get()));
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
                new PlacedShape(shape, searcher.turned(best.turn()), best.x(), best.y(), false)));
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
          boards.get(placement.island()).with(new PlacedShape(i, turned, 0, 0, true)));
    }
    return search(boards, loose, fixed.size(), search);
  }

  private Solution search(List<Board> fixed, List<Integer> loose, int count, Search search) {
    Placer placer = new Placer(searcher, random, fixed.size());
    Clearing clearing = new Clearing(placer, searcher, random, fixed);
    Solution best = null;
    for (int start = 0;
        start < 2 || (start < ONE_TILE_STARTS && best.boards().size() == 1);
        start++) {
      if (best != null && searcher.work() > search.work()) {
        break;
      }
      List<Board> boards = new ArrayList<>(fixed);
      placer.place(
          boards,
          placer.ordered(loose, start % 2 == 1, start < 2 ? 0 : 0.4),
          false,
          0,
          Integer.MAX_VALUE);
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
    Arrays.fill(memory, now.weight());
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
          random.nextDouble() < TILES_CLEARED
              ? clearing.withTilesCleared(now)
              : clearing.withIslandsCleared(now);
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
      for (PlacedShape put : solution.boards().get(island).puts()) {
        places[put.shape()] =
            put.fixed() ? fixed.get(put.shape()).orElseThrow() : placement(island, put);
      }
    }
    return List.of(places);
  }

  private Placement placement(int island, PlacedShape put) {
    Turned turned = put.turned();
    double x = grid.edge() + put.x() - turned.minX();
    double y = grid.edge() + put.y() * Turned.ROW - turned.minY();
    return new Placement(island, Affine.translation(x, y).after(turned.turn()));
  }
}
