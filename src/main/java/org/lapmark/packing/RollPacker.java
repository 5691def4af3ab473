package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.packing.strip.Pose;
import org.lapmark.packing.strip.StripArrangement;
import org.lapmark.packing.strip.StripPacker;
import org.lapmark.packing.strip.StripSearch;
import org.lapmark.packing.strip.StripShape;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Arranges shapes on sheets that are cut off a roll, so that all sheets together are as short as a
 * bounded search finds. A sheet is a tile whose height is the most that it may have; how much of it
 * is used shows from what lies on it.
 *
 * <p>Shapes that fit across the roll lie on sheets of one tile, which aren't joined. The others lie
 * on islands of as many tiles side by side as make all of them shortest, and what fits beside them
 * without making a tile longer or crossing a line between tiles lies there too.
 */
public final class RollPacker {
  private static final int RUNS = 4000;
  private static final long WORK = 8_000_000L;

  /** So many columns more than it needs are tried for an island. */
  private static final int WIDER = 3;

  private final List<Shape> shapes;
  private final TileGrid grid;
  private final StripSearch search;
  private final GuestPlaces guesthouse;
  private final double across;
  private final double along;
  private final Searcher searcher;
  private final List<Island> islands = new ArrayList<>();
  private final Placement[] places;

  private RollPacker(List<Shape> shapes, TileGrid grid, Search search, GuestPlaces guesthouse) {
    this.shapes = shapes;
    this.grid = grid;
    this.search = new StripSearch(search.gap(), RUNS, WORK, search.seed());
    this.guesthouse = guesthouse;
    this.across = grid.width() - 2 * grid.edge();
    this.along = grid.height() - 2 * grid.edge();
    List<List<Turned>> turned = new ArrayList<>();
    for (Shape shape : shapes) {
      turned.add(
          shape.angles().stream()
              .map(angle -> Turned.of(shape.outline(), angle, search.gap()))
              .toList());
    }
    this.searcher = new Searcher(shapes, turned, grid);
    this.places = new Placement[shapes.size()];
  }

  /**
   * Arranges shapes.
   *
   * @param shapes the shapes; the first lies at the beginning of its sheet
   * @param grid the tiles: as wide as the roll, as high as a sheet may be long
   * @param search the gap, and what random choices start from
   * @param guesthouse where the first shape, as guest 0, lies on another when only a sheet of its
   *     own would be left for it, and where a second one like it, as guest 1, lies at the far end
   * @return a place for every shape, and one more where there is room for another like the first
   *     near the end of its sheet
   */
  public static Arrangement pack(
      List<Shape> shapes, TileGrid grid, Search search, GuestPlaces guesthouse) {
    return new RollPacker(shapes, grid, search, guesthouse).arranged();
  }

