package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * A slide of three bars, held at the middle one.
 *
 * @param inner how wide it is inside
 * @param slot how wide each of its two slots is
 * @param bar how thick its bars are
 */
record Slide(double inner, double slot, double bar) implements Symbol {
  static final Form FORM = Form.of("slide", Slide::read);

  private static Symbol read(Measures of) {
    double inner = of.need("inner_width", 3, 300);
    double bar = of.or("bar", Math.max(1.2, inner * 0.12), 0.3, inner / 2);
    return new Slide(inner, of.or("inner_height", inner * 0.22, inner * 0.04, inner), bar);
  }

  @Override
  public Box size() {
    return Outline.about(inner + 2 * bar, -2 * bar - slot, slot + bar);
  }

  @Override
  public double told() {
    return inner;
  }

  @Override
  public List<Point> pointedAt() {
    return List.of(new Point(0, slot + bar / 2), new Point(0, -1.5 * bar - slot));
  }

  @Override
  public Optional<Gate> gate() {
    return Optional.of(new Gate(inner, -bar - slot, slot));
  }

  @Override
  public void draw(Pen pen) {
    pen.body(
        Outline.rounded(size(), bar),
        Outline.rounded(Outline.about(inner, -bar - slot, -bar), slot * 0.2),
        Outline.rounded(Outline.about(inner, 0, slot), slot * 0.2));
  }
}
