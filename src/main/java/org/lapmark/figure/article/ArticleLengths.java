package org.lapmark.figure.article;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * The three lengths of a finished article.
 *
 * @param measured which of them are drawn
 * @param length from side to side, as printed
 * @param height from top to bottom, as printed
 * @param depth from front to back, as printed
 */
record ArticleLengths(Set<Kind> measured, String length, String height, String depth) {
  /** A length of the finished article. */
  enum Kind {
    LENGTH,
    HEIGHT,
    DEPTH
  }

  /** Where along its line lettering may stand, and how far off it, of what it needs. */
  private static final double[] SHARES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.15, 0.85, 0, 1};

  private static final double[] FARTHER = {1, 1.25, 1.6, 2.2};

  void draw(Path rim, double across, Projection view) {
    List<Runnable> letterings = new ArrayList<>();
    Box box = rim.bounds();
    double off = 7 / view.scale();
    if (measured.contains(Kind.LENGTH)) {
      // Below the front, parallel to the length.
      Point front = lowest(rim, view);
      Point down = new Point(0, off);
      letterings.add(
          along(
              view.project(0, front),
              view.project(across, front),
              view.project(0, front.plus(down)),
              view.project(across, front.plus(down)),
              length,
              view));
    }
    if (measured.contains(Kind.HEIGHT)) {
      Point top = new Point(box.minX(), box.minY());
      Point bottom = new Point(box.minX(), box.maxY());
      Point back = new Point(-off, 0);
      letterings.add(
          along(
              view.project(across, highest(rim, true)),
              view.project(across, highest(rim, false)),
              view.project(across, top.plus(back)),
              view.project(across, bottom.plus(back)),
              height,
              view));
    }
    if (measured.contains(Kind.DEPTH)) {
      Point rear = new Point(box.minX(), box.maxY());
      Point front = new Point(box.maxX(), box.maxY());
      Point down = new Point(0, off);
      letterings.add(
          along(
              view.project(across, rear),
              view.project(across, front),
              view.project(across, rear.plus(down)),
              view.project(across, front.plus(down)),
              depth,
              view));
    }
    letterings.forEach(Runnable::run);
  }

  /** The point that bounds the article at its front, below. */
  private static Point lowest(Path rim, Projection view) {
    Affine map = view.at(0);
    Point best = rim.start();
    for (Point point : rim.flattened(0.05)) {
      if (map.apply(point).x() < map.apply(best).x()) {
        best = point;
      }
    }
    Box box = rim.bounds();
    return new Point(best.x(), box.maxY());
  }

  private static Point highest(Path rim, boolean top) {
    Point best = rim.start();
    for (Point point : rim.flattened(0.05)) {
      double gain = top ? best.y() - point.y() : point.y() - best.y();
      if (gain > 1e-6 || Math.abs(gain) <= 1e-6 && point.x() < best.x()) {
        best = point;
      }
    }
    return best;
  }

  /** Draws the lines of a dimension; its lettering waits until all lines are drawn. */
  private static Runnable along(
      Point a, Point b, Point from, Point to, String words, Projection view) {
    Canvas canvas = view.canvas();
    for (Point[] witness : new Point[][] {{a, from}, {b, to}}) {
      if (witness[0].distance(witness[1]) > 1) {
        Point out = witness[1].minus(witness[0]).unit();
        canvas.line(
            Path.polyline(List.of(witness[0].plus(out.times(0.8)), witness[1].plus(out.times(1)))),
            "figure-dimension");
      }
    }
    canvas.line(Path.polyline(List.of(from, to)), "figure-dimension");
    Point along = to.minus(from).unit();
    for (Point end : List.of(from, to)) {
      Point tick = Affine.rotation(-45).applyVector(along).times(1.2);
      canvas.line(Path.polyline(List.of(end.minus(tick), end.plus(tick))), "figure-tick");
    }
    Point across = from.towards(to, 0.5).minus(a.towards(b, 0.5)).unit();
    // The lettering keeps clear of the line whatever its direction.
    double width = canvas.width(words) / 2 + 0.8;
    double height = canvas.lineHeight() / 2 + 0.6;
    Point normal = along.quarterTurn();
    if (normal.dot(across) < 0) {
      normal = normal.times(-1);
    }
    double need = Math.abs(normal.x()) * width + Math.abs(normal.y()) * height;
    List<Point> middles = new ArrayList<>();
    for (double farther : FARTHER) {
      for (double share : SHARES) {
        middles.add(from.towards(to, share).plus(normal.times(need * farther)));
      }
    }
    return () -> canvas.fixed(words, middles);
  }
}
