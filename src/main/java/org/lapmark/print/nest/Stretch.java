package org.lapmark.print.nest;

import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.LineObstacles;

/**
 * A stretch of a cutting line on one tile that is to have a name.
 *
 * @param line the line
 * @param cell the tile
 * @param from where on the line it begins, in millimetres
 * @param to where it ends
 */
record Stretch(NestedLines.Cutting line, Cell cell, double from, double to) {
  /** How far a line may curve away under a name, in ems. */
  private static final double SAG = 0.14;

  double length() {
    return to - from;
  }

  double middle() {
    return (from + to) / 2;
  }

  /** The room of a name on the line; null where it curves too much. */
  LineObstacles.Slot slot(double at, double width, double halfHeight, double em) {
    Point first = line.path().atLength(at - width / 2);
    Point last = line.path().atLength(at + width / 2);
    Point middle = line.path().atLength(at);
    Point chord = first.towards(last, 0.5);
    if (first.distance(last) < 0.9 * width || chord.distance(middle) > SAG * em) {
      return null;
    }
    return new LineObstacles.Slot(
        chord.towards(middle, 0.5),
        NamePlaces.upright(last.minus(first).unit()),
        width / 2,
        halfHeight);
  }
}
