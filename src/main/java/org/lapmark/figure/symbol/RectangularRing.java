package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * A ring with four straight sides.
 *
 * @param inner how wide it is inside
 * @param height how high inside
 * @param bar how thick its wire is
 */
record RectangularRing(double inner, double height, double bar) implements Symbol {
  static final Form FORM = Form.of("rectangular_ring", RectangularRing::read);

  private static Symbol read(Measures of) {
    double inner = of.need("inner_width", 3, 300);
    double bar = of.or("bar", Wire.usual(inner), 0.3, inner / 2);
    return new RectangularRing(
        inner, of.or("inner_height", inner * 0.45, inner * 0.05, inner * 3), bar);
  }

  @Override
  public Box size() {
    return Outline.about(inner + 2 * bar, -bar, height + bar);
  }

  @Override
  public double told() {
    return inner;
  }

  @Override
  public List<Point> pointedAt() {
    return List.of(
        new Point(0, height + bar / 2),
        new Point((inner + bar) / 2, height / 2),
        new Point(-(inner + bar) / 2, height / 2));
  }

  @Override
  public Optional<Gate> gate() {
    return Optional.of(new Gate(inner, -bar * 1.6, height));
  }

  @Override
  public void draw(Pen pen) {
    pen.body(
        Outline.rounded(size(), bar * 1.2),
        Outline.rounded(Outline.about(inner, 0, height), bar * 0.3));
  }
}
