package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * A round ring.
 *
 * @param inner how wide it is inside
 * @param bar how thick its wire is
 */
record RoundRing(double inner, double bar) implements Symbol {
  static final Form FORM = Form.of("round_ring", RoundRing::read);

  private static Symbol read(Measures of) {
    double inner = of.need("inner_width", 3, 300);
    return new RoundRing(inner, of.or("bar", Wire.usual(inner), 0.3, inner / 2));
  }

  @Override
  public Box size() {
    return Outline.about(inner + 2 * bar, -bar, inner + bar);
  }

  @Override
  public double told() {
    return inner;
  }

  @Override
  public List<Point> pointedAt() {
    return List.of(
        new Point(0, inner + bar / 2),
        new Point((inner + bar) / 2, inner / 2),
        new Point(-(inner + bar) / 2, inner / 2));
  }

  @Override
  public Optional<Gate> gate() {
    return Optional.of(new Gate(inner, -bar * 1.6, inner * 0.4));
  }

  @Override
  public void draw(Pen pen) {
    double half = inner / 2;
    pen.body(Outline.circle(0, half, half + bar), Outline.circle(0, half, half));
  }
}
