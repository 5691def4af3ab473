package org.lapmark.figure.symbol;

import org.lapmark.geometry.Box;

/**
 * The cap of a rivet.
 *
 * @param diameter how wide it is
 */
record Rivet(double diameter) implements Symbol {
  static final Form FORM = Form.of("rivet", of -> new Rivet(of.need("diameter", 1.5, 60)));

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
    // A glint says that it is domed.
    double near = half * 0.62;
    pen.detail(Outline.from(-near, 0).round(-near, -near, 0, -near).open());
  }
}
