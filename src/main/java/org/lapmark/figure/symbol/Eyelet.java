package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * An eyelet, through whose hole is seen what lies under it.
 *
 * @param hole how wide the hole is
 * @param diameter how wide all of it is
 */
record Eyelet(double hole, double diameter) implements Symbol {
  static final Form FORM = Form.of("eyelet", Eyelet::read);

  private static Symbol read(Measures of) {
    double hole = of.need("inner_width", 1, 100);
    return new Eyelet(hole, of.or("diameter", hole * 1.8, hole * 1.05, hole * 6));
  }

  @Override
  public Box size() {
    double half = diameter / 2;
    return new Box(-half, -half, half, half);
  }

  @Override
  public double told() {
    return hole;
  }

  @Override
  public List<Point> pointedAt() {
    return List.of(
        new Point(0, (hole + diameter) / 4),
        new Point((hole + diameter) / 4, 0),
        new Point(-(hole + diameter) / 4, 0));
  }

  @Override
  public Optional<Gate> gate() {
    // What is drawn through comes from beneath and out at the far side.
    return Optional.of(new Gate(hole, -hole * 0.1, diameter / 2));
  }

  @Override
  public void draw(Pen pen) {
    pen.body(Outline.circle(0, 0, diameter / 2), Outline.circle(0, 0, hole / 2));
    pen.detail(Outline.circle(0, 0, (diameter + hole) / 4));
  }
}
