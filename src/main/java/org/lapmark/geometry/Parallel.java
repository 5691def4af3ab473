package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of a smooth curve: every point moved along the curve's normal by one distance. A
 * line gives a line and an arc of a circle an arc, exactly. Any other curve gives cubics that share
 * ends and tangents with the true parallel and stay within {@link #TOLERANCE} of it; they are
 * parted where the true parallel has a cusp, which it has where the curve's radius equals the
 * distance on the inner side.
 *
 * <p>With unit tangent T turning at the rate w per unit of the parameter, the parallel's derivative
 * is {@code T (speed + distance w)}; the cubics are the Hermite interpolants of that.
 */
public final class Parallel {
  /** The greatest distance between the true parallel and the curves given for it. */
  public static final double TOLERANCE = 0.003;

  private static final int DEEPEST = 14;
  private static final int SIGN_SAMPLES = 64;
  private static final int CHECKS = 9;

  private final Curve curve;
  private final double distance;
  private final double scale;

  private Parallel(Curve curve, double distance) {
    this.curve = curve;
    this.distance = distance;
    this.scale = Math.max(curve.secondDerivative(0).norm(), curve.secondDerivative(1).norm());
  }

  /**
   * The parallel of a curve without cusps between its ends; see {@link #smoothParts}.
   *
   * @param curve the curve
   * @param distance millimetres to the left of travel as seen on paper, which is the outer side of
   *     a clockwise outline; negative to the right
   * @return curves in order of travel; none where an arc shrinks to its centre
   */
  public static List<Curve> of(Curve curve, double distance) {
    if (distance == 0) {
      return List.of(curve);
    }
    if (curve instanceof Line line) {
      Point shift = outwards(line.tangent(0)).times(distance);
      return List.of(new Line(line.start().plus(shift), line.end().plus(shift)));
    }
    if (curve instanceof Arc arc && arc.isCircular()) {
      double radius = arc.radiusX() + Math.copySign(distance, distance * arc.sweep());
      if (Math.abs(radius) < 1e-9) {
        return List.of();
      }
      // Beyond the centre the parallel runs on the far side.
      double start = arc.startAngle() + arc.rotation() + (radius < 0 ? Math.PI : 0);
      return List.of(Arc.ofCircle(arc.centre(), Math.abs(radius), start, arc.sweep()));
    }
    return new Parallel(curve, distance).fitted();
  }

  /**
   * A curve parted at the cusps between its ends, where its tangent turns about.
   *
   * @param curve any curve
   * @return the parts in order, the curve itself when it has none
   */
  public static List<Curve> smoothParts(Curve curve) {
    if (!(curve instanceof Cubic cubic)) {
      return List.of(curve);
    }
    List<Curve> parts = new ArrayList<>();
    double from = 0;
    for (double cusp : cubic.cusps()) {
      parts.add(cubic.part(from, cusp));
      from = cusp;
    }
    parts.add(cubic.part(from, 1));
    return parts;
  }

  /** The unit vector to the left of travel as seen on paper. */
  static Point outwards(Point tangent) {
    return new Point(tangent.y(), -tangent.x());
  }

  private List<Curve> fitted() {
    List<Double> ends = new ArrayList<>();
    ends.add(0.0);
    double before = signedSpeed(0);
    for (int i = 1; i <= SIGN_SAMPLES; i++) {
      double here = signedSpeed((double) i / SIGN_SAMPLES);
      if (before * here < 0) {
        double cusp = cusp((i - 1.0) / SIGN_SAMPLES, (double) i / SIGN_SAMPLES);
        if (cusp > 1e-9 && cusp < 1 - 1e-9) {
          ends.add(cusp);
        }
      }
      before = here;
    }
    ends.add(1.0);
    List<Curve> fitted = new ArrayList<>();
    for (int i = 1; i < ends.size(); i++) {
      fit(ends.get(i - 1), ends.get(i), 0, fitted);
    }
    return fitted;
  }

  private double cusp(double from, double to) {
    double low = from;
    double high = to;
    boolean forwards = signedSpeed(low) > 0;
    for (int round = 0; round < 60; round++) {
      double middle = (low + high) / 2;
      if ((signedSpeed(middle) > 0) == forwards) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private void fit(double from, double to, int depth, List<Curve> fitted) {
    double third = (to - from) / 3;
    Point start = at(from);
    Point end = at(to);
    Cubic cubic =
        new Cubic(
            start,
            start.plus(curve.tangent(from).times(signedSpeed(from) * third)),
            end.minus(curve.tangent(to).times(signedSpeed(to) * third)),
            end);
    if (depth < DEEPEST && strays(cubic, from, to)) {
      double middle = (from + to) / 2;
      fit(from, middle, depth + 1, fitted);
      fit(middle, to, depth + 1, fitted);
    } else if (start.distance(end) > 0 || cubic.length() > 0) {
      fitted.add(cubic);
    }
  }

  private boolean strays(Cubic cubic, double from, double to) {
    for (int i = 1; i <= CHECKS; i++) {
      double u = i / (CHECKS + 1.0);
      if (cubic.at(u).distance(at(from + (to - from) * u)) > TOLERANCE) {
        return true;
      }
    }
    return false;
  }

  private Point at(double t) {
    return curve.at(t).plus(outwards(curve.tangent(t)).times(distance));
  }

  /** The parallel's speed, negative where it runs against the curve. */
  private double signedSpeed(double t) {
    Point first = curve.derivative(t);
    Point second = curve.secondDerivative(t);
    double speed = first.norm();
    double turning;
    if (speed > 1e-7 * scale || scale == 0) {
      turning = first.cross(second) / (speed * speed);
    } else {
      // Where a cubic's derivative vanishes the first terms of its series leave this limit.
      Point third = curve.secondDerivative(1).minus(curve.secondDerivative(0));
      double square = second.dot(second);
      turning = square == 0 ? 0 : second.cross(third) / (2 * square);
    }
    return speed + distance * turning;
  }
}
