package org.lapmark.print.arrange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.packing.Island;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.PieceArt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The tiles of one island and where they are joined.
 *
 * @param grid the tiles
 * @param tiling how they meet
 * @param island how many there are
 * @param place where they lie on the sheet
 * @param bottoms how far down the tiles of the last row reach, from the island's corner
 */
record IslandTiles(TileGrid grid, Tiling tiling, Island island, Place place, double[] bottoms) {
  /** A reach below this, in millimetres, doesn't make a tile or a join. */
  static final double REACH = 0.01;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /**
   * An island's place on the sheet.
   *
   * @param column the code's column of its first tile, 0-based
   * @param row the code's row
   * @param x where its corner lies, in millimetres
   * @param y likewise
   */
  record Place(int column, int row, double x, double y) {}

  void add(
      List<PieceArt> art,
      Box square,
      Optional<Box> endSquare,
      Map<Integer, TreeMap<Integer, Cell>> cells,
      List<Join> joins) {
    Box[][] cores = new Box[island.rows()][island.columns()];
    boolean[][] used = new boolean[island.rows()][island.columns()];
    int[][] group = new int[island.rows()][island.columns()];
    for (int r = 0; r < island.rows(); r++) {
      for (int c = 0; c < island.columns(); c++) {
        Box whole = grid.core(island, r, c);
        double bottom = r + 1 == island.rows() ? bottoms[c] : whole.maxY();
        cores[r][c] =
            new Box(whole.minX(), whole.minY(), whole.maxX(), bottom)
                .moved(new Point(place.x(), place.y()));
        group[r][c] = r * island.columns() + c;
        Geometry box = Cell.polygon(cores[r][c].expanded(-REACH));
        Box core = cores[r][c];
        used[r][c] =
            core.overlaps(square)
                || endSquare.filter(core::overlaps).isPresent()
                || art.stream()
                    .anyMatch(
                        piece -> core.overlaps(piece.bounds()) && piece.polygon().intersects(box));
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
              new Coordinate(core.minX() + (left ? 0 : shrink), core.minY() + (left ? shrink : 0)),
              left
                  ? new Coordinate(core.minX(), core.maxY() - shrink)
                  : new Coordinate(core.maxX() - shrink, core.minY())
            });
    return art.stream()
        .anyMatch(
            piece -> core.expanded(1).overlaps(piece.bounds()) && piece.polygon().intersects(side));
  }

  private static void merge(int[][] group, int a, int b) {
    for (int[] row : group) {
      for (int i = 0; i < row.length; i++) {
        row[i] = row[i] == b ? a : row[i];
      }
    }
  }
}
