package org.lapmark.figure.operation.plan;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A movement of cloth.
 *
 * @param path its way, in millimetres of cloth
 */
record Arrow(Path path) implements Part {
  private static final double HEAD = 2.6;
  private static final double HALF = 1.05;

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    Path on = path.transformed(Affine.scaling(scale, scale));
    Point tip = on.end();
    Point way = on.tangentAtLength(on.length());
    Point back = tip.minus(way.times(HEAD));
    Point across = way.quarterTurn().times(HALF);
    canvas.line(on.part(0, Math.max(on.length() / 2, on.length() - HEAD)), "figure-direction");
    Path head = Path.polyline(List.of(tip, back.plus(across), back.minus(across), tip));
    canvas.shape(head, "figure-arrow");
    canvas.obstacle(head);
  }
}
