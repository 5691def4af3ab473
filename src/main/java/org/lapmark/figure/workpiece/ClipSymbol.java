package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A sewing clip, seen from above: always of the same size on paper. */
final class ClipSymbol {
  private static final double ROUND = 0.5;

  private ClipSymbol() {}

  /**
   * Draws one.
   *
   * @param middle its middle
   * @param along the direction across which it lies, of length 1
   */
  static void draw(Point middle, Point along, double wide, double long_, Canvas canvas) {
    Point across = along.quarterTurn();
    Point x = along.times(wide / 2);
    Point y = across.times(long_ / 2);
    Point dx = along.times(ROUND);
    Point dy = across.times(ROUND);
    List<Point> round = new ArrayList<>();
    round.add(middle.minus(x).minus(y).plus(dx));
    round.add(middle.plus(x).minus(y).minus(dx));
    round.add(middle.plus(x).minus(y).plus(dy));
    round.add(middle.plus(x).plus(y).minus(dy));
    round.add(middle.plus(x).plus(y).minus(dx));
    round.add(middle.minus(x).plus(y).plus(dx));
    round.add(middle.minus(x).plus(y).minus(dy));
    round.add(middle.minus(x).minus(y).plus(dy));
    round.add(round.get(0));
    Path shape = Path.polyline(round);
    canvas.shape(shape, "figure-symbol");
    canvas.obstacle(shape);
    List<Path> ribs = new ArrayList<>();
    for (double level : new double[] {-0.62, -0.4}) {
      Point at = middle.plus(y.times(level));
      ribs.add(Path.polyline(List.of(at.minus(x.times(0.55)), at.plus(x.times(0.55)))));
    }
    canvas.lines(ribs, "figure-symbol-detail");
  }
}
