package org.lapmark.packing;

import java.util.Arrays;
import org.lapmark.geometry.Whole;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A shape on a grid of 1 mm cells: every cell that the shape touches is taken, so that shapes whose
 * cells are apart are apart.
 *
 * @param top the first row's index from the origin
 * @param rows per row the starts and (exclusive) ends of its runs of taken cells, ascending
 */
record Raster(int top, int[][] rows) {
  /** Rounding errors below this, in millimetres, don't take another cell. */
  private static final double SLACK = 1e-6;

  int height() {
    return rows.length;
  }

  int width() {
    int width = 0;
    for (int[] row : rows) {
      width = Math.max(width, row.length == 0 ? 0 : row[row.length - 1]);
    }
    return width;
  }

  long cells() {
    long sum = 0;
    for (int[] row : rows) {
      for (int i = 0; i < row.length; i += 2) {
        sum += row[i + 1] - row[i];
      }
    }
    return sum;
  }

  /**
   * Rasterises polygons.
   *
   * @param geometry polygons
   * @param originX the x of cell 0
   * @param originY the y of row 0
   * @return the raster
   */
  static Raster of(Geometry geometry, double originX, double originY) {
    var box = geometry.getEnvelopeInternal();
    int top = floor(box.getMinY() - originY);
    int bottom = Math.max(top + 1, ceil(box.getMaxY() - originY));
    Lists bands = new Lists(bottom - top);
    Lists crossings = new Lists(bottom - top + 1);
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(i);
      ring(polygon.getExteriorRing(), originX, originY, top, bands, crossings);
      for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
        ring(polygon.getInteriorRingN(k), originX, originY, top, bands, crossings);
      }
    }
    int[][] rows = new int[bottom - top][];
    for (int i = 0; i <= rows.length; i++) {
      Arrays.sort(crossings.values[i], 0, crossings.sizes[i]);
    }
    for (int i = 0; i < rows.length; i++) {
      for (int side = i; side <= i + 1; side++) {
        double[] xs = crossings.values[side];
        for (int k = 0; k + 1 < crossings.sizes[side]; k += 2) {
          bands.add(i, xs[k], xs[k + 1]);
        }
      }
      rows[i] = merge(bands.values[i], bands.sizes[i]);
    }
    return new Raster(top, rows);
  }

  /** Lists of numbers, one a row. */
  private static final class Lists {
    private final double[][] values;
    private final int[] sizes;

    Lists(int count) {
      values = new double[count][4];
      sizes = new int[count];
    }

    void add(int list, double... numbers) {
      int size = sizes[list];
      if (size + numbers.length > values[list].length) {
        values[list] = Arrays.copyOf(values[list], 2 * (size + numbers.length));
      }
      System.arraycopy(numbers, 0, values[list], size, numbers.length);
      sizes[list] += numbers.length;
    }
  }

  /** Adds, band by band, what each edge covers, and where edges cross the lines between bands. */
  private static void ring(
      LineString ring, double originX, double originY, int top, Lists bands, Lists crossings) {
    int count = bands.sizes.length;
    Coordinate[] points = ring.getCoordinates();
    for (int i = 1; i < points.length; i++) {
      double x0 = points[i - 1].x - originX;
      double y0 = points[i - 1].y - originY;
      double x1 = points[i].x - originX;
      double y1 = points[i].y - originY;
      if (y0 > y1) {
        double x = x0;
        double y = y0;
        x0 = x1;
        y0 = y1;
        x1 = x;
        y1 = y;
      }
      int first = Math.max(top, Whole.floor(y0 + SLACK));
      if (y1 - y0 < SLACK) {
        if (first - top < count) {
          bands.add(first - top, Math.min(x0, x1), Math.max(x0, x1));
        }
      }
      int last = Math.min(top + count - 1, Whole.floor(y1 - SLACK));
      for (int row = first; row <= Math.max(first, last) && row - top < count; row++) {
        double from = at(x0, y0, x1, y1, Math.max(y0, row));
        double to = at(x0, y0, x1, y1, Math.min(y1, row + 1));
        bands.add(row - top, Math.min(from, to), Math.max(from, to));
      }
      for (int line = Math.max(top, Whole.ceil(y0)); line < y1; line++) {
        if (line - top <= count) {
          crossings.add(line - top, at(x0, y0, x1, y1, line));
        }
      }
    }
  }

  private static double at(double x0, double y0, double x1, double y1, double y) {
    return y1 - y0 < 1e-12 ? x0 : x0 + (x1 - x0) * (y - y0) / (y1 - y0);
  }

  /** The cells of spans, which come as starts and ends in turn. */
  private static int[] merge(double[] spans, int size) {
    int[] runs = new int[size];
    int count = 0;
    for (int i = 0; i < size; i += 2) {
      int from = floor(spans[i]);
      int to = Math.max(from + 1, ceil(spans[i + 1]));
      // Few spans a row: each is put where it belongs among those before it.
      int at = count;
      while (at > 0 && runs[at - 2] > from) {
        runs[at] = runs[at - 2];
        runs[at + 1] = runs[at - 1];
        at -= 2;
      }
      runs[at] = from;
      runs[at + 1] = to;
      count += 2;
    }
    int merged = 0;
    for (int i = 0; i < count; i += 2) {
      if (merged > 0 && runs[i] <= runs[merged - 1]) {
        runs[merged - 1] = Math.max(runs[merged - 1], runs[i + 1]);
      } else {
        runs[merged++] = runs[i];
        runs[merged++] = runs[i + 1];
      }
    }
    return Arrays.copyOf(runs, merged);
  }

  private static int floor(double value) {
    return Whole.floor(value + SLACK);
  }

  private static int ceil(double value) {
    return Whole.ceil(value - SLACK);
  }
}
