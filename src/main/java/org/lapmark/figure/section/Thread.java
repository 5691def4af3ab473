package org.lapmark.figure.section;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Stitches from a place to another, in any direction, with a bar at each end.
 *
 * @param from one end
 * @param to the other
 * @param now whether this step sews them
 * @param words a label
 */
public record Thread(
    SectionScene.Spot from, SectionScene.Spot to, boolean now, Optional<String> words)
    implements SectionScene.Inlay {
  private static final double BEYOND = 1.5;
  private static final double HALF = 1.1;

  @Override
  public void draw(Canvas canvas, double scale) {
    String role = now ? "figure-stitch-now" : "figure-stitch";
    Point along = to.on(scale).minus(from.on(scale)).unit();
    Point first = from.on(scale).minus(along.times(BEYOND));
    Point last = to.on(scale).plus(along.times(BEYOND));
    canvas.line(Path.polyline(List.of(first, last)), role);
    Point across = along.quarterTurn().times(HALF);
    for (Point end : List.of(first, last)) {
      canvas.line(Path.polyline(List.of(end.minus(across), end.plus(across))), role);
    }
    words.ifPresent(text -> canvas.wish(text, List.of(first, last), null));
  }
}
