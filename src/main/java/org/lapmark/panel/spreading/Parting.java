package org.lapmark.panel.spreading;

import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;

/**
 * A place of a line at which it is cut.
 *
 * @param at its arc length on the line
 * @param before how what lies before it moves
 * @param after how what lies behind it moves
 * @param cut what cuts it
 */
record Parting(double at, Affine before, Affine after, Cut cut) {
  double gap(Point point) {
    return before.apply(point).distance(after.apply(point));
  }

  /** The same place on a line that begins at another. */
  Parting from(double start) {
    return new Parting(at - start, before, after, cut);
  }

  /** Whether one side is only shifted against the other. */
  boolean isShift() {
    return Math.abs(before.a() - after.a()) < 1e-12 && Math.abs(before.b() - after.b()) < 1e-12;
  }
}
