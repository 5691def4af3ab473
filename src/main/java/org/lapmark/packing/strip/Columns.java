package org.lapmark.packing.strip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lapmark.geometry.Whole;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A shape cut into upright columns: per column the stretches of y that it touches. Shapes whose
 * columns don't share a stretch don't overlap. What a slanted side loses is its rise over one
 * column; across the strip nothing is rounded.
 *
 * @param first the index of the first column from the origin; column {@code k} runs from {@code k}
 *     times the column's width to the next
 * @param spans per column the starts and ends of its stretches in turn, ascending
 */
record Columns(int first, double[][] spans) {
  /** Rounding errors below this, in millimetres, don't touch another column. */
  private static final double SLACK = 1e-7;

  static Columns of(Geometry geometry, double width) {
    var box = geometry.getEnvelopeInternal();
    int first = Whole.floor(box.getMinX() / width + SLACK);
    int count = Math.max(1, Whole.ceil(box.getMaxX() / width - SLACK) - first);
    List<List<double[]>> touched = new ArrayList<>();
    List<List<Double>> crossings = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      touched.add(new ArrayList<>());
      crossings.add(new ArrayList<>());
    }
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(i);
      cut(polygon.getExteriorRing(), first, width, touched, crossings);
      for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
        cut(polygon.getInteriorRingN(k), first, width, touched, crossings);
      }
    }
    double[][] spans = new double[count][];
    for (int i = 0; i < count; i++) {
      List<double[]> parts = new ArrayList<>(touched.get(i));
      inside(crossings.get(i), parts);
      inside(crossings.get(i + 1), parts);
      spans[i] = merged(parts);
    }
    return new Columns(first, spans);
  }

  /** Adds what each side covers in each column, and where it crosses the lines between columns. */
  private static void cut(
      LineString ring,
      int first,
      double width,
      List<List<double[]>> touched,
      List<List<Double>> crossings) {
    Coordinate[] points = ring.getCoordinates();
    int last = touched.size() - 2;
    for (int i = 1; i < points.length; i++) {
      boolean forward = points[i - 1].x <= points[i].x;
      Coordinate left = forward ? points[i - 1] : points[i];
      Coordinate right = forward ? points[i] : points[i - 1];
      double from = left.x / width - first;
      double to = right.x / width - first;
      int begin = Math.max(0, Math.min(last, Whole.floor(from + SLACK)));
      int end = Math.max(begin, Math.min(last, Whole.ceil(to - SLACK) - 1));
      for (int column = begin; column <= end; column++) {
        double a = at(from, left.y, to, right.y, Math.max(from, column));
        double b = at(from, left.y, to, right.y, Math.min(to, column + 1));
        touched.get(column).add(new double[] {Math.min(a, b), Math.max(a, b)});
      }
      // Half open, so that a line through a corner is crossed once.
      for (int line = Math.max(0, Whole.ceil(from)); line < to; line++) {
        if (line < crossings.size()) {
          crossings.get(line).add(at(from, left.y, to, right.y, line));
        }
      }
    }
  }

  private static double at(double x0, double y0, double x1, double y1, double x) {
    return x1 - x0 < 1e-12 ? (x <= x0 ? y0 : y1) : y0 + (y1 - y0) * (x - x0) / (x1 - x0);
  }

  private static void inside(List<Double> crossings, List<double[]> parts) {
    double[] ys = crossings.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    for (int i = 0; i + 1 < ys.length; i += 2) {
      parts.add(new double[] {ys[i], ys[i + 1]});
    }
  }

  private static double[] merged(List<double[]> parts) {
    parts.sort((a, b) -> Double.compare(a[0], b[0]));
    double[] spans = new double[2 * parts.size()];
    int count = 0;
    for (double[] part : parts) {
      if (count > 0 && part[0] <= spans[count - 1]) {
        spans[count - 1] = Math.max(spans[count - 1], part[1]);
      } else {
        spans[count++] = part[0];
        spans[count++] = part[1];
      }
    }
    return Arrays.copyOf(spans, count);
  }
}
