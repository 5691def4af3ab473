package org.lapmark.geometry;

import java.util.List;

/** Winding numbers on the curves themselves: each is cut where it runs level, never into chords. */
final class Winding {
  private static final Point LEVEL = new Point(1, 0);

  private Winding() {}

  static int number(List<Curve> curves, Point point) {
    int number = 0;
    // Curves meet within rounding: each is taken to start where the one before ended.
    Point before = curves.get(curves.size() - 1).end();
    for (Curve curve : curves) {
      if (before.distance(curve.start()) > Path.JOIN_TOLERANCE) {
        before = curve.start();
      }
      double[] levels = curve.turns(LEVEL);
      double from = 0;
      for (int i = 0; i <= levels.length; i++) {
        double to = i == levels.length ? 1 : levels[i];
        number += crossing(curve, from, to, before, point);
        from = to;
        before = curve.at(to);
      }
    }
    return number;
  }

  /** Whether a ray to the right crosses a stretch that only rises or only falls. */
  private static int crossing(Curve curve, double from, double to, Point start, Point point) {
    Point end = curve.at(to);
    boolean down = start.y() <= point.y() && end.y() > point.y();
    boolean up = end.y() <= point.y() && start.y() > point.y();
    if (!down && !up) {
      return 0;
    }
    double low = from;
    double high = to;
    for (int round = 0; round < 60; round++) {
      double middle = (low + high) / 2;
      if ((curve.at(middle).y() <= point.y()) == down) {
        low = middle;
      } else {
        high = middle;
      }
    }
    boolean toTheRight = curve.at((low + high) / 2).x() > point.x();
    // To the right of an outline's inside a clockwise outline runs down the paper.
    return toTheRight ? (down ? 1 : -1) : 0;
  }
}
