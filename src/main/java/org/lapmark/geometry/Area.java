package org.lapmark.geometry;

import java.util.List;

/**
 * The area within a closed run of curves, positive when it runs clockwise on paper, by Green's
 * theorem: half the integral of {@code x dy - y dx}, in closed form for each kind of curve.
 */
final class Area {
  private Area() {}

  static double signed(List<Curve> curves) {
    // Measured from the start, so that a shape far from the origin loses no digits.
    Point origin = curves.get(0).start();
    double sum = 0;
    for (Curve curve : curves) {
      Point from = curve.start().minus(origin);
      Point to = curve.end().minus(origin);
      if (curve instanceof Cubic cubic) {
        Point a = cubic.control1().minus(origin);
        Point b = cubic.control2().minus(origin);
        sum +=
            (6 * from.cross(a)
                    + 3 * from.cross(b)
                    + from.cross(to)
                    + 3 * a.cross(b)
                    + 3 * a.cross(to)
                    + 6 * b.cross(to))
                / 20;
      } else if (curve instanceof Arc arc) {
        Point centre = arc.centre().minus(origin);
        sum += (centre.cross(to.minus(from)) + arc.radiusX() * arc.radiusY() * arc.sweep()) / 2;
      } else {
        sum += from.cross(to) / 2;
      }
    }
    return sum;
  }
}
