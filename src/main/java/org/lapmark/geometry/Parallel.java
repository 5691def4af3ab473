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
  private static final double[] CHECKS = {0.15, 0.3, 0.7, 0.85};

  /** A derivative below this share of the second one has vanished. */
  private static final double STANDING = 1e-7;

  /** The sine of an angle that is none but for rounding. */
  private static final double STRAIGHT = 1e-12;

  /** Lines that stand for the centres of curvature between two cusps. */
  private static final int CENTRES = 8;

  private static final double CENTRE = 1e-9;

  private final Curve curve;
  private final double from;
  private final double to;
  private final double length;
  private final double scale;

  /** A cubic's coefficients, x and y in turn. */
  private final double[] c;

  /** What was last evaluated: a point, two derivatives and the length of the first. */
  private double x;

  private double y;
  private double dx;
  private double dy;
  private double ddx;
  private double ddy;
  private double speed;

  private Parallel(Curve curve, double from, double to) {
    this.curve = curve;
    this.from = from;
    this.to = to;
    this.length = from == to ? 1 : curve.length();
    this.scale = Math.max(curve.secondDerivative(0).norm(), curve.secondDerivative(1).norm());
    this.c = curve instanceof Cubic cubic ? coefficients(cubic) : new double[0];
  }

  private static double[] coefficients(Cubic cubic) {
    Point p = cubic.start();
    Point q = cubic.control1();
    Point r = cubic.control2();
    Point s = cubic.end();
    return new double[] {
      p.x(),
      p.y(),
      3 * (q.x() - p.x()),
      3 * (q.y() - p.y()),
      3 * (r.x() - 2 * q.x() + p.x()),
      3 * (r.y() - 2 * q.y() + p.y()),
      s.x() - p.x() + 3 * (q.x() - r.x()),
      s.y() - p.y() + 3 * (q.y() - r.y())
    };
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
    if (curve.isStraight()) {
      return List.of(beside(curve, distance, distance));
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

  private static Line beside(Curve line, double from, double to) {
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
  public static List<Curve> toCentres(Curve curve, double from, double to) {
    if (from == 0 && to == 0) {
      return List.of(curve);
    }
    if (curve.isStraight()) {
      return List.of(beside(curve, from, to));
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
  public static double toCentre(Curve curve, double t, double distance) {
    return curve.isStraight() ? distance : new Parallel(curve, distance, distance).aside(t);
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
  public static Point outwards(Point tangent) {
    return new Point(tangent.y(), -tangent.x());
  }

  private List<Curve> fitted(boolean toCentres) {
    List<Double> ends = new ArrayList<>();
    ends.add(0.0);
    double before = signedSpeed(0);
    boolean beyond = before < 0;
    for (int i = 1; i <= SIGN_SAMPLES; i++) {
      double here = signedSpeed((double) i / SIGN_SAMPLES);
      if (before < 0 != here < 0) {
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
        fit(place(ends.get(i - 1)), place(ends.get(i)), 0, fitted);
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
    evaluate(t);
    double turning = turning();
    if (turning * distance >= 0) {
      return distance;
    }
    double radius = speed / Math.abs(turning);
    return radius < Math.abs(distance) - CENTRE ? Math.copySign(radius, distance) : distance;
  }

  private double cusp(double from, double to) {
    double low = from;
    double high = to;
    boolean behind = signedSpeed(low) < 0;
    for (int round = 0; round < 60; round++) {
      double middle = (low + high) / 2;
      if (signedSpeed(middle) < 0 == behind) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** A place of the line, its derivative there, the curve's unit tangent and the line's bend. */
  private record Place(double t, Point at, Point derivative, Point tangent, double bend) {}

  private Place place(double t) {
    evaluate(t);
    Point tangent = speed > STANDING * scale ? new Point(dx / speed, dy / speed) : curve.tangent(t);
    double distance = distance(t);
    double turning = turning();
    double along = speed + distance * turning;
    Point at = new Point(x + tangent.y() * distance, y - tangent.x() * distance);
    Point derivative = tangent.times(along);
    if (from != to) {
      double widening = (to - from) / length * speed;
      derivative = derivative.plus(outwards(tangent).times(widening));
    }
    double bend = from == to && along != 0 ? Math.abs(turning / along) : Double.POSITIVE_INFINITY;
    return new Place(t, at, derivative, tangent, bend);
  }

  private void fit(Place from, Place to, int depth, List<Curve> fitted) {
    double third = (to.t - from.t) / 3;
    Cubic cubic =
        new Cubic(
            from.at,
            from.at.plus(from.derivative.times(third)),
            to.at.minus(to.derivative.times(third)),
            to.at);
    Place middle = place((from.t + to.t) / 2);
    if (depth < DEEPEST && (strays(cubic.at(0.5), middle) || strays(cubic, from.t, to.t))) {
      fit(from, middle, depth + 1, fitted);
      fit(middle, to, depth + 1, fitted);
    } else if (from.at.distance(to.at) > 0 || cubic.length() > 0) {
      fitted.add(cubic);
    }
  }

  private boolean strays(Cubic cubic, double from, double to) {
    for (double u : CHECKS) {
      if (strays(cubic.at(u), place(from + (to - from) * u))) {
        return true;
      }
    }
    return false;
  }

  /** Only what lies across the line counts; what lies along it strays by its bend alone. */
  private static boolean strays(Point point, Place place) {
    Point off = point.minus(place.at);
    double square = off.dot(off);
    if (square <= TOLERANCE * TOLERANCE) {
      return false;
    }
    double across = off.cross(place.tangent);
    double along = off.dot(place.tangent);
    return !(Math.abs(across) + along * along * place.bend <= TOLERANCE);
  }

  private double distance(double t) {
    return from == to ? from : from + (to - from) * curve.lengthTo(t) / length;
  }

  /** The speed along the curve's tangent, negative where it runs against the curve. */
  private double signedSpeed(double t) {
    evaluate(t);
    return speed + distance(t) * turning();
  }

  private void evaluate(double t) {
    if (curve instanceof Cubic) {
      x = c[0] + t * (c[2] + t * (c[4] + t * c[6]));
      y = c[1] + t * (c[3] + t * (c[5] + t * c[7]));
      dx = c[2] + t * (2 * c[4] + 3 * t * c[6]);
      dy = c[3] + t * (2 * c[5] + 3 * t * c[7]);
      ddx = 2 * c[4] + 6 * t * c[6];
      ddy = 2 * c[5] + 6 * t * c[7];
      if (t == 1) {
        x = curve.end().x();
        y = curve.end().y();
      }
    } else {
      Point at = curve.at(t);
      Point first = curve.derivative(t);
      Point second = curve.secondDerivative(t);
      x = at.x();
      y = at.y();
      dx = first.x();
      dy = first.y();
      ddx = second.x();
      ddy = second.y();
    }
    speed = Math.sqrt(dx * dx + dy * dy);
  }

  /** How fast the tangent turns, in radians per unit of the parameter, at the place evaluated. */
  private double turning() {
    if (speed > STANDING * scale || scale == 0) {
      return speed == 0 ? 0 : (dx * ddy - dy * ddx) / (speed * speed);
    }
    // Where a cubic's derivative vanishes the first terms of its series leave this limit.
    Point second = new Point(ddx, ddy);
    Point third = curve.secondDerivative(1).minus(curve.secondDerivative(0));
    double square = second.dot(second);
    double across = second.cross(third);
    // A straight cubic doesn't turn; rounding must not make a corner of where it begins.
    boolean straight = Math.abs(across) <= STRAIGHT * (square + second.norm() * third.norm());
    return straight ? 0 : across / (2 * square);
  }
}
