package org.lapmark.figure.symbol;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * A laid cord.
 *
 * @param diameter how thick it is
 * @param length how long
 */
record Cord(double diameter, double length) implements Symbol {
  static final Form FORM = Form.of("cord", Cord::read);

  private static Symbol read(Measures of) {
    return new Cord(of.need("diameter", 0.3, 60), of.need("length", 1, 10_000));
  }

  @Override
  public Box size() {
    return Outline.about(diameter, 0, length);
  }

  @Override
  public double told() {
    return diameter;
  }

  @Override
  public boolean isByLength() {
    return true;
  }

  @Override
  public void draw(Pen pen) {
    pen.body(Path.rectangle(size()));
    double half = diameter / 2;
    double lay = Math.max(diameter, pen.onPaper(1));
    List<Path> strands = new ArrayList<>();
    for (double y = lay * 0.2; y + lay * 0.6 < length; y += lay) {
      strands.add(Outline.line(-half, y + lay * 0.6, half, y));
    }
    pen.details(strands);
  }
}
