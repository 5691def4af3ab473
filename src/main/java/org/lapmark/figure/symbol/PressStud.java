package org.lapmark.figure.symbol;

import java.util.List;
import org.lapmark.geometry.Box;

/**
 * One half of a press stud.
 *
 * @param diameter how wide it is
 * @param part which half: {@code ball} or {@code socket}
 */
record PressStud(double diameter, String part) implements Symbol {
  private static final String BALL = "ball";
  static final Form FORM = new Form("press_stud", List.of(BALL, "socket"), PressStud::read);

  private static Symbol read(Measures of) {
    return new PressStud(of.need("diameter", 2, 60), of.part());
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
    double holes = half * 0.74;
    for (int[] way : new int[][] {{1, 1}, {1, -1}, {-1, 1}, {-1, -1}}) {
      double at = holes * StrictMath.sqrt(0.5);
      pen.detail(Outline.circle(way[0] * at, way[1] * at, half * 0.13));
    }
    pen.detail(Outline.circle(0, 0, half * 0.5));
    if (part.equals(BALL)) {
      pen.part(Outline.circle(0, 0, half * 0.3));
    } else {
      pen.solid(Outline.circle(0, 0, half * 0.24));
      pen.detail(Outline.line(-half * 0.4, -half * 0.3, -half * 0.4, half * 0.3));
      pen.detail(Outline.line(half * 0.4, -half * 0.3, half * 0.4, half * 0.3));
    }
  }
}
