package org.lapmark.figure.workpiece;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.figure.scene.PrintedLength;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * How flat things are drawn at a scale.
 *
 * @param canvas what is drawn on
 * @param scale millimetres on paper for one of cloth
 * @param turn how far what is drawn is turned by what it lies on, in degrees clockwise
 */
public record FlatInk(Canvas canvas, double scale, double turn) {
  /** The least distance between the ends of a dimension, in millimetres of the figure. */
  public static final double SHORTEST_DIMENSION = 0.1;

  /** What is shorter needs no break line, in millimetres of the figure. */
  private static final double SHORTEST_BREAK = 0.01;

  /** How far chords may lie off a curve, in millimetres of the figure. */
  public static final double FLATNESS = 0.05;

  /** Of what lies on nothing else. */
  public FlatInk(Canvas canvas, double scale) {
    this(canvas, scale, 0);
  }

  /** Of what lies on something, from its coordinates to paper by a map. */
  FlatInk on(Affine map) {
    Point down = map.applyVector(new Point(0, 1));
    return new FlatInk(canvas, scale, StrictMath.toDegrees(-StrictMath.atan2(down.x(), down.y())));
  }

  /** Draws lines where a shape is; labels keep clear of them there. */
  public void within(Path whole, List<Path> paths, String role) {
    if (paths.isEmpty()) {
      return;
    }
    canvas.within(whole, paths, role);
    Predicate<Point> inside = Polygons.region(whole.flattened(FLATNESS));
    for (Path path : paths) {
      List<Point> points = path.flattened(FLATNESS);
      for (int i = 1; i < points.size(); i++) {
        Point a = points.get(i - 1);
        Point b = points.get(i);
        int steps = (int) Math.max(1, Math.ceil(a.distance(b) / 2));
        for (int k = 0; k < steps; k++) {
          Point from = a.towards(b, (double) k / steps);
          Point to = a.towards(b, (k + 1.0) / steps);
          if (!from.equals(to) && inside.test(from.towards(to, 0.5))) {
            canvas.obstacle(Path.polyline(List.of(from, to)));
          }
        }
      }
    }
  }

  /** Draws lines white again where they lie on something dark. */
  public void onDark(PlacedBody laid, List<Path> dark, List<Path> paths, String role) {
    for (Path shape : dark) {
      Path seen = laid.seen(shape.transformed(laid.map()));
      if (seen != null) {
        canvas.within(seen, paths, role + "-on-dark");
      }
    }
  }

  /** The outline but for the places where the rest is left out, which get break lines. */
  public void outline(Path outline, List<Cut> cuts) {
    if (cuts.isEmpty()) {
      canvas.line(outline, "figure-outline");
      return;
    }
    List<Point> points = outline.flattened(FLATNESS);
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      if (!a.equals(b) && cuts.stream().noneMatch(cut -> cut.holds(a, b))) {
        canvas.line(Path.polyline(List.of(a, b)), "figure-outline");
      }
    }
    for (Cut cut : cuts) {
      if (cut.isBroken()) {
        breakLines(points, cut);
      }
    }
  }

  /** Where an outline runs along a cut, but for what of it goes there and back. */
  private void breakLines(List<Point> outline, Cut cut) {
    Point along = cut.to().minus(cut.from()).unit();
    TreeMap<Double, Integer> turns = new TreeMap<>();
    for (int i = 1; i < outline.size(); i++) {
      Point a = outline.get(i - 1);
      Point b = outline.get(i);
      if (!a.equals(b) && cut.holds(a, b)) {
        double from = a.minus(cut.from()).dot(along);
        double to = b.minus(cut.from()).dot(along);
        int way = to > from ? 1 : -1;
        turns.merge(Math.min(from, to), way, Integer::sum);
        turns.merge(Math.max(from, to), -way, Integer::sum);
      }
    }
    int there = 0;
    double begun = 0;
    for (Map.Entry<Double, Integer> turn : turns.entrySet()) {
      int next = there + turn.getValue();
      if (there == 0) {
        begun = turn.getKey();
      } else if (next == 0 && turn.getKey() - begun > SHORTEST_BREAK) {
        breakLine(cut.from().plus(along.times(begun)), cut.from().plus(along.times(turn.getKey())));
      }
      there = next;
    }
  }

  public void breakLine(Point from, Point to) {
    Point along = to.minus(from).unit();
    Point across = along.quarterTurn();
    Point middle = from.towards(to, 0.5);
    Path line =
        Path.polyline(
            List.of(
                from,
                middle.minus(along.times(1.6)),
                middle.minus(along.times(0.6)).plus(across.times(1.8)),
                middle.plus(along.times(0.6)).minus(across.times(1.8)),
                middle.plus(along.times(1.6)),
                to));
    canvas.line(line, "figure-break");
  }

  /** Draws a dimension, unless its ends lie on each other as seen from where it stands. */
  public void dimension(PrintedLength length, Beside beside, Point a, Point b, Box shape) {
    if (Math.abs(beside.isLevel() ? b.x() - a.x() : b.y() - a.y()) < SHORTEST_DIMENSION) {
      canvas.leaveOut(length.number());
    } else {
      canvas.dimension(a, b, beside, length.text(), shape);
    }
  }
}
