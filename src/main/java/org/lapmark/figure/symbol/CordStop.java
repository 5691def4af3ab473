package org.lapmark.figure.symbol;

import org.lapmark.geometry.Box;

/**
 * A cord stop on a cord that runs along y; it is pressed from the side.
 *
 * @param width how wide it is along the cord
 * @param length how long it is, with what is pressed
 * @param hole how wide its hole is
 */
record CordStop(double width, double length, double hole) implements Symbol {
  static final Form FORM = Form.of("cord_stop", CordStop::read);

  private static Symbol read(Measures of) {
    double hole = of.need("inner_width", 0.5, 40);
    double width = of.or("width", hole * 2.6, hole * 1.1, hole * 12);
    return new CordStop(width, of.or("length", width * 1.7, width * 0.6, width * 5), hole);
  }

  @Override
  public Box size() {
    return new Box(-length / 2, -width / 2, length / 2, width / 2);
  }

  @Override
  public double told() {
    return hole;
  }

  @Override
  public void draw(Pen pen) {
    double half = width / 2;
    double shell = length * 0.18;
    pen.body(
        Outline.rounded(new Box(length * 0.05, -half * 0.78, length / 2, half * 0.78), half * 0.4));
    pen.body(Outline.rounded(new Box(-length / 2, -half, shell, half), half * 0.5));
    double at = -length * 0.16;
    pen.detail(Outline.line(at - hole / 2, -half, at - hole / 2, half));
    pen.detail(Outline.line(at + hole / 2, -half, at + hole / 2, half));
    for (double x : new double[] {0.26, 0.32, 0.38}) {
      pen.detail(Outline.line(length * x, -half * 0.6, length * x, half * 0.6));
    }
  }
}
