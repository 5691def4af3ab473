package org.lapmark.figure.operation.plan;

import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * A dimension.
 *
 * @param from where it begins, in millimetres of cloth
 * @param to where it ends
 * @param beside where it stands
 * @param length its lettering
 */
record Span(Point from, Point to, Beside beside, String length) implements Part {
  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {}

  @Override
  public void beside(Canvas canvas, double scale, Box all) {
    canvas.dimension(from.times(scale), to.times(scale), beside, length, all);
  }
}
