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

  /** Lines that stand for the centres of curvature between two cusps. */
  private static final int CENTRES = 8;

  private static final double CENTRE = 1e-9;

  private final Curve curve;
  private final double from;
  private final double to;
  private final double length;
  private final double scale;

  private Parallel(Curve curve, double from, double to) {
    this.curve = curve;
    this.from = from;
    this.to = to;
    this.length = from == to ? 1 : curve.length();
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
      return List.of(beside(line, distance, distance));
    }
    if (curve instanceof Arc arc && arc.isCircular()) {
      double radius = radius(arc, distance);
      if (Math.abs(radius) < CENTRE) {
        return List.of();
      }
      // Beyond the centre the parallel runs on the far side.
      double start = arc.startAngle() + arc.rotation() + (radius < 0 ? Math.PI : 0);
      return List.of(Arc.ofCircle(arc.centre(), Math.abs(radius), start, arc.sweep()));
    }
    return new Parallel(curve, distance, distance).fitted(false);
  }

  private static Line beside(Line line, double from, double to) {
    Point aside = outwards(line.tangent(0));
    return new Line(line.start().plus(aside.times(from)), line.end().plus(aside.times(to)));
  }

  private static double radius(Arc arc, double distance) {
    return arc.radiusX() + Math.copySign(distance, distance * arc.sweep());
  }

  /**
   * The line beside a smooth curve at a distance that changes evenly along the curve's length, but
   * nowhere beyond the curve's centres of curvature: where it would run beyond them, straight lines
   * join the centres. What lies between the curve and this line is swept once by the curve's
   * normals, all in one direction.
   *
   * @param curve the curve, without cusps between its ends
   * @param from the distance at its start, to the left of travel as seen on paper; negative to the
   *     right
   * @param to the distance at its end, not on the other side
   * @return curves in order of travel; none where an arc shrinks to its centre
   */
  static List<Curve> toCentres(Curve curve, double from, double to) {
    if (from == 0 && to == 0) {
      return List.of(curve);
    }
    if (curve instanceof Line line) {
      return List.of(beside(line, from, to));
    }
    if (from == to && curve instanceof Arc arc && arc.isCircular()) {
      return radius(arc, from) < CENTRE ? List.of() : of(curve, from);
    }
    return new Parallel(curve, from, to).fitted(true);
  }

  /**
   * How far the line of {@link #toCentres} is from one of the curve's ends.
   *
   * @param curve the curve
   * @param t 0 or 1
   * @param distance the distance stated there
   * @return that, or the distance of the curve's centre of curvature if it is nearer
   */
  static double toCentre(Curve curve, double t, double distance) {
    return curve instanceof Line ? distance : new Parallel(curve, distance, distance).aside(t);
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

  private List<Curve> fitted(boolean toCentres) {
    List<Double> ends = new ArrayList<>();
    ends.add(0.0);
    double before = signedSpeed(0);
    boolean beyond = before < 0;
    for (int i = 1; i <= SIGN_SAMPLES; i++) {
      double here = signedSpeed((double) i / SIGN_SAMPLES);
      if (before * here < 0) {
        double cusp = cusp((i - 1.0) / SIGN_SAMPLES, (double) i / SIGN_SAMPLES);
        if (cusp > 1e-9 && cusp < 1 - 1e-9) {
          ends.add(cusp);
        } else if (cusp <= 1e-9) {
          beyond = here < 0;
        }
      }
      before = here;
    }
    ends.add(1.0);
    List<Curve> fitted = new ArrayList<>();
    for (int i = 1; i < ends.size(); i++) {
      if (beyond && toCentres) {
        joinCentres(ends.get(i - 1), ends.get(i), fitted);
      } else {
        fit(ends.get(i - 1), ends.get(i), 0, fitted);
      }
      beyond = !beyond;
    }
    return fitted;
  }

  private void joinCentres(double start, double end, List<Curve> fitted) {
    Point before = centrePoint(start);
    for (int i = 1; i <= CENTRES; i++) {
      Point here = centrePoint(start + (end - start) * i / CENTRES);
      if (before.distance(here) > Path.JOIN_TOLERANCE) {
        fitted.add(new Line(before, here));
        before = here;
      }
    }
  }

  private Point centrePoint(double t) {
    return curve.at(t).plus(outwards(curve.tangent(t)).times(aside(t)));
  }

  private double aside(double t) {
    double distance = distance(t);
    double turning = turning(t);
    if (turning * distance >= 0) {
      return distance;
    }
    double radius = curve.derivative(t).norm() / Math.abs(turning);
    return radius < Math.abs(distance) - CENTRE ? Math.copySign(radius, distance) : distance;
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
            start.plus(derivative(from).times(third)),
            end.minus(derivative(to).times(third)),
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

  private double distance(double t) {
    return from == to ? from : from + (to - from) * curve.lengthTo(t) / length;
  }

  private Point at(double t) {
    return curve.at(t).plus(outwards(curve.tangent(t)).times(distance(t)));
  }

  private Point derivative(double t) {
    Point tangent = curve.tangent(t);
    Point along = tangent.times(signedSpeed(t));
    if (from == to) {
      return along;
    }
    double widening = (to - from) / length * curve.derivative(t).norm();
    return along.plus(outwards(tangent).times(widening));
  }

  /** The speed along the curve's tangent, negative where it runs against the curve. */
  private double signedSpeed(double t) {
    return curve.derivative(t).norm() + distance(t) * turning(t);
  }

  /** How fast the tangent turns, in radians per unit of the parameter. */
  private double turning(double t) {
    Point first = curve.derivative(t);
    Point second = curve.secondDerivative(t);
    double speed = first.norm();
    if (speed > 1e-7 * scale || scale == 0) {
      return speed == 0 ? 0 : first.cross(second) / (speed * speed);
    }
    // Where a cubic's derivative vanishes the first terms of its series leave this limit.
    Point third = curve.secondDerivative(1).minus(curve.secondDerivative(0));
    double square = second.dot(second);
    return square == 0 ? 0 : second.cross(third) / (2 * square);
  }
}
