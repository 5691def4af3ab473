package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Even steps along a curve's parameter. */
final class Chords {
  /** More chords than this are never made of one curve. */
  private static final int MOST = 200_000;

  private Chords() {}

  static void check(double tolerance) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException("a chord tolerance is above 0");
    }
  }

  static int count(double wanted) {
    return (int) Math.max(1, Math.min(MOST, Math.ceil(wanted)));
  }

  static List<Point> points(DoubleFunction<Point> curve, int count) {
    List<Point> points = new ArrayList<>(count);
    for (int i = 1; i <= count; i++) {
      points.add(curve.apply(i == count ? 1 : (double) i / count));
    }
    return points;
  }
}
