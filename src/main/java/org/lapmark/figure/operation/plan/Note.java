package org.lapmark.figure.operation.plan;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Point;

/**
 * A label.
 *
 * @param words the label
 * @param places what it may name, in millimetres of cloth
 */
record Note(String words, List<Point> places) implements Part {
  Note {
    places = List.copyOf(places);
  }

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    List<Point> on = places.stream().map(point -> point.times(scale)).toList();
    canvas.wish(words, on, null);
  }
}
