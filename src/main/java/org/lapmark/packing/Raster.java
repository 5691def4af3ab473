package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
    List<List<double[]>> bands = new ArrayList<>();
    List<List<Double>> crossings = new ArrayList<>();
    for (int i = top; i <= bottom; i++) {
      bands.add(new ArrayList<>());
      crossings.add(new ArrayList<>());
    }
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(i);
      ring(polygon.getExteriorRing(), originX, originY, top, bands, crossings);
      for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
        ring(polygon.getInteriorRingN(k), originX, originY, top, bands, crossings);
      }
    }
    int[][] rows = new int[bottom - top][];
    for (int i = 0; i < rows.length; i++) {
      List<double[]> spans = new ArrayList<>(bands.get(i));
      addInside(crossings.get(i), spans);
      addInside(crossings.get(i + 1), spans);
      rows[i] = merge(spans);
    }
    return new Raster(top, rows);
  }

  /** Adds, band by band, what each edge covers, and where edges cross the lines between bands. */
  private static void ring(
      LineString ring,
      double originX,
      double originY,
      int top,
      List<List<double[]>> bands,
      List<List<Double>> crossings) {
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
      int first = Math.max(top, (int) Math.floor(y0 + SLACK));
      if (y1 - y0 < SLACK) {
        if (first - top < bands.size() - 1) {
          bands.get(first - top).add(new double[] {Math.min(x0, x1), Math.max(x0, x1)});
        }
      }
      int last = Math.min(top + bands.size() - 2, (int) Math.floor(y1 - SLACK));
      for (int row = first; row <= Math.max(first, last) && row - top < bands.size() - 1; row++) {
        double from = at(x0, y0, x1, y1, Math.max(y0, row));
        double to = at(x0, y0, x1, y1, Math.min(y1, row + 1));
        bands.get(row - top).add(new double[] {Math.min(from, to), Math.max(from, to)});
      }
      for (int line = Math.max(top, (int) Math.ceil(y0)); line < y1; line++) {
        if (line >= y0 && line - top < crossings.size()) {
          crossings.get(line - top).add(at(x0, y0, x1, y1, line));
        }
      }
    }
  }

  private static double at(double x0, double y0, double x1, double y1, double y) {
    return y1 - y0 < 1e-12 ? x0 : x0 + (x1 - x0) * (y - y0) / (y1 - y0);
  }

  private static void addInside(List<Double> crossings, List<double[]> spans) {
    double[] xs = crossings.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    for (int i = 0; i + 1 < xs.length; i += 2) {
      spans.add(new double[] {xs[i], xs[i + 1]});
    }
  }

  private static int[] merge(List<double[]> spans) {
    int[][] cells =
        spans.stream()
            .map(span -> new int[] {floor(span[0]), Math.max(floor(span[0]) + 1, ceil(span[1]))})
            .sorted((a, b) -> a[0] != b[0] ? Integer.compare(a[0], b[0]) : a[1] - b[1])
            .toArray(int[][]::new);
    int[] runs = new int[2 * cells.length];
    int count = 0;
    for (int[] cell : cells) {
      if (count > 0 && cell[0] <= runs[count - 1]) {
        runs[count - 1] = Math.max(runs[count - 1], cell[1]);
      } else {
        runs[count++] = cell[0];
        runs[count++] = cell[1];
      }
    }
    return Arrays.copyOf(runs, count);
  }

  private static int floor(double value) {
    return (int) Math.floor(value + SLACK);
  }

  private static int ceil(double value) {
    return (int) Math.ceil(value - SLACK);
  }
}
