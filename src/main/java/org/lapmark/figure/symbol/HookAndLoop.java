package org.lapmark.figure.symbol;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * Hook-and-loop tape.
 *
 * @param width how wide it is
 * @param length how long
 * @param part which of the two tapes: {@code hooks} or {@code loops}
 */
record HookAndLoop(double width, double length, String part) implements Symbol {
  private static final String HOOKS = "hooks";

  /** The plain rim along both sides, in shares of the width. */
  private static final double RIM = 0.08;

  /** How far hooks are apart on paper. */
  private static final double PITCH = 1.8;

  private static final int MOST = 40;
  static final Form FORM = new Form("hook_and_loop", List.of(HOOKS, "loops"), HookAndLoop::read);

  private static Symbol read(Measures of) {
    return new HookAndLoop(of.need("width", 3, 300), of.need("length", 2, 10_000), of.part());
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
    double half = width * (0.5 - RIM);
    pen.detail(Outline.line(-half, 0, -half, length));
    pen.detail(Outline.line(half, 0, half, length));
    double pitch = pen.onPaper(PITCH);
    int columns = (int) Math.max(1, Math.min(MOST, Math.round(2 * half / pitch)));
    int rows = (int) Math.max(1, Math.min(3 * MOST, Math.round(length / pitch)));
    double one = Math.min(2 * half / columns, length / rows) * 0.24;
    List<Path> pile = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      for (int k = 0; k < rows; k++) {
        double shift = columns > 1 ? (k % 2 == 0 ? -0.2 : 0.2) : 0;
        double x = -half + 2 * half * (i + 0.5 + shift) / columns;
        double y = length * (k + 0.5) / rows;
        pile.add(part.equals(HOOKS) ? hook(x, y, one) : Outline.circle(x, y, one * 0.9));
      }
    }
    pen.details(pile);
  }

  private static Path hook(double x, double y, double one) {
    return Outline.from(x - one, y + one)
        .to(x - one, y)
        .round(x - one, y - one, x, y - one)
        .round(x + one, y - one, x + one, y)
        .open();
  }
}
