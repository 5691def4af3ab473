package org.lapmark.packing;

import java.util.Arrays;
import org.lapmark.geometry.Affine;
import org.lapmark.packing.strip.Pose;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * A shape turned by one of its angles, as cells 1 mm wide and {@link #ROW} mm high.
 *
 * @param turn the turn about the origin
 * @param minX the x of the turned shape that lies on the left of cell 0
 * @param minY the y of the turned shape that lies on the top of row 0
 * @param body the cells that the shape touches
 * @param grown the cells that it touches when grown by the gap
 * @param width the right end of the body, in cells
 * @param height the bottom end of the body, in rows
 * @param cells how many cells the body has
 * @param order the body's rows in the order in which they are best compared
 * @param wide the body's longest run of a row, in cells
 * @param wideRows by a free stretch's length in steps of {@link #STEP} cells, rounded up: the first
 *     and the last of the most rows below each other that all have a longer run
 */
record Turned(
    Affine turn,
    double minX,
    double minY,
    Raster body,
    Raster grown,
    int width,
    int height,
    long cells,
    int[] order,
    int wide,
    int[][] wideRows) {
  /** The height of a row in millimetres. */
  static final double ROW = 2;

  static final int STEP = 4;

  static Turned of(Polygon outline, double angle, double gap) {
    Affine turn = Affine.rotation(angle);
    var box = Pose.mapped(outline, turn).getEnvelopeInternal();
    return of(outline, turn, gap, box.getMinX(), box.getMinY());
  }

  /** A shape that lies where a map puts it, with cells that count from a given corner. */
  static Turned of(Polygon outline, Affine map, double gap, double minX, double minY) {
    Polygon turned = Pose.mapped(outline, map);
    Raster body = raster(turned, minX, minY);
    Raster grown = gap > 0 ? raster(turned.buffer(gap), minX, minY) : body;
    return new Turned(
        map,
        minX,
        minY,
        body,
        grown,
        body.width(),
        body.top() + body.height(),
        body.cells(),
        order(body),
        wide(widest(body)),
        wideRows(widest(body)));
  }

  private static int[] widest(Raster body) {
    int[] widest = new int[body.height()];
    for (int i = 0; i < widest.length; i++) {
      int[] runs = body.rows()[i];
      for (int k = 0; k < runs.length; k += 2) {
        widest[i] = Math.max(widest[i], runs[k + 1] - runs[k]);
      }
    }
    return widest;
  }

  private static int wide(int[] widest) {
    int most = 0;
    for (int wide : widest) {
      most = Math.max(most, wide);
    }
    return most;
  }

  private static int[][] wideRows(int[] widest) {
    int[][] rows = new int[wide(widest) / STEP + 2][];
    for (int step = 0; step < rows.length; step++) {
      int first = 0;
      int last = -1;
      int from = 0;
      for (int i = 0; i < widest.length; i++) {
        if (widest[i] <= step * STEP) {
          from = i + 1;
        } else if (i - from > last - first) {
          first = from;
          last = i;
        }
      }
      rows[step] = new int[] {first, last};
    }
    return rows;
  }

  private static Raster raster(Geometry geometry, double minX, double minY) {
    Geometry flat = AffineTransformation.scaleInstance(1, 1 / ROW).transform(geometry);
    return Raster.of(flat, minX, minY / ROW);
  }

  /** Whether another turn covers the same cells, so that it gives no other arrangement. */
  boolean sameCells(Turned other) {
    return width == other.width
        && height == other.height
        && Arrays.deepEquals(body.rows(), other.body.rows())
        && Arrays.deepEquals(grown.rows(), other.grown.rows());
  }

  /**
   * Far ones first: first and last row, then the middles of what is left, so that a place that is
   * taken shows soon.
   */
  private static int[] order(Raster body) {
    int height = body.height();
    int[] order = new int[height];
    boolean[] seen = new boolean[height];
    int count = 0;
    int stride = 1;
    while (stride < height) {
      stride *= 2;
    }
    order[count++] = height - 1;
    seen[height - 1] = true;
    for (; stride >= 1 && count < height; stride /= 2) {
      for (int i = 0; i < height; i += stride) {
        if (!seen[i]) {
          seen[i] = true;
          order[count++] = i;
        }
      }
    }
    return order;
  }
}
