package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A ring with one straight bar, at which it is held.
 *
 * @param inner how wide it is inside
 * @param height how high inside, from the bar
 * @param bar how thick its wire is
 */
record DRing(double inner, double height, double bar) implements Symbol {
  static final Form FORM = Form.of("d_ring", DRing::read);

  private static Symbol read(Measures of) {
    double inner = of.need("inner_width", 3, 300);
    double bar = of.or("bar", Wire.usual(inner), 0.3, inner / 2);
    return new DRing(inner, of.or("inner_height", inner * 0.72, inner * 0.1, inner * 3), bar);
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
    return List.of(new Point(0, height + bar / 2), new Point(inner * 0.36, height * 0.9 + bar / 2));
  }

  @Override
  public Optional<Gate> gate() {
    return Optional.of(new Gate(inner, -bar * 1.6, height * 0.4));
  }

  @Override
  public void draw(Pen pen) {
    double half = inner / 2;
    Path outer = bow(half + bar, -bar, height + bar, bar * 0.7);
    pen.body(outer, bow(half, 0, height, bar * 0.3));
  }

  /** Straight at its beginning, round at its end. */
  private static Path bow(double half, double from, double to, double corner) {
    double side = from + (to - from) * 0.22;
    double r = Math.min(corner, (side - from) * 0.9);
    return Outline.from(-half, side)
        .to(-half, from + r)
        .round(-half, from, -half + r, from)
        .to(half - r, from)
        .round(half, from, half, from + r)
        .to(half, side)
        .round(half, to, 0, to)
        .round(-half, to, -half, side)
        .closed();
  }
}
