package org.lapmark.figure.symbol;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * Flat elastic.
 *
 * @param width how wide it is
 * @param length how long
 */
record Elastic(double width, double length) implements Symbol {
  static final Form FORM = Form.of("elastic", Elastic::read);

  private static Symbol read(Measures of) {
    return new Elastic(of.need("width", 1, 300), of.need("length", 1, 10_000));
  }

  @Override
  public Box size() {
    return Outline.about(width, 0, length);
  }

  @Override
  public double told() {
    return width;
  }

  @Override
  public boolean isByLength() {
    return true;
  }

  @Override
  public void draw(Pen pen) {
    pen.body(Path.rectangle(size()));
    int ribs = (int) Math.max(1, Math.min(8, Math.floor(width / pen.onPaper(1.1))));
    List<Path> lines = new ArrayList<>();
    double half = width / (2.0 * ribs) * 0.5;
    double step = Math.max(width * 0.08, pen.onPaper(0.9));
    int count = (int) Math.min(400, Math.max(1, Math.round(length / step)));
    for (int i = 0; i < ribs; i++) {
      double x = -width / 2 + width * (i + 0.5) / ribs;
      Outline rib = Outline.from(x, 0);
      for (int k = 1; k <= count; k++) {
        rib.to(x + (k % 2 == 0 ? half : -half) * (k == count ? 0 : 1), length * k / count);
      }
      lines.add(rib.open());
    }
    pen.details(lines);
  }
}
