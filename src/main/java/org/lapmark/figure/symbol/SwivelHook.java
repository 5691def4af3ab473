package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * A hook with a gate that turns in an eye, by which it is held.
 *
 * @param inner how wide the eye is inside
 * @param length how long all of it is
 * @param bar how thick its wire is
 */
record SwivelHook(double inner, double length, double bar) implements Symbol {
  static final Form FORM = Form.of("swivel_hook", SwivelHook::read);

  private static Symbol read(Measures of) {
    double inner = of.need("inner_width", 3, 300);
    double bar = of.or("bar", Wire.usual(inner), 0.3, inner / 3);
    double usual = inner * 1.3 + 8 * bar;
    return new SwivelHook(inner, of.or("length", usual, inner * 0.8 + 6 * bar, inner * 8), bar);
  }

  private double eye() {
    return inner * 0.3;
  }

  @Override
  public Box size() {
    return Outline.about(inner + 2 * bar, -bar, length - bar);
  }

  @Override
  public double told() {
    return inner;
  }

  @Override
  public List<Point> pointedAt() {
    return List.of(new Point(0, eye() + 1.5 * bar), new Point(0, length - 1.5 * bar));
  }

  @Override
  public Optional<Gate> gate() {
    return Optional.of(new Gate(inner, -bar * 1.6, eye()));
  }

  @Override
  public void draw(Pen pen) {
    double neck = eye() + bar;
    double collar = neck + 1.4 * bar;
    double far = length - bar;
    double wide = Math.min(inner / 2 + bar * 0.4, (far - collar) * 0.36);
    double wire = Math.min(bar, wide * 0.4);
    pen.body(
        Outline.rounded(Outline.about(2 * wide, collar, far), wide),
        Outline.rounded(
            Outline.about(2 * (wide - wire), collar + 1.4 * wire, far - wire), wide - wire));
    gate(pen, wide, wire, collar, far);
    pen.body(
        Outline.rounded(Outline.about(inner + 2 * bar, -bar, neck), bar),
        Outline.rounded(Outline.about(inner, 0, eye()), bar * 0.4));
    pen.body(Outline.rounded(Outline.about(2.6 * bar, neck, collar + bar), bar * 0.6));
  }

  /** The spring that opens inwards, and the knob by which it is pushed. */
  private static void gate(Pen pen, double wide, double wire, double collar, double far) {
    double upper = collar + wide * 0.9;
    double lower = far - wide * 0.75;
    pen.detail(Outline.line(wide - wire, upper, wide, upper));
    pen.detail(Outline.line(wide - wire, lower, wide, lower + wire * 0.4));
    double middle = upper + (lower - upper) * 0.35;
    double half = wire * 0.55;
    double out = wide + wire * 0.4;
    pen.part(Outline.rounded(new Box(wide - wire * 0.5, middle - half, out, middle + half), half));
  }
}
