package org.lapmark.figure.stitching;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Strokes along a line on paper. Lengths in millimetres; a line's inside is on its right. */
final class Strokes {
  private Strokes() {}

  /** A place beside a line: so far along it, so far to its right. */
  static Point beside(Path line, double along, double inside) {
    double at = Math.max(0, Math.min(line.length(), along));
    return line.atLength(at).plus(line.tangentAtLength(at).quarterTurn().times(inside));
  }

  /** The distances of equal spaces, about as wide as wanted, from the middle of the first on. */
  private static List<Double> middles(double length, double wanted) {
    int count = (int) Math.max(1, Math.round(length / wanted));
    List<Double> middles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      middles.add(length * (i + 0.5) / count);
    }
    return middles;
  }

  /** A line that swings from side to side. */
  static List<Path> zigzag(Path line, double reach, double step) {
    double length = line.length();
    int count = (int) Math.max(2, Math.round(length / step));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      points.add(beside(line, length * i / count, i % 2 == 0 ? -reach : reach));
    }
    return List.of(Path.polyline(points));
  }

  /** A line with loose ends of thread. */
  static List<Path> tailed(Path line, double tail) {
    if (line.isClosed()) {
      return List.of(line);
    }
    double length = line.length();
    Point back = line.tangentAtLength(0).times(-tail);
    Point on = line.tangentAtLength(length).times(tail);
    Point side = line.tangentAtLength(0).quarterTurn().times(-1);
    Point end = line.tangentAtLength(length).quarterTurn().times(-1);
    return List.of(
        line,
        Path.polyline(
            List.of(
                line.start(),
                line.start().plus(back.times(0.5)).plus(side.times(0.5)),
                line.start().plus(back).plus(side.times(1.4)))),
        Path.polyline(
            List.of(
                line.end(),
                line.end().plus(on.times(0.5)).plus(end.times(0.5)),
                line.end().plus(on).plus(end.times(1.4)))));
  }

  /** Stitches on the line, each ending in a short one across. */
  static List<Path> hooked(Path line, double every, double stitch, double across) {
    List<Path> strokes = new ArrayList<>();
    for (double middle : middles(line.length(), every)) {
      Point end = beside(line, middle + stitch / 2, 0);
      strokes.add(
          Path.polyline(
              List.of(
                  beside(line, middle - stitch / 2, 0),
                  end,
                  beside(line, middle + stitch / 2, -across))));
    }
    return strokes;
  }

  /** Slanting stitches across the line. */
  static List<Path> slanted(Path line, double every, double inside, double slant) {
    List<Path> strokes = new ArrayList<>();
    for (double middle : middles(line.length(), every)) {
      strokes.add(
          Path.polyline(
              List.of(
                  beside(line, middle - slant / 2, inside),
                  beside(line, middle + slant / 2, -inside * 0.6))));
    }
    return strokes;
  }

  /** Stitches straight across the line. */
  static List<Path> rungs(Path line, double every, double reach) {
    List<Path> strokes = new ArrayList<>();
    for (double middle : middles(line.length(), every)) {
      strokes.add(
          Path.polyline(List.of(beside(line, middle, reach), beside(line, middle, -reach))));
    }
    return strokes;
  }

  /** Small crosses on the line. */
  static List<Path> crosses(Path line, double every, double reach) {
    List<Path> strokes = new ArrayList<>();
    for (double middle : middles(line.length(), every)) {
      for (int side : new int[] {-1, 1}) {
        strokes.add(
            Path.polyline(
                List.of(
                    beside(line, middle - reach, -side * reach),
                    beside(line, middle + reach, side * reach))));
      }
    }
    return strokes;
  }

  /** A second run of stitches beside the line, over its beginning or its end. */
  static Path doubled(Path line, boolean atEnd, double run, double apart) {
    double length = line.length();
    double reach = Math.min(run, length / 3);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 4; i++) {
      double along = atEnd ? length - reach + reach * i / 4 : reach * i / 4;
      points.add(beside(line, along, apart));
    }
    return Path.polyline(points);
  }

  /** An open arrowhead on the line. */
  static Path head(Path line, double at, boolean onwards, double size) {
    double tip = onwards ? at + size : at - size;
    double back = onwards ? at - size : at + size;
    return Path.polyline(
        List.of(
            beside(line, back, -size * 0.8), beside(line, tip, 0), beside(line, back, size * 0.8)));
  }
}
