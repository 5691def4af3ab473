package org.lapmark.figure.symbol;

import org.lapmark.geometry.Box;

/**
 * A button with four holes.
 *
 * @param diameter how wide it is
 */
record Button(double diameter) implements Symbol {
  static final Form FORM = Form.of("button", of -> new Button(of.need("diameter", 3, 100)));

  @Override
  public Box size() {
    double half = diameter / 2;
    return new Box(-half, -half, half, half);
  }

  @Override
  public double told() {
    return diameter;
  }

  @Override
  public void draw(Pen pen) {
    double half = diameter / 2;
    pen.body(Outline.circle(0, 0, half));
    pen.detail(Outline.circle(0, 0, half * 0.78));
    double at = half * 0.24;
    for (int[] way : new int[][] {{1, 1}, {1, -1}, {-1, 1}, {-1, -1}}) {
      pen.solid(Outline.circle(way[0] * at, way[1] * at, Math.min(1.1, half * 0.13)));
    }
  }
}
