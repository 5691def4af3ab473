package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.packing.Arrangement;
import org.lapmark.packing.Island;
import org.lapmark.packing.Placement;
import org.lapmark.packing.Search;
import org.lapmark.packing.Shape;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Where everything lies on the sheet: pieces, the test square, tiles and joins. Islands of tiles
 * lie apart, one below or beside the other, and share one system of codes: a row's letter is never
 * used twice for different heights.
 *
 * @param pieces the pieces at their places, by number
 * @param art what is drawn of each, in the same order
 * @param square the test square
 * @param endSquare a second one at the other end of a large sheet
 * @param cells the tiles that carry something, the one with the test square first, then in reading
 *     order
 * @param joins where tiles are joined, in reading order of the first tile
 * @param columns how many columns the codes count
 * @param rows how many rows they count
 * @param arranged the same places, for later editions
 */
public record SheetLayout(
    List<PlacedPiece> pieces,
    List<PieceArt> art,
    Box square,
    Optional<Box> endSquare,
    List<Cell> cells,
    List<Join> joins,
    int columns,
    int rows,
    Arranged arranged) {
  /** The side of the test square on the first tile, in millimetres. */
  public static final double SQUARE = 100;

  /** The side of one that stands for it where there is no room, in millimetres. */
  public static final double SMALL_SQUARE = 50;

  /** The paper left blank between islands on the sheet, which nobody prints, in millimetres. */
  private static final double APART = 20;

  /** Islands of one row stand beside each other up to this many columns. */
  private static final int COLUMNS = 4;

  /** A reach below this, in millimetres, doesn't make a tile or a join. */
  private static final double REACH = 0.01;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  public static SheetLayout of(List<Piece> pieces, Paper paper, Tiling tiling, Search search) {
    List<Double> sides = List.of(SQUARE, SMALL_SQUARE);
    return of(pieces, SheetLayout::lines, sides, paper, tiling, search, Optional.empty());
  }

  /** All that is drawn of a piece, in its own coordinates. */
  public static List<Path> lines(Piece piece) {
    return PieceArt.of(new PlacedPiece(piece, Affine.IDENTITY)).strokes().stream()
        .map(PieceArt.Stroke::path)
        .toList();
  }

  /** Leaves what it can where an earlier arrangement had it. */
  public static SheetLayout of(
      List<Piece> pieces,
      Function<Piece, List<Path>> lines,
      List<Double> sides,
      Paper paper,
      Tiling tiling,
      Search search,
      Optional<Arranged> earlier) {
    TileGrid grid = tiling.grid(paper);
    List<Piece> sorted = pieces.stream().sorted(Comparator.comparingInt(Piece::number)).toList();
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape(squareShape(earlier.map(Arranged::side).orElse(SQUARE)), List.of(0.0), true));
    for (Piece piece : sorted) {
      Polygon shape = PieceArt.shape(piece);
      List<Double> turns =
          paper.filling().isCutToLength() ? Turns.onRoll(shape, grid) : Turns.of(shape, grid);
      shapes.add(new Shape(shape, turns, false));
    }
    SquareInside inside = new SquareInside(sorted, grid, lines);
    List<Optional<Placement>> pins =
        earlier.isPresent()
            ? Pins.of(sorted, shapes, earlier.get(), grid, tiling.gap(), inside)
            : Collections.nCopies(shapes.size(), Optional.empty());
    Arranging arranging =
        new Arranging(
            shapes,
            grid,
            search,
            pins,
            earlier.map(Arranged::islands).orElse(List.of()),
            inside,
            sides);
    Arranging.Result result = paper.filling().read(arranging);
    Arrangement arrangement = result.arrangement();
    if (earlier.isEmpty()) {
      arrangement = inOrder(arrangement, sorted);
      if (paper.filling().isPaged()) {
        arrangement = squareFirst(arrangement, result.side(), grid);
      }
    }
    return new Laying(grid, tiling, paper, sorted, arrangement, result.side()).lay();
  }

  /** The same without some tiles, which take their joins with them. */
  public SheetLayout without(List<Cell> left) {
    List<Join> stay =
        joins.stream()
            .filter(join -> !left.contains(join.first()) && !left.contains(join.second()))
            .toList();
    return new SheetLayout(
        pieces,
        art,
        square,
        endSquare,
        cells.stream().filter(cell -> !left.contains(cell)).toList(),
        Laying.numbered(stay),
        columns,
        rows,
        arranged);
  }

  /** The lowest that anything reaches, in sheet coordinates. */
  public double bottom() {
    double bottom = square.maxY();
    for (PieceArt piece : art) {
      bottom = Math.max(bottom, piece.bounds().maxY());
    }
    return bottom;
  }

  public PlanQuality quality(Paper paper, Tiling tiling) {
    return PlanQuality.of(
        cells.size(),
        joins.size(),
        pieces.stream().map(placed -> PieceArt.shape(placed.piece())).toList(),
        tiling.grid(paper));
  }

  /** A test square as a shape, its corner at the origin. */
  static Polygon squareShape(double side) {
    return box(new Box(0, 0, side, side));
  }

  public static Polygon box(Box box) {
    return (Polygon)
        FACTORY.toGeometry(new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY()));
  }

  /** The island with the test square first, then by the least number of the pieces on them. */
  private static Arrangement inOrder(Arrangement arrangement, List<Piece> pieces) {
    int first = arrangement.placements().get(0).island();
    int[] least = new int[arrangement.islands().size()];
    java.util.Arrays.fill(least, Integer.MAX_VALUE);
    for (int i = 0; i < pieces.size(); i++) {
      int island = arrangement.placements().get(i + 1).island();
      least[island] = Math.min(least[island], pieces.get(i).number());
    }
    List<Integer> order =
        IntStream.range(0, least.length)
            .boxed()
            .sorted(
                Comparator.<Integer>comparingInt(i -> i == first ? 0 : 1)
                    .thenComparingInt(i -> least[i])
                    .thenComparingInt(i -> i))
            .toList();
    return new Arrangement(
        arrangement.placements().stream()
            .map(placement -> new Placement(order.indexOf(placement.island()), placement.map()))
            .toList(),
        order.stream().map(arrangement.islands()::get).toList(),
        arrangement.tiles(),
        arrangement.joins());
  }

  /**
   * Turns the first island by 180 degrees when that brings the test square nearer its first tile.
   */
  private static Arrangement squareFirst(Arrangement arrangement, double side, TileGrid grid) {
    Island island = arrangement.islands().get(0);
    Point square = arrangement.placements().get(0).map().apply(new Point(0, 0));
    int column = grid.column(square.x() + side / 2, island.columns());
    int row = grid.row(square.y() + side / 2, island.rows());
    int before = row * island.columns() + column;
    if (2 * before < island.columns() * island.rows()) {
      return arrangement;
    }
    double width = (island.columns() - 1) * grid.stepX() + grid.width();
    double height = (island.rows() - 1) * grid.stepY() + grid.height();
    Affine turn = Affine.translation(width, height).after(Affine.scaling(-1, -1));
    List<Placement> placements = new ArrayList<>();
    for (Placement placement : arrangement.placements()) {
      boolean first = placements.isEmpty();
      // The square itself stays upright.
      Affine map =
          first
              ? Affine.translation(width - square.x() - side, height - square.y() - side)
              : turn.after(placement.map());
      placements.add(placement.island() == 0 ? new Placement(0, map) : placement);
    }
    return new Arrangement(
        placements, arrangement.islands(), arrangement.tiles(), arrangement.joins());
  }

  /** What is one tile's alone, from the island's corner. */
  static Box core(TileGrid grid, Island island, int r, int c) {
    double left = c == 0 ? 0 : grid.seamX(c);
    double top = r == 0 ? 0 : grid.seamY(r);
    double right = c + 1 == island.columns() ? c * grid.stepX() + grid.width() : grid.seamX(c + 1);
    double bottom = r + 1 == island.rows() ? r * grid.stepY() + grid.height() : grid.seamY(r + 1);
    return new Box(left, top, right, bottom);
  }

  /** An island with its place on the sheet. */
  private record Place(int column, int row, double x, double y) {}

  private record Laying(
      TileGrid grid,
      Tiling tiling,
      Paper paper,
      List<Piece> pieces,
      Arrangement arrangement,
      double side) {
    SheetLayout lay() {
      Map<Integer, Place> places = places();
      List<PlacedPiece> placed = new ArrayList<>();
      List<PieceArt> art = new ArrayList<>();
      for (int i = 0; i < pieces.size(); i++) {
        Placement placement = arrangement.placements().get(i + 1);
        Place place = places.get(placement.island());
        placed.add(
            new PlacedPiece(
                pieces.get(i), Affine.translation(place.x(), place.y()).after(placement.map())));
        art.add(PieceArt.of(placed.get(i)));
      }
      Box square = squareAt(0, side, places);
      Optional<Box> endSquare =
          arrangement.placements().size() > pieces.size() + 1
              ? Optional.of(squareAt(pieces.size() + 1, SQUARE, places))
              : Optional.empty();
      Map<Integer, TreeMap<Integer, Cell>> cells = new TreeMap<>();
      List<Join> joins = new ArrayList<>();
      int columns = 0;
      int rows = 0;
      for (int island = 0; island < arrangement.islands().size(); island++) {
        addIsland(island, places.get(island), art, square, endSquare, cells, joins);
      }
      List<Cell> ordered = new ArrayList<>();
      for (TreeMap<Integer, Cell> row : cells.values()) {
        for (Cell cell : row.values()) {
          ordered.add(cell);
          columns = Math.max(columns, cell.column() + 1);
          rows = Math.max(rows, cell.row() + 1);
        }
      }
      // The page with the test square is the first one to print.
      ordered.sort(Comparator.comparing(cell -> !cell.core().contains(square.centre())));
      return new SheetLayout(
          placed, art, square, endSquare, ordered, numbered(joins), columns, rows, arranged());
    }

    private Box squareAt(int shape, double length, Map<Integer, Place> places) {
      Placement placement = arrangement.placements().get(shape);
      Place place = places.get(placement.island());
      return new Box(0, 0, length, length)
          .moved(placement.map().apply(new Point(0, 0)))
          .moved(new Point(place.x(), place.y()));
    }

    private Arranged arranged() {
      Map<Integer, Placement> byNumber = new TreeMap<>();
      for (int i = 0; i < pieces.size(); i++) {
        byNumber.put(pieces.get(i).number(), arrangement.placements().get(i + 1));
      }
      return new Arranged(arrangement.islands(), arrangement.placements().get(0), side, byNumber);
    }

    private Map<Integer, Place> places() {
      Map<Integer, Place> places = new TreeMap<>();
      int widest = arrangement.islands().stream().mapToInt(Island::columns).max().orElse(1);
      int limit = Math.max(COLUMNS, widest);
      int column = 0;
      int row = 0;
      int rowCount = 0;
      double x = 0;
      double y = 0;
      double tallest = 0;
      for (int island = 0; island < arrangement.islands().size(); island++) {
        Island size = arrangement.islands().get(island);
        boolean beside = size.rows() == 1 && rowCount == 1 && column + size.columns() <= limit;
        if (!beside) {
          y += rowCount == 0 ? 0 : tallest + tiling.caption() + APART;
          row += rowCount;
          x = 0;
          column = 0;
          rowCount = size.rows();
          tallest = 0;
        }
        for (double bottom : bottoms(island)) {
          tallest = Math.max(tallest, bottom);
        }
        places.put(island, new Place(column, row, x, y));
        x += (size.columns() - 1) * grid.stepX() + grid.width() + APART;
        column += size.columns();
      }
      return places;
    }

    /**
     * How far down the tiles of an island's last row reach, from its corner: as far as they may, or
     * on a roll as far as something lies on them, so that a sheet is as long as whole millimetres
     * allow.
     */
    private double[] bottoms(int index) {
      Island island = arrangement.islands().get(index);
      double top = (island.rows() - 1) * grid.stepY();
      double[] bottoms = new double[island.columns()];
      java.util.Arrays.fill(bottoms, top + grid.height());
      for (int c = 0; paper.filling().isCutToLength() && c < bottoms.length; c++) {
        double lowest = top + SQUARE;
        Geometry window = box(Box.at(c * grid.stepX(), top, grid.width(), grid.height()));
        for (int i = 0; i < arrangement.placements().size(); i++) {
          Placement placement = arrangement.placements().get(i);
          if (placement.island() == index) {
            Polygon shape =
                i == 0 || i > pieces.size() ? squareShape(side) : PieceArt.shape(pieces.get(i - 1));
            Geometry part = Pins.placed(shape, placement.map()).intersection(window);
            lowest =
                part.isEmpty() ? lowest : Math.max(lowest, part.getEnvelopeInternal().getMaxY());
          }
        }
        double around = paper.height() - paper.window().height() + tiling.caption();
        double length = Math.ceil(lowest - top + grid.edge() + around - REACH);
        bottoms[c] = Math.min(bottoms[c], top + length - around);
      }
      return bottoms;
    }

    private void addIsland(
        int index,
        Place place,
        List<PieceArt> art,
        Box square,
        Optional<Box> endSquare,
        Map<Integer, TreeMap<Integer, Cell>> cells,
        List<Join> joins) {
      Island island = arrangement.islands().get(index);
      double[] bottoms = bottoms(index);
      Box[][] cores = new Box[island.rows()][island.columns()];
      boolean[][] used = new boolean[island.rows()][island.columns()];
      int[][] group = new int[island.rows()][island.columns()];
      for (int r = 0; r < island.rows(); r++) {
        for (int c = 0; c < island.columns(); c++) {
          Box whole = core(grid, island, r, c);
          double bottom = r + 1 == island.rows() ? bottoms[c] : whole.maxY();
          cores[r][c] =
              new Box(whole.minX(), whole.minY(), whole.maxX(), bottom)
                  .moved(new Point(place.x(), place.y()));
          group[r][c] = r * island.columns() + c;
          Geometry box = box(cores[r][c].expanded(-REACH));
          Box core = cores[r][c];
          used[r][c] =
              core.overlaps(square)
                  || endSquare.filter(core::overlaps).isPresent()
                  || art.stream()
                      .anyMatch(
                          piece ->
                              core.overlaps(piece.bounds()) && piece.polygon().intersects(box));
        }
      }
      // Tiles that share a piece are joined, and so are neighbours that hang together otherwise.
      for (int r = 0; r < island.rows(); r++) {
        for (int c = 0; c < island.columns(); c++) {
          if (c + 1 < island.columns() && crossed(art, cores[r][c + 1], true)) {
            merge(group, group[r][c], group[r][c + 1]);
          }
          if (r + 1 < island.rows() && crossed(art, cores[r + 1][c], false)) {
            merge(group, group[r][c], group[r + 1][c]);
          }
        }
      }
      Cell[][] made = new Cell[island.rows()][island.columns()];
      for (int r = 0; r < island.rows(); r++) {
        for (int c = 0; c < island.columns(); c++) {
          if (used[r][c]) {
            double bottom = r + 1 == island.rows() ? bottoms[c] : r * grid.stepY() + grid.height();
            made[r][c] = cell(place, r, c, bottom, cores[r][c], used, group);
            cells
                .computeIfAbsent(made[r][c].row(), key -> new TreeMap<>())
                .put(made[r][c].column(), made[r][c]);
          }
        }
      }
      for (int r = 0; r < island.rows(); r++) {
        for (int c = 0; c < island.columns(); c++) {
          if (joined(used, group, r, c, r, c + 1)) {
            Box right = cores[r][c + 1];
            joins.add(
                new Join(
                    0,
                    made[r][c],
                    made[r][c + 1],
                    true,
                    new Point(right.minX(), right.minY()),
                    new Point(right.minX(), Math.min(cores[r][c].maxY(), right.maxY()))));
          }
          if (joined(used, group, r, c, r + 1, c)) {
            Box lower = cores[r + 1][c];
            joins.add(
                new Join(
                    0,
                    made[r][c],
                    made[r + 1][c],
                    false,
                    new Point(lower.minX(), lower.minY()),
                    new Point(lower.maxX(), lower.minY())));
          }
        }
      }
    }

    private Cell cell(
        Place place, int r, int c, double bottom, Box core, boolean[][] used, int[][] group) {
      Box window =
          Box.at(
              place.x() + c * grid.stepX(),
              place.y() + r * grid.stepY() - tiling.caption(),
              grid.width(),
              bottom - r * grid.stepY() + tiling.caption());
      // A neighbour that isn't joined shows its own part; its pieces near the line aren't repeated.
      Box shown =
          new Box(
              apart(used, group, r, c, r, c - 1) ? core.minX() - 2 * REACH : window.minX(),
              apart(used, group, r, c, r - 1, c)
                  ? core.minY() - 2 * REACH
                  : window.minY() + tiling.caption(),
              apart(used, group, r, c, r, c + 1) ? core.maxX() + 2 * REACH : window.maxX(),
              apart(used, group, r, c, r + 1, c) ? core.maxY() + 2 * REACH : window.maxY());
      int row = place.row() + r;
      int column = place.column() + c;
      return new Cell(Cell.code(row, column), column, row, window, core, shown);
    }

    private static boolean present(boolean[][] used, int r, int c) {
      return r >= 0 && c >= 0 && r < used.length && c < used[0].length && used[r][c];
    }

    private static boolean joined(boolean[][] used, int[][] group, int r, int c, int r2, int c2) {
      return present(used, r, c) && present(used, r2, c2) && group[r][c] == group[r2][c2];
    }

    private static boolean apart(boolean[][] used, int[][] group, int r, int c, int r2, int c2) {
      return present(used, r2, c2) && group[r][c] != group[r2][c2];
    }

    /** Whether a piece crosses the left or the upper side of a core. */
    private static boolean crossed(List<PieceArt> art, Box core, boolean left) {
      double shrink = REACH;
      Geometry side =
          FACTORY.createLineString(
              new Coordinate[] {
                new Coordinate(
                    core.minX() + (left ? 0 : shrink), core.minY() + (left ? shrink : 0)),
                left
                    ? new Coordinate(core.minX(), core.maxY() - shrink)
                    : new Coordinate(core.maxX() - shrink, core.minY())
              });
      return art.stream()
          .anyMatch(
              piece ->
                  core.expanded(1).overlaps(piece.bounds()) && piece.polygon().intersects(side));
    }

    private static void merge(int[][] group, int a, int b) {
      for (int[] row : group) {
        for (int i = 0; i < row.length; i++) {
          row[i] = row[i] == b ? a : row[i];
        }
      }
    }

    private static List<Join> numbered(List<Join> joins) {
      List<Join> sorted =
          joins.stream()
              .sorted(
                  Comparator.<Join>comparingInt(join -> join.first().row())
                      .thenComparingInt(join -> join.first().column())
                      .thenComparingInt(join -> join.sideways() ? 0 : 1))
              .toList();
      List<Join> numbered = new ArrayList<>();
      for (Join join : sorted) {
        numbered.add(
            new Join(
                numbered.size() + 1,
                join.first(),
                join.second(),
                join.sideways(),
                join.from(),
                join.to()));
      }
      return numbered;
    }
  }
}
