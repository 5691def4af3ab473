package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The area within a closed run of curves, positive when it runs clockwise on paper, by Green's
 * theorem: half the integral of {@code x dy - y dx}, in closed form for each kind of curve.
 */
public final class Area {
  /** On so many level lines is looked at how much of them lies inside. */
  private static final int LEVELS = 64;

  private static final double CHORD = 0.01;

  private Area() {}

  /** Roughly what lies inside, by the rule that whoever goes in goes out again. */
  static double enclosed(Path path) {
    List<Point> points = path.flattened(CHORD);
    Box box = path.bounds();
    double sum = 0;
    for (int level = 0; level < LEVELS; level++) {
      double y = box.minY() + box.height() * (level + 0.5) / LEVELS;
      List<Double> crossings = new ArrayList<>();
      for (int i = 1; i < points.size(); i++) {
        Point a = points.get(i - 1);
        Point b = points.get(i);
        if (a.y() > y != b.y() > y) {
          crossings.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
        }
      }
      Collections.sort(crossings);
      for (int i = 1; i < crossings.size(); i += 2) {
        sum += (crossings.get(i) - crossings.get(i - 1)) * box.height() / LEVELS;
      }
    }
    return sum;
  }

  public static double signed(List<Curve> curves) {
    // Measured from the start, so that a shape far from the origin loses no digits.
    Point origin = curves.get(0).start();
    double sum = 0;
    for (Curve curve : curves) {
      sum += curve.areaAround(origin);
    }
    return sum;
  }
}
