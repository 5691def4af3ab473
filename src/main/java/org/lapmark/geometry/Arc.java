package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An arc of a circle or an ellipse.
 *
 * @param centre the ellipse's centre
 * @param radiusX the first semi-axis in millimetres
 * @param radiusY the second semi-axis in millimetres
 * @param rotation the angle from the x axis to the first semi-axis, in radians, clockwise on paper
 * @param startAngle the eccentric angle of the start, in radians from the first semi-axis
 * @param sweep how far the arc goes on from there, in radians; positive is clockwise on paper; at
 *     most a full turn either way
 */
public record Arc(
    Point centre, double radiusX, double radiusY, double rotation, double startAngle, double sweep)
    implements Curve {
  private static final double FULL = 2 * Math.PI;

  /** Refuses negative radii and more than a full turn. */
  public Arc {
    if (!(radiusX >= 0 && radiusY >= 0)) {
      throw new IllegalArgumentException("an arc's radii are 0 or more");
    }
    if (!(Math.abs(sweep) <= FULL * (1 + 1e-12))) {
      throw new IllegalArgumentException("an arc sweeps at most a full turn");
    }
  }

  /**
   * An arc of a circle.
   *
   * @param centre the centre
   * @param radius the radius in millimetres
   * @param startAngle the angle of the start from the x axis, in radians, clockwise on paper
   * @param sweep how far it goes on, in radians, positive clockwise on paper
   * @return the arc
   */
  public static Arc ofCircle(Point centre, double radius, double startAngle, double sweep) {
    return new Arc(centre, radius, radius, 0, startAngle, sweep);
  }

  /**
   * An arc stated as SVG's path command {@code A} states it. Follows the implementation notes of
   * SVG 2, appendix B.2: signs of radii are dropped, radii too small to reach are scaled up, and a
   * radius of 0 gives a straight line.
   *
   * @param start the first point
   * @param radiusX the first semi-axis in millimetres
   * @param radiusY the second semi-axis in millimetres
   * @param rotationDegrees the angle of the first semi-axis, in degrees, clockwise on paper
   * @param large whether to take the arc of more than half a turn
   * @param clockwise whether it runs clockwise on paper
   * @param end the last point
   * @return an arc whose ends are the stated ones within rounding, or a line
   */
  public static Curve fromEndpoints(
      Point start,
      double radiusX,
      double radiusY,
      double rotationDegrees,
      boolean large,
      boolean clockwise,
      Point end) {
    double rx = Math.abs(radiusX);
    double ry = Math.abs(radiusY);
    if (rx == 0 || ry == 0 || start.equals(end)) {
      return new Line(start, end);
    }
    Affine turn = Affine.rotation(rotationDegrees);
    Point half = start.minus(end).times(0.5);
    // The half chord in the ellipse's own axes, then with the ellipse shrunk to the unit circle.
    double x = (turn.a() * half.x() + turn.b() * half.y()) / rx;
    double y = (turn.c() * half.x() + turn.d() * half.y()) / ry;
    double square = x * x + y * y;
    if (square > 1) {
      double up = Math.sqrt(square);
      rx *= up;
      ry *= up;
      x /= up;
      y /= up;
      square = 1;
    }
    double away = Math.sqrt(Math.max(0, 1 / square - 1));
    double sign = large == clockwise ? -1 : 1;
    Point unitCentre = new Point(sign * away * y, -sign * away * x);
    Point middle = start.plus(end).times(0.5);
    Point centre =
        middle.plus(turn.applyVector(new Point(unitCentre.x() * rx, unitCentre.y() * ry)));
    double from = StrictMath.atan2(y - unitCentre.y(), x - unitCentre.x());
    double to = StrictMath.atan2(-y - unitCentre.y(), -x - unitCentre.x());
    double sweep = to - from;
    if (clockwise && sweep < 0) {
      sweep += FULL;
    } else if (!clockwise && sweep > 0) {
      sweep -= FULL;
    }
    return new Arc(centre, rx, ry, StrictMath.toRadians(rotationDegrees), from, sweep);
  }

  private Point onto(double first, double second) {
    double cos = StrictMath.cos(rotation);
    double sin = StrictMath.sin(rotation);
    return new Point(first * cos - second * sin, first * sin + second * cos);
  }

  private double angle(double t) {
    return startAngle + sweep * t;
  }

  /**
   * Whether it is an arc of a circle.
   *
   * @return true when both radii are the same
   */
  public boolean isCircular() {
    return radiusX == radiusY;
  }

  @Override
  public Point start() {
    return at(0);
  }

  @Override
  public Point end() {
    return at(1);
  }

  @Override
  public double areaAround(Point origin) {
    Point chord = end().minus(origin).minus(start().minus(origin));
    return (centre.minus(origin).cross(chord) + radiusX * radiusY * sweep) / 2;
  }

  @Override
  public Point at(double t) {
    double angle = angle(t);
    return centre.plus(onto(radiusX * StrictMath.cos(angle), radiusY * StrictMath.sin(angle)));
  }

  @Override
  public Point tangent(double t) {
    double angle = angle(t);
    double sign = sweep < 0 ? -1 : 1;
    Point along =
        onto(-radiusX * StrictMath.sin(angle) * sign, radiusY * StrictMath.cos(angle) * sign);
    if (along.norm() > 1e-12 * Math.max(radiusX, radiusY)) {
      return along.unit();
    }
    // The tip of an ellipse that was squeezed flat: it turns back along its axis.
    double back = t < 1 ? -1 : 1;
    Point limit =
        onto(radiusX * StrictMath.cos(angle) * back, radiusY * StrictMath.sin(angle) * back).unit();
    return limit.norm() == 0 ? new Point(1, 0) : limit;
  }

  @Override
  public Point derivative(double t) {
    double angle = angle(t);
    return onto(-radiusX * StrictMath.sin(angle) * sweep, radiusY * StrictMath.cos(angle) * sweep);
  }

  @Override
  public Point secondDerivative(double t) {
    double angle = angle(t);
    double factor = -sweep * sweep;
    return onto(radiusX * StrictMath.cos(angle) * factor, radiusY * StrictMath.sin(angle) * factor);
  }

  private double speed(double t) {
    double angle = angle(t);
    double across = radiusX * StrictMath.sin(angle);
    double along = radiusY * StrictMath.cos(angle);
    return Math.sqrt(across * across + along * along) * Math.abs(sweep);
  }

  @Override
  public double length() {
    return lengthTo(1);
  }

  @Override
  public double lengthTo(double t) {
    double to = Math.min(1, t);
    if (isCircular()) {
      return radiusX * Math.abs(sweep) * Math.max(0, to);
    }
    return Quadrature.integral(this::speed, 0, to);
  }

  @Override
  public double parameterAt(double length) {
    double total = length();
    if (isCircular()) {
      return total == 0 ? 0 : Math.max(0, Math.min(1, length / total));
    }
    return Quadrature.inverse(this::speed, length, total);
  }

  @Override
  public Arc part(double from, double to) {
    return new Arc(centre, radiusX, radiusY, rotation, angle(from), sweep * (to - from));
  }

  @Override
  public Arc reversed() {
    return new Arc(centre, radiusX, radiusY, rotation, startAngle + sweep, -sweep);
  }

  /**
   * {@inheritDoc} The new semi-axes are the singular values of the map from the unit circle; a
   * circle under a similarity stays a circle to the last bit.
   */
  @Override
  public Arc transformed(Affine map) {
    Point first = map.applyVector(onto(radiusX, 0));
    Point second = map.applyVector(onto(0, radiusY));
    Point newCentre = map.apply(centre);
    // A 2 x 2 matrix is a turn times a scaling plus a mirrored turn times a scaling.
    double e = (first.x() + second.y()) / 2;
    double f = (first.x() - second.y()) / 2;
    double g = (first.y() + second.x()) / 2;
    double h = (first.y() - second.x()) / 2;
    double turning = Math.sqrt(e * e + h * h);
    double mirroring = Math.sqrt(f * f + g * g);
    double turned = StrictMath.atan2(h, e);
    double mirrored = StrictMath.atan2(g, f);
    if (mirroring <= 1e-14 * turning) {
      return new Arc(newCentre, turning, turning, 0, startAngle + turned, sweep);
    }
    if (turning <= 1e-14 * mirroring) {
      return new Arc(newCentre, mirroring, mirroring, 0, mirrored - startAngle, -sweep);
    }
    double before = (turned - mirrored) / 2;
    double after = (turned + mirrored) / 2;
    double large = turning + mirroring;
    double small = turning - mirroring;
    return small >= 0
        ? new Arc(newCentre, large, small, after, startAngle + before, sweep)
        : new Arc(newCentre, large, -small, after, -(startAngle + before), -sweep);
  }

  @Override
  public Box bounds() {
    Box box = new Line(start(), end()).bounds();
    double cos = StrictMath.cos(rotation);
    double sin = StrictMath.sin(rotation);
    for (double t : standing(StrictMath.atan2(-radiusY * sin, radiusX * cos))) {
      Point at = at(t);
      box = box.union(new Box(at.x(), at.y(), at.x(), at.y()));
    }
    for (double t : turns(new Point(1, 0))) {
      Point at = at(t);
      box = box.union(new Box(at.x(), at.y(), at.x(), at.y()));
    }
    return box;
  }

  @Override
  public double[] turns(Point direction) {
    double first = direction.cross(onto(radiusX, 0));
    double second = direction.cross(onto(0, radiusY));
    return standing(StrictMath.atan2(second, first));
  }

  @Override
  public double greatestBend() {
    return Math.max(radiusX, radiusY) * sweep * sweep;
  }

  /** The inner parameters at an eccentric angle and half a turn from it, in order. */
  private double[] standing(double angle) {
    double[] found = new double[4];
    int count = 0;
    for (double candidate : new double[] {angle, angle + Math.PI}) {
      double on = sweep < 0 ? startAngle - candidate : candidate - startAngle;
      on -= FULL * Math.floor(on / FULL);
      if (on > 0 && on < Math.abs(sweep)) {
        found[count++] = on / Math.abs(sweep);
      }
    }
    double[] inside = Arrays.copyOf(found, count);
    Arrays.sort(inside);
    return inside;
  }

  /**
   * {@inheritDoc} A chord's distance from its arc is at most the larger radius times the sagitta in
   * the unit circle.
   */
  @Override
  public List<Point> flattened(double tolerance) {
    return Chords.points(this::at, chords(tolerance));
  }

  @Override
  public int chords(double tolerance) {
    Chords.check(tolerance);
    double radius = Math.max(radiusX, radiusY);
    double step = tolerance >= radius ? Math.PI / 2 : 2 * StrictMath.acos(1 - tolerance / radius);
    return Chords.count(Math.abs(sweep) / Math.min(step, Math.PI / 2));
  }

  /**
   * The arc as cubics for writers that know no arcs, within 1e-4 mm: the usual handles of {@code
   * 4/3 tan(angle/4)} stray from a circle by less than {@code radius * angle^6 / 36864}, angle in
   * radians. Ends and tangents are exact.
   *
   * @return the cubics in order of travel
   */
  public List<Cubic> cubics() {
    double radius = Math.max(radiusX, radiusY);
    double widest =
        Math.min(Math.PI / 2, StrictMath.pow(36864 * 5e-5 / Math.max(radius, 1e-9), 1.0 / 6));
    int count = Chords.count(Math.abs(sweep) / widest - 1e-9);
    double step = sweep / count;
    double handle = sweep == 0 ? 0 : 4.0 / 3 * StrictMath.tan(step / 4) / sweep;
    List<Cubic> cubics = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double from = (double) i / count;
      double to = (i + 1.0) / count;
      Point a = at(from);
      Point d = at(to);
      Point b = a.plus(derivative(from).times(handle));
      Point c = d.minus(derivative(to).times(handle));
      cubics.add(new Cubic(a, b, c, d));
    }
    return cubics;
  }
}
