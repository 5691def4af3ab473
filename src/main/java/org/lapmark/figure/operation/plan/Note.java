package org.lapmark.figure.operation.plan;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Point;

/**
 * A label, or a number in a ring.
 *
 * @param words the label; empty for a number
 * @param number the number
 * @param places what it may name, in millimetres of cloth
 */
record Note(String words, int number, List<Point> places) implements Part {
  Note {
    places = List.copyOf(places);
  }

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    List<Point> on = places.stream().map(point -> point.times(scale)).toList();
    if (words.isEmpty()) {
      canvas.ring(number, on.get(0));
    } else {
      canvas.wish(words, on, null);
    }
  }
}
