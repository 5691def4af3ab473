package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** How lines run on and turn. */
final class LineTurns {
  /** How far from the straight line between its ends a straight line strays, in millimetres. */
  static final double STRAIGHT = 1e-6;

  private LineTurns() {}

  /** The turn from one direction to another, in radians, clockwise above 0. */
  static double angle(Point from, Point to) {
    return StrictMath.atan2(from.cross(to), from.dot(to));
  }

  /** The direction in which a line goes on from a place. */
  static Point onwards(Path line, double at) {
    return line.tangentAtLength(at);
  }

  /** The direction in which a line comes to a place. */
  static Point backwards(Path line, double at) {
    if (at <= STRAIGHT) {
      return line.tangentAtLength(0);
    }
    List<Curve> before = line.part(0, at).curves();
    return before.get(before.size() - 1).tangent(1);
  }

  /** Whether a line turns at a place by more than a degree. */
  static boolean isKink(Path line, double at) {
    return isKink(backwards(line, at), onwards(line, at));
  }

  /** Whether two directions differ by more than a degree. */
  static boolean isKink(Point before, Point after) {
    return Math.abs(angle(before, after)) > StrictMath.toRadians(1);
  }

  /** The arc lengths at which a line turns by more than a degree, its ends left out. */
  static List<Double> kinks(Path line) {
    List<Double> kinks = new ArrayList<>();
    double at = 0;
    for (int i = 1; i < line.curves().size(); i++) {
      Curve before = line.curves().get(i - 1);
      at += before.length();
      if (isKink(before.tangent(1), line.curves().get(i).tangent(0))) {
        kinks.add(at);
      }
    }
    return kinks;
  }

  /** Whether a line runs straight on from its start to its end. */
  static boolean isStraight(Path line) {
    Point chord = line.end().minus(line.start()).unit();
    double last = 0;
    for (Point point : line.flattened(1e-3)) {
      Point away = point.minus(line.start());
      if (Math.abs(chord.cross(away)) > STRAIGHT || chord.dot(away) < last - STRAIGHT) {
        return false;
      }
      last = chord.dot(away);
    }
    return last > 0;
  }
}