  private Arrangement arranged() {
    List<Integer> narrow = new ArrayList<>();
    List<Integer> wide = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      (fits(i) ? narrow : wide).add(i);
    }
    for (Strip strip : grouped(wide)) {
      add(strip);
      fill(islands.size() - 1, narrow);
    }
    boolean guest = narrow.equals(List.of(0)) && shapes.size() > 1;
    Optional<Placement> place = guest ? guesthouse.place(0, others(), islands) : Optional.empty();
    if (place.isPresent()) {
      places[0] = place.get();
    } else if (!narrow.isEmpty()) {
      sheets(narrow).forEach(this::add);
    }
    List<Placement> all = new ArrayList<>(List.of(places));
    atEnd().ifPresent(all::add);
    int tiles = 0;
    int joins = 0;
    for (int island = 0; island < islands.size(); island++) {
      Board board = board(island);
      tiles += board.tiles();
      joins += board.joins();
    }
    return new Arrangement(all, islands, tiles, joins);
  }

  private boolean fits(int shape) {
    for (double angle : shapes.get(shape).angles()) {
      Envelope box = box(shape, angle);
      if (box.getWidth() <= across && box.getHeight() <= along) {
        return true;
      }
    }
    return false;
  }

  private Envelope box(int shape, double angle) {
    return Pose.mapped(shapes.get(shape).outline(), Affine.rotation(angle)).getEnvelopeInternal();
  }

  /**
   * Shapes on a strip of some tiles side by side.
   *
   * @param which the shapes
   * @param columns the tiles
   * @param length how far they reach
   * @param maps where each of them lies, from the island's corner
   */
  private record Strip(List<Integer> which, int columns, double length, List<Affine> maps) {
    double paper() {
      return columns * length;
    }
  }

  private double width(int columns) {
    return (columns - 1) * grid.stepX() + across;
  }

  /**
   * Arranges shapes on one strip, with slanted turns and without; nothing when one is too wide for
   * it.
   */
  private Optional<Strip> strip(List<Integer> which, int columns) {
    Optional<Strip> straight = strip(which, columns, false);
    boolean slants =
        which.stream()
            .flatMap(shape -> shapes.get(shape).angles().stream())
            .anyMatch(angle -> !isQuarter(angle));
    if (!slants) {
      return straight;
    }
    Optional<Strip> slanted = strip(which, columns, true);
    boolean better =
        straight.isEmpty()
            || (slanted.isPresent() && slanted.get().length() < straight.get().length());
    return better ? slanted : straight;
  }

  private static boolean isQuarter(double angle) {
    return angle % 90 == 0;
  }

  private Optional<Strip> strip(List<Integer> which, int columns, boolean slanted) {
    List<StripShape> list = new ArrayList<>();
    for (int shape : which) {
      // On a strip, x runs along and y across; a quarter turn takes that to a sheet.
      List<Affine> poses =
          shapes.get(shape).angles().stream()
              .filter(angle -> slanted || isQuarter(angle))
              .map(angle -> Affine.rotation(angle - 90))
              .toList();
      StripShape stripShape = new StripShape(shapes.get(shape).outline(), poses);
      if (!StripPacker.fits(stripShape, width(columns))) {
        return Optional.empty();
      }
      list.add(stripShape);
    }
    boolean first = which.get(0) == 0;
    StripArrangement arrangement = StripPacker.pack(list, width(columns), search, first);
    Affine toSheet =
        Affine.translation(grid.edge() + width(columns), grid.edge()).after(Affine.rotation(90));
    List<Affine> maps = arrangement.maps().stream().map(toSheet::after).toList();
    return Optional.of(new Strip(which, columns, arrangement.length(), maps));
  }

  /** Divides shapes that are too wide for one tile into islands. */
  private List<Strip> grouped(List<Integer> wide) {
    List<Strip> groups = new ArrayList<>();
    for (int shape : byArea(wide)) {
      Strip alone = cheapest(List.of(shape)).orElseThrow();
      Strip best = alone;
      int with = -1;
      double least = alone.paper();
      for (int g = 0; g < groups.size(); g++) {
        List<Integer> more = new ArrayList<>(groups.get(g).which());
        more.add(shape);
        Optional<Strip> together = cheapest(more);
        if (together.isPresent()
            && together.get().length() <= along
            && together.get().paper() - groups.get(g).paper() < least) {
          best = together.get();
          with = g;
          least = best.paper() - groups.get(g).paper();
        }
      }
      if (with < 0) {
        groups.add(best);
      } else {
        groups.set(with, best);
      }
    }
    return groups;
  }

  private Optional<Strip> cheapest(List<Integer> which) {
    Strip best = null;
    int tried = 0;
    for (int columns = 1; columns <= Searcher.MAX_SIDE && tried <= WIDER; columns++) {
      Optional<Strip> strip = strip(which, columns);
      if (strip.isPresent()) {
        tried++;
        if (best == null || strip.get().paper() < best.paper() - 1) {
          best = strip.get();
        }
      }
    }
    if (best == null) {
      throw new IllegalArgumentException("shapes " + which + " do not fit");
    }
    return Optional.of(best);
  }

  private List<Integer> byArea(List<Integer> list) {
    return list.stream()
        .sorted(
            Comparator.<Integer>comparingDouble(i -> -shapes.get(i).outline().getArea())
                .thenComparing(i -> i))
        .toList();
  }

  /** Divides shapes that fit across one tile into sheets. */
  private List<Strip> sheets(List<Integer> which) {
    Strip whole = strip(which, 1).orElseThrow();
    if (whole.length() <= along) {
      return List.of(whole);
    }
    double even = whole.length() / Math.ceil(whole.length() / along);
    List<Strip> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (double cut : new double[] {along, even}) {
      List<Strip> sheets = cut(whole, cut);
      double length = sheets.stream().mapToDouble(Strip::length).sum();
      if (length < least) {
        best = sheets;
        least = length;
      }
    }
    return best;
  }

  /** Leaves what ends before a length on one sheet, and divides the rest. */
  private List<Strip> cut(Strip whole, double length) {
    List<Integer> head = new ArrayList<>();
    List<Affine> maps = new ArrayList<>();
    List<Integer> tail = new ArrayList<>();
    double reach = 0;
    for (int i = 0; i < whole.which().size(); i++) {
      int shape = whole.which().get(i);
      Polygon placed = Pose.mapped(shapes.get(shape).outline(), whole.maps().get(i));
      double end = placed.getEnvelopeInternal().getMaxY() - grid.edge();
      if (end <= length) {
        head.add(shape);
        maps.add(whole.maps().get(i));
        reach = Math.max(reach, end);
      } else {
        tail.add(shape);
      }
    }
    if (head.isEmpty()) {
      // A long one is in the way of all others.
      head.add(tail.remove(0));
      reach = Double.POSITIVE_INFINITY;
    }
    Strip anew = strip(head, 1).orElseThrow();
    List<Strip> sheets = new ArrayList<>();
    sheets.add(anew.length() <= reach ? anew : new Strip(head, 1, reach, maps));
    sheets.addAll(sheets(tail));
    return sheets;
  }

  private void add(Strip strip) {
    for (int i = 0; i < strip.which().size(); i++) {
      places[strip.which().get(i)] = new Placement(islands.size(), strip.maps().get(i));
    }
    islands.add(new Island(strip.columns(), grid.rows(grid.edge() + strip.length())));
  }

  private List<Placement> others() {
    List<Placement> others = new ArrayList<>();
    for (int i = 1; i < places.length; i++) {
      others.add(places[i]);
    }
    return others;
  }

  /** An island with what lies on it. */
  private Board board(int island) {
    Board board = searcher.empty().sized(islands.get(island).columns(), islands.get(island).rows());
    for (int i = 0; i < places.length; i++) {
      if (places[i] != null && places[i].island() == island) {
        Turned turned =
            Turned.of(
                shapes.get(i).outline(), places[i].map(), search.gap(), grid.edge(), grid.edge());
        board = board.with(new PlacedShape(i, turned, 0, 0, true));
      }
    }
    return board;
  }

  /** Puts beside wide shapes what fits there without making a tile longer. */
  private void fill(int island, List<Integer> narrow) {
    Board board = board(island);
    int[] bottoms = bottoms(board);
    TreeSet<Integer> put = new TreeSet<>();
    for (int shape : byArea(narrow)) {
      for (int t = searcher.firstTurn(shape); t < searcher.endTurn(shape); t++) {
        Place place = searcher.find(board, shape, t);
        Turned turned = searcher.turned(t);
        if (place.turn() < 0 || !place.costsNothing()) {
          continue;
        }
        int column = board.cells().column(place.x() + turned.width() / 2.0, board.columns());
        if (place.y() + turned.height() <= bottoms[column]) {
          board = board.with(new PlacedShape(shape, turned, place.x(), place.y(), false));
          double x = grid.edge() + place.x() - turned.minX();
          double y = grid.edge() + place.y() * Turned.ROW - turned.minY();
          places[shape] = new Placement(island, Affine.translation(x, y).after(turned.turn()));
          put.add(shape);
          break;
        }
      }
    }
    narrow.removeAll(put);
  }

  /** How far down each column of tiles is used, in rows of cells. */
  private static int[] bottoms(Board board) {
    int[] bottoms = new int[board.columns()];
    for (PlacedShape each : board.puts()) {
      Raster body = each.turned().body();
      for (int i = 0; i < body.rows().length; i++) {
        int[] runs = body.rows()[i];
        for (int k = 0; k < runs.length; k += 2) {
          int from = board.cells().column(each.x() + runs[k] + 1e-6, board.columns());
          int to = board.cells().column(each.x() + runs[k + 1] - 1e-6, board.columns());
          for (int c = from; c <= to; c++) {
            bottoms[c] = Math.max(bottoms[c], each.y() + body.top() + i + 1);
          }
        }
      }
    }
    return bottoms;
  }

  /**
   * Another place for the first shape, in the last half of its sheet and as far down as possible.
   */
  private Optional<Placement> atEnd() {
    int island = places[0].island();
    Board board = board(island);
    Turned square = searcher.turned(searcher.firstTurn(0));
    int last = 0;
    for (int bottom : bottoms(board)) {
      last = Math.max(last, bottom);
    }
    Optional<Point> free = searcher.lowest(board, square, last / 2, last - square.height());
    if (free.isPresent()) {
      double x = grid.edge() + free.get().x();
      double y = grid.edge() + free.get().y() * Turned.ROW;
      return Optional.of(
          new Placement(
              island,
              Affine.translation(x - square.minX(), y - square.minY()).after(square.turn())));
    }
    return guesthouse.place(1, List.of(places), islands);
  }
}
