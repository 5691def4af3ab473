package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.packing.Arrangement;
import org.lapmark.packing.Island;
import org.lapmark.packing.Placement;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Turns an arrangement into tiles and joins on a sheet. */
record Laying(
    TileGrid grid,
    Tiling tiling,
    Paper paper,
    List<Piece> pieces,
    Arrangement arrangement,
    double side) {
  /** The paper left blank between islands on the sheet, which nobody prints, in millimetres. */
  private static final double APART = 20;

  /** Islands of one row stand beside each other up to this many columns. */
  private static final int COLUMNS = 4;

  SheetLayout lay() {
    Map<Integer, IslandTiles.Place> places = places();
    List<PlacedPiece> placed = new ArrayList<>();
    List<PieceArt> art = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Placement placement = arrangement.placements().get(i + 1);
      IslandTiles.Place place = places.get(placement.island());
      placed.add(
          new PlacedPiece(
              pieces.get(i), Affine.translation(place.x(), place.y()).after(placement.map())));
      art.add(PieceArt.of(placed.get(i)));
    }
    Box square = squareAt(0, side, places);
    Optional<Box> endSquare =
        arrangement.placements().size() > pieces.size() + 1
            ? Optional.of(squareAt(pieces.size() + 1, TestSquare.SIDE, places))
            : Optional.empty();
    Map<Integer, TreeMap<Integer, Cell>> cells = new TreeMap<>();
    List<Join> joins = new ArrayList<>();
    int columns = 0;
    int rows = 0;
    for (int island = 0; island < arrangement.islands().size(); island++) {
      new IslandTiles(
              grid, tiling, arrangement.islands().get(island), places.get(island), bottoms(island))
          .add(art, square, endSquare, cells, joins);
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
        placed, art, square, endSquare, ordered, Join.numbered(joins), columns, rows, arranged());
  }

  private Box squareAt(int shape, double length, Map<Integer, IslandTiles.Place> places) {
    Placement placement = arrangement.placements().get(shape);
    IslandTiles.Place place = places.get(placement.island());
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

  private Map<Integer, IslandTiles.Place> places() {
    Map<Integer, IslandTiles.Place> places = new TreeMap<>();
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
      places.put(island, new IslandTiles.Place(column, row, x, y));
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
    Arrays.fill(bottoms, top + grid.height());
    for (int c = 0; paper.filling().isCutToLength() && c < bottoms.length; c++) {
      double lowest = top + TestSquare.SIDE;
      Geometry window = Cell.polygon(Box.at(c * grid.stepX(), top, grid.width(), grid.height()));
      for (int i = 0; i < arrangement.placements().size(); i++) {
        Placement placement = arrangement.placements().get(i);
        if (placement.island() == index) {
          Polygon shape =
              i == 0 || i > pieces.size()
                  ? TestSquare.outline(side)
                  : PieceArt.shape(pieces.get(i - 1));
          Geometry part = Pins.placed(shape, placement.map()).intersection(window);
          lowest = part.isEmpty() ? lowest : Math.max(lowest, part.getEnvelopeInternal().getMaxY());
        }
      }
      double around = paper.height() - paper.window().height() + tiling.caption();
      double length = Math.ceil(lowest - top + grid.edge() + around - IslandTiles.REACH);
      bottoms[c] = Math.min(bottoms[c], top + length - around);
    }
    return bottoms;
  }
}
