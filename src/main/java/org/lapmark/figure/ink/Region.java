package org.lapmark.figure.ink;

import java.util.List;
import java.util.function.Predicate;
import org.lapmark.geometry.Point;

/** What a closed run of points encloses, judged on chords; made for being asked often. */
final class Region implements Predicate<Point> {
  /** Sides that are farther away than rounding could bring near aren't measured. */
  private static final double SLACK = 1e-6;

  private final double[] xs;
  private final double[] ys;
  private final double top;
  private final double bottom;
  private final double right;

  Region(List<Point> polygon) {
    this.xs = polygon.stream().mapToDouble(Point::x).toArray();
    this.ys = polygon.stream().mapToDouble(Point::y).toArray();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double far = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < xs.length; i++) {
      least = Math.min(least, ys[i]);
      most = Math.max(most, ys[i]);
      far = Math.max(far, xs[i]);
    }
    this.top = least;
    this.bottom = most;
    this.right = far;
  }

  @Override
  public boolean test(Point point) {
    double x = point.x();
    double y = point.y();
    if (y < top || y >= bottom || x > right) {
      return false;
    }
    boolean inside = false;
    for (int i = 1; i < xs.length; i++) {
      boolean above = ys[i - 1] <= y;
      if (above != ys[i] <= y
          && x < xs[i - 1] + (y - ys[i - 1]) / (ys[i] - ys[i - 1]) * (xs[i] - xs[i - 1])) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Whether a point keeps a distance from all sides. */
  boolean isClear(Point point, double margin) {
    double x = point.x();
    double y = point.y();
    double reach = margin + SLACK;
    for (int i = 1; i < xs.length; i++) {
      double ax = xs[i - 1];
      double ay = ys[i - 1];
      double bx = xs[i];
      double by = ys[i];
      boolean apart =
          ax > x + reach && bx > x + reach
              || ax < x - reach && bx < x - reach
              || ay > y + reach && by > y + reach
              || ay < y - reach && by < y - reach;
      if (!apart && Polygons.distance(x, y, ax, ay, bx, by) < margin) {
        return false;
      }
    }
    return true;
  }
}
