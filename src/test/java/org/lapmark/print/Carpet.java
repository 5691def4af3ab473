package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.grade.piece.Piece;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.piece.PieceArt;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * What arranging is compared with: the pieces in the order of their numbers, side by side and shelf
 * below shelf, on one sheet that is cut into tiles. Every two neighbouring tiles that carry
 * something are joined.
 *
 * @param pages the tiles that carry something
 * @param joins the pairs of them that are neighbours
 */
record Carpet(int pages, int joins) {
  private static final int WIDEST = 10;

  /** The carpet as wide as serves it best: with the fewest pages, then joins. */
  static Carpet of(List<Piece> pieces, TileGrid grid, double gap) {
    Carpet best = null;
    for (int columns = 1; columns <= WIDEST; columns++) {
      Carpet carpet = of(pieces, grid, gap, columns);
      if (carpet != null
          && (best == null
              || carpet.pages < best.pages
              || (carpet.pages == best.pages && carpet.joins < best.joins))) {
        best = carpet;
      }
    }
    return best;
  }

  private static Carpet of(List<Piece> pieces, TileGrid grid, double gap, int columns) {
    double width = (columns - 1) * grid.stepX() + grid.width() - 2 * grid.edge();
    List<Polygon> placed = new ArrayList<>();
    double x = 0;
    double y = 0;
    double shelf = 0;
    for (Piece piece : pieces) {
      Polygon shape = PieceArt.shape(piece);
      Envelope box = shape.getEnvelopeInternal();
      if (box.getWidth() > width) {
        return null;
      }
      if (x + box.getWidth() > width) {
        x = 0;
        y += shelf + gap;
        shelf = 0;
      }
      placed.add(
          (Polygon)
              AffineTransformation.translationInstance(
                      grid.edge() + x - box.getMinX(), grid.edge() + y - box.getMinY())
                  .transform(shape));
      x += box.getWidth() + gap;
      shelf = Math.max(shelf, box.getHeight());
    }
    int rows = grid.rows(y + shelf + grid.edge());
    boolean[][] used = new boolean[rows][columns];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        Envelope core =
            new Envelope(
                c == 0 ? 0 : grid.seamX(c),
                c + 1 == columns ? c * grid.stepX() + grid.width() : grid.seamX(c + 1),
                r == 0 ? 0 : grid.seamY(r),
                r + 1 == rows ? r * grid.stepY() + grid.height() : grid.seamY(r + 1));
        var box = new GeometryFactory().toGeometry(core);
        used[r][c] =
            placed.stream()
                .anyMatch(
                    shape -> shape.getEnvelopeInternal().intersects(core) && shape.intersects(box));
      }
    }
    int pages = 0;
    int joins = 0;
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        pages += used[r][c] ? 1 : 0;
        joins += used[r][c] && c + 1 < columns && used[r][c + 1] ? 1 : 0;
        joins += used[r][c] && r + 1 < rows && used[r + 1][c] ? 1 : 0;
      }
    }
    return new Carpet(pages, joins);
  }
}
