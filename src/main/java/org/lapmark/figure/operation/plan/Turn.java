package org.lapmark.figure.operation.plan;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * The number of a place that sewing comes to, in a ring beside it.
 *
 * @param number the number
 * @param place the place, in millimetres of cloth
 * @param aside how far from it the ring stands, on paper
 */
record Turn(int number, Point place, Point aside) implements Part {
  private static final double RADIUS = 2;

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    Point middle = place.times(scale).plus(aside);
    Path ring = Path.circle(middle, RADIUS);
    canvas.shape(ring, "figure-ring");
    canvas.obstacle(ring);
    canvas.fixed(Integer.toString(number), middle);
  }
}
