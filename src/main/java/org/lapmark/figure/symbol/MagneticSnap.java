package org.lapmark.figure.symbol;

import java.util.List;
import org.lapmark.geometry.Box;

/**
 * One half of a magnetic snap, set: its legs are hidden by the cloth.
 *
 * @param diameter how wide it is
 * @param part which half: {@code ball} or {@code socket}
 */
record MagneticSnap(double diameter, String part) implements Symbol {
  private static final String BALL = "ball";
  static final Form FORM = new Form("magnetic_snap", List.of(BALL, "socket"), MagneticSnap::read);

  private static Symbol read(Measures of) {
    return new MagneticSnap(of.need("diameter", 4, 80), of.part());
  }

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
    pen.detail(Outline.circle(0, 0, half * 0.86));
    pen.detail(Outline.circle(0, 0, half * 0.5));
    if (part.equals(BALL)) {
      pen.part(Outline.circle(0, 0, half * 0.26));
    } else {
      pen.solid(Outline.circle(0, 0, half * 0.26));
    }
  }
}
