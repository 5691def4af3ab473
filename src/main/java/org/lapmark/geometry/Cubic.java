package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A cubic Bézier curve.
 *
 * @param start the first point
 * @param control1 the first control point
 * @param control2 the second control point
 * @param end the last point
 */
public record Cubic(Point start, Point control1, Point control2, Point end) implements Curve {
  /** A derivative shorter than this share of the control polygon counts as vanished. */
  private static final double VANISHED = 1e-9;

  /**
   * The cubic that equals a quadratic Bézier curve.
   *
   * @param start the first point
   * @param control the control point
   * @param end the last point
   * @return the same curve with the same parameter
   */
  public static Cubic ofQuadratic(Point start, Point control, Point end) {
    return new Cubic(start, start.towards(control, 2.0 / 3), end.towards(control, 2.0 / 3), end);
  }

  @Override
  public double areaAround(Point origin) {
    Point from = start.minus(origin);
    Point to = end.minus(origin);
    Point a = control1.minus(origin);
    Point b = control2.minus(origin);
    return (6 * from.cross(a)
            + 3 * from.cross(b)
            + from.cross(to)
            + 3 * a.cross(b)
            + 3 * a.cross(to)
            + 6 * b.cross(to))
        / 20;
  }

  @Override
  public Point at(double t) {
    if (t == 0) {
      return start;
    }
    if (t == 1) {
      return end;
    }
    return new Point(
        along(start.x(), control1.x(), control2.x(), end.x(), t),
        along(start.y(), control1.y(), control2.y(), end.y(), t));
  }

  private static double along(double p0, double p1, double p2, double p3, double t) {
    double a = p0 + (p1 - p0) * t;
    double b = p1 + (p2 - p1) * t;
    double c = p2 + (p3 - p2) * t;
    double ab = a + (b - a) * t;
    double bc = b + (c - b) * t;
    return ab + (bc - ab) * t;
  }

  /** {@inheritDoc} At a cusp inside the curve it is the limit from behind it. */
  @Override
  public Point tangent(double t) {
    double scale = scale();
    if (scale == 0) {
      return new Point(1, 0);
    }
    Point first = derivative(t);
    if (first.norm() > VANISHED * scale) {
      return first.unit();
    }
    // By Taylor's formula the direction is that of the next derivative, which a step backwards from
    // the very end meets the other way round.
    Point second = secondDerivative(t);
    if (second.norm() > VANISHED * scale) {
      return second.times(t < 1 ? 1 : -1).unit();
    }
    return third().unit();
  }

  @Override
  public Point derivative(double t) {
    return new Point(
        slope(start.x(), control1.x(), control2.x(), end.x(), t),
        slope(start.y(), control1.y(), control2.y(), end.y(), t));
  }

  @Override
  public Point secondDerivative(double t) {
    Point a = control2.minus(control1).minus(control1.minus(start));
    Point b = end.minus(control2).minus(control2.minus(control1));
    return a.towards(b, t).times(6);
  }

  private Point third() {
    return end.minus(start).minus(control2.minus(control1).times(3)).times(6);
  }

  private double scale() {
    return Math.max(
        start.distance(control1), Math.max(control1.distance(control2), control2.distance(end)));
  }

  /** The length of the {@link #derivative}, as plain numbers: most of all sums need it. */
  private double speed(double t) {
    double across = slope(start.x(), control1.x(), control2.x(), end.x(), t);
    double down = slope(start.y(), control1.y(), control2.y(), end.y(), t);
    return Math.sqrt(across * across + down * down);
  }

  private static double slope(double p0, double p1, double p2, double p3, double t) {
    double a = p1 - p0;
    double b = p2 - p1;
    double c = p3 - p2;
    double ab = a + (b - a) * t;
    double bc = b + (c - b) * t;
    return (ab + (bc - ab) * t) * 3;
  }

  @Override
  public double length() {
    return lengthTo(1);
  }

