package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * A buckle that is released at its sides, closed or one half of it. Each half is held at the bar of
 * its own slot.
 *
 * @param inner how wide the slots are
 * @param width how wide all of it is
 * @param length how long it is when it is closed
 * @param bar how thick the bars are
 * @param part what is shown: {@code closed}, {@code prongs} or {@code socket}
 */
record Buckle(double inner, double width, double length, double bar, String part)
    implements Symbol {
  private static final String PRONGS = "prongs";
  private static final String SOCKET = "socket";
  static final Form FORM = new Form("buckle", List.of("closed", PRONGS, SOCKET), Buckle::read);

  private static Symbol read(Measures of) {
    double inner = of.need("inner_width", 3, 300);
    double bar = of.or("bar", Math.max(1.2, inner * 0.12), 0.3, inner / 3);
    double width = of.or("width", inner + 3 * bar, inner + bar, inner * 3);
    return new Buckle(inner, width, of.or("length", inner * 2.2, inner, inner * 6), bar, of.part());
  }

  private double slot() {
    return inner * 0.2;
  }

  private double arms() {
    return length * 0.42;
  }

  @Override
  public Box size() {
    double far =
        switch (part) {
          case SOCKET -> length * 0.56;
          case PRONGS -> length * 0.4 + arms();
          default -> length - bar;
        };
    return Outline.about(width, -bar, far);
  }

  @Override
  public double told() {
    return inner;
  }

  @Override
  public Optional<Gate> gate() {
    return Optional.of(new Gate(inner, -bar * 1.6, slot()));
  }

  @Override
  public void draw(Pen pen) {
    double far = length - bar;
    switch (part) {
      case SOCKET -> socket(pen, 0);
      case PRONGS -> {
        arms(pen, length * 0.4, 1);
        half(pen, -bar, length * 0.4, 0);
      }
      default -> {
        arms(pen, far - length * 0.4, -1);
        half(pen, far - length * 0.4, far, far - bar - slot());
        socket(pen, 0);
      }
    }
  }

  /** The half with the prongs: its slot begins at a place. */
  private void half(Pen pen, double from, double to, double slot) {
    pen.body(
        Outline.rounded(Outline.about(width, from, to), width * 0.1),
        Outline.rounded(Outline.about(inner, slot, slot + slot()), slot() * 0.25));
  }

  /** Two springs that bow out and a guide between them. */
  private void arms(Pen pen, double from, int way) {
    double to = from + way * arms();
    double thick = width * 0.11;
    for (int side : new int[] {-1, 1}) {
      double out = side * width / 2;
      double in = side * (width / 2 - thick);
      double root = side * (width / 2 - thick * 1.6);
      double deep = side * (width / 2 - thick * 2.6);
      double bulge = from + way * arms() * 0.4;
      pen.body(
          Outline.from(root, from)
              .round(root, bulge, out, bulge)
              .round(out, to, in, to)
              .to(deep, from + way * arms() * 0.72)
              .to(deep, from)
              .closed());
    }
    pen.body(
        Outline.rounded(
            Outline.about(thick * 1.4, Math.min(from, from + way * arms()), Math.max(from, to) - 0),
            thick * 0.5));
  }

  /** The half that the prongs snap into. */
  private void socket(Pen pen, double slot) {
    double to = length * 0.56;
    double r = width * 0.1;
    double open = to * 0.52;
    double shut = to * 0.84;
    double in = width / 2 - width * 0.12;
    Path body =
        Outline.from(-width / 2, -bar + r)
            .round(-width / 2, -bar, -width / 2 + r, -bar)
            .to(width / 2 - r, -bar)
            .round(width / 2, -bar, width / 2, -bar + r)
            .to(width / 2, open)
            .round(in, open, in, (open + shut) / 2)
            .round(in, shut, width / 2, shut)
            .to(width / 2, to)
            .to(-width / 2, to)
            .to(-width / 2, shut)
            .round(-in, shut, -in, (open + shut) / 2)
            .round(-in, open, -width / 2, open)
            .closed();
    pen.body(body, Outline.rounded(Outline.about(inner, slot, slot + slot()), slot() * 0.25));
    pen.detail(Outline.line(-in * 0.9, slot() + bar, in * 0.9, slot() + bar));
  }
}