  @Override
  public double lengthTo(double t) {
    return Quadrature.integral(this::speed, 0, Math.min(1, t));
  }

  @Override
  public double parameterAt(double length) {
    return Quadrature.inverse(this::speed, length, length());
  }

  @Override
  public Cubic part(double from, double to) {
    if (from == 0 && to == 1) {
      return this;
    }
    // Blossoms: the control points of a part are the curve's polar form at its ends.
    return new Cubic(at(from), blossom(from, from, to), blossom(from, to, to), at(to));
  }

  private Point blossom(double r, double s, double t) {
    Point a = start.towards(control1, r);
    Point b = control1.towards(control2, r);
    Point c = control2.towards(end, r);
    return a.towards(b, s).towards(b.towards(c, s), t);
  }

  @Override
  public Cubic reversed() {
    return new Cubic(end, control2, control1, start);
  }

  @Override
  public Cubic transformed(Affine map) {
    return new Cubic(map.apply(start), map.apply(control1), map.apply(control2), map.apply(end));
  }

  @Override
  public Box bounds() {
    Box box = new Line(start, end).bounds();
    for (double t : extremes(start.x(), control1.x(), control2.x(), end.x())) {
      Point at = at(t);
      box = box.union(new Box(at.x(), at.y(), at.x(), at.y()));
    }
    for (double t : extremes(start.y(), control1.y(), control2.y(), end.y())) {
      Point at = at(t);
      box = box.union(new Box(at.x(), at.y(), at.x(), at.y()));
    }
    return box;
  }

  @Override
  public double[] turns(Point direction) {
    double[] found =
        extremes(
            direction.cross(start),
            direction.cross(control1),
            direction.cross(control2),
            direction.cross(end));
    Arrays.sort(found);
    return found;
  }

  /** The inner parameters at which one coordinate stands still. */
  private static double[] extremes(double p0, double p1, double p2, double p3) {
    double c = p1 - p0;
    double b = 2 * (p2 - 2 * p1 + p0);
    double a = p3 - 3 * p2 + 3 * p1 - p0;
    double[] found = new double[2];
    int count = 0;
    double discriminant = b * b - 4 * a * c;
    if (discriminant >= 0) {
      // The form without cancellation, which also serves when a is nothing.
      double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
      if (a != 0) {
        found[count++] = q / a;
      }
      if (q != 0) {
        found[count++] = c / q;
      }
    }
    double[] inside = new double[count];
    int kept = 0;
    for (int i = 0; i < count; i++) {
      if (found[i] > 0 && found[i] < 1) {
        inside[kept++] = found[i];
      }
    }
    return Arrays.copyOf(inside, kept);
  }

  /**
   * The parameters between the ends at which the curve has a cusp: where its derivative vanishes.
   *
   * @return none, one or two parameters in order
   */
  List<Double> cusps() {
    List<Double> found = new ArrayList<>();
    double scale = scale();
    for (double[] extremes :
        List.of(
            extremes(start.x(), control1.x(), control2.x(), end.x()),
            extremes(start.y(), control1.y(), control2.y(), end.y()))) {
      for (double t : extremes) {
        boolean known = found.stream().anyMatch(other -> Math.abs(other - t) < 1e-6);
        if (!known && t > 1e-6 && t < 1 - 1e-6 && derivative(t).norm() < 1e-7 * scale) {
          found.add(t);
        }
      }
    }
    found.sort(Double::compare);
    return found;
  }

  /** {@inheritDoc} The second derivative is linear in the parameter, so greatest at an end. */
  @Override
  public double greatestBend() {
    return Math.max(secondDerivative(0).norm(), secondDerivative(1).norm());
  }

  @Override
  public int chords(double tolerance) {
    Chords.check(tolerance);
    return Chords.count(Math.sqrt(greatestBend() / (8 * tolerance)));
  }

  @Override
  public List<Point> flattened(double tolerance) {
    return Chords.points(this::at, chords(tolerance));
  }
}
