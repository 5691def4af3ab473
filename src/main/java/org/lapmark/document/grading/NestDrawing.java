package org.lapmark.document.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * The nest of sizes: the outlines of a panel in every size, stacked on a corner. Each has a dash of
 * its own and its size named on its line, where no other line runs through the name; where the
 * lines lie too close together, the name stands beside the nest and a leader ends on the line.
 */
public final class NestDrawing {
  /** More sizes than there are dashes begin again with the first. */
  private static final int DASHES = 8;

  private static final double MARGIN = 2;
  private static final double KEY_LINE = 12;
  private static final double KEY_ROW = 5.5;
  private static final double KEY_GAP = 6;
  private static final double RING = 1.4;
  private static final double DOT = 0.5;
  private static final double COLUMN_GAP = 8;
  private static final double COLUMN_ROW = 4.6;

  /** How many places of an outline are tried for its name. */
  private static final int PLACES = 360;

  /** Room around a name beyond which more is no better, in millimetres. */
  private static final double ENOUGH = 5;

  /** Outlines that differ by less are one line, at true size. */
  private static final double SAME = 0.05;

  /** The cosine of what counts as a corner, 15 degrees. */
  private static final double STRAIGHT_ON = 0.966;

  private final StyleSheet styles;
  private final LetteringMeasure lettering;
  private final List<Line> lines = new ArrayList<>();
  private final List<Item> items = new ArrayList<>();
  private final List<Box> taken = new ArrayList<>();
  private final double width;

  /** One outline, the sizes that have it, and points on it. */
  private record Line(String name, String role, Path path, List<Point> points, List<Point> turns) {}

  /** A place for a name, and how much room there is around it. */
  private record Place(Point at, double room) {}

  /**
   * A drawing and its scale.
   *
   * @param drawing the drawing
   * @param scale what a millimetre of the panel is on it
   */
  public record Nest(Drawing drawing, double scale) {}

  private NestDrawing(StyleSheet styles, LetteringMeasure lettering, double width) {
    this.styles = styles;
    this.lettering = lettering;
    this.width = width;
  }

  /**
   * Draws it.
   *
   * @param outlines by size, stacked on the origin; at least one is there
   * @param sizes the sizes' names
   * @param join what stands between the names of sizes that are alike
   * @param width the drawing's width in millimetres
   * @param height its greatest height
   * @return the drawing
   */
  public static Nest of(
      List<Optional<Path>> outlines,
      List<String> sizes,
      String join,
      StyleSheet styles,
      LetteringMeasure lettering,
      double width,
      double height) {
    return new NestDrawing(styles, lettering, width).draw(outlines, sizes, join, height);
  }

  private Nest draw(List<Optional<Path>> outlines, List<String> sizes, String join, double height) {
    Map<Integer, List<String>> alike = new LinkedHashMap<>();
    for (int i = 0; i < outlines.size(); i++) {
      if (outlines.get(i).isPresent()) {
        Path path = outlines.get(i).get();
        int same = i;
        for (int other : alike.keySet()) {
          if (same == i && isSame(path, outlines.get(other).orElseThrow())) {
            same = other;
          }
        }
        alike.computeIfAbsent(same, unused -> new ArrayList<>()).add(sizes.get(i));
      }
    }
    Box box = null;
    for (int index : alike.keySet()) {
      Box own = outlines.get(index).orElseThrow().bounds();
      box = box == null ? own : box.union(own);
    }
    Style name = styles.style("grade-name");
    double widest =
        alike.values().stream()
            .mapToDouble(names -> lettering.width(String.join(join, names), name))
            .max()
            .orElse(0);
    double column = COLUMN_GAP + widest;
    double half = Math.max(widest / 2, MARGIN);
    double scale =
        Math.min(
            1,
            Math.min(
                (width - half - MARGIN - column) / box.width(),
                (height - 2 * half) / box.height()));
    Affine place =
        Affine.translation(half - box.minX() * scale, half - box.minY() * scale)
            .after(Affine.scaling(scale, scale));
    double bottom = 2 * half + box.height() * scale;
    double right = half + box.width() * scale;
    int number = 0;
    for (Map.Entry<Integer, List<String>> entry : alike.entrySet()) {
      Path path = outlines.get(entry.getKey()).orElseThrow().transformed(place);
      String role = "grade-size-" + (number % DASHES + 1);
      lines.add(
          new Line(String.join(join, entry.getValue()), role, path, places(path), turns(path)));
      number++;
    }
    lines.forEach(line -> items.add(new Item.Shape(List.of(line.path), line.role)));
    items.add(
        new Item.Shape(List.of(Path.circle(place.apply(new Point(0, 0)), RING)), "grade-corner"));
    double column0 = right + COLUMN_GAP;
    double labels = names(column0);
    double down = key(Math.max(bottom, labels) + KEY_ROW);
    return new Nest(new Drawing(width, down, items), scale);
  }

  private static boolean isSame(Path one, Path other) {
    if (Math.abs(one.length() - other.length()) > SAME) {
      return false;
    }
    for (int i = 0; i < 64; i++) {
      double at = one.length() * i / 64;
      if (other.distance(one.atLength(at)) > SAME) {
        return false;
      }
    }
    return true;
  }

  private static List<Point> places(Path path) {
    List<Point> points = new ArrayList<>();
    double length = path.length();
    for (int i = 0; i < PLACES; i++) {
      points.add(path.atLength(length * (i + 0.5) / PLACES));
    }
    return points;
  }

  private static List<Point> turns(Path path) {
    List<Point> turns = new ArrayList<>();
    Curve before = path.curves().get(path.curves().size() - 1);
    for (Curve curve : path.curves()) {
      if (before.tangent(1).dot(curve.tangent(0)) < STRAIGHT_ON) {
        turns.add(curve.start());
      }
      before = curve;
    }
    return turns;
  }

  /** Names every line; returns how far down the names beside the nest reach. */
  private double names(double column) {
    Style style = styles.style("grade-name");
    double ascent = lettering.ascent(style);
    List<Line> beside = new ArrayList<>();
    for (Line line : lines) {
      double half = lettering.width(line.name, style) / 2 + style.halo();
      double above = ascent / 2 + style.halo();
      Place best = null;
      for (Point point : line.points) {
        Box box = new Box(point.x() - half, point.y() - above, point.x() + half, point.y() + above);
        double room = room(line, box);
        if (line.turns.stream().anyMatch(turn -> turn.distance(point) < half + ENOUGH)) {
          room /= 4; // A name over a corner hides it.
        }
        if (room > 0 && (best == null || room > best.room + 1e-9)) {
          best = new Place(point, room);
        }
      }
      if (best == null) {
        beside.add(line);
      } else {
        Point at = best.at;
        taken.add(new Box(at.x() - half, at.y() - above, at.x() + half, at.y() + above));
        items.add(
            new Item.Lettering(
                line.name,
                at.plus(new Point(0, ascent * 0.36)),
                Item.Alignment.MIDDLE,
                0,
                "grade-name"));
      }
    }
    return beside(beside, column, ascent);
  }

  /** How far a box is from other lines and names; 0 where one of them meets it. */
  private double room(Line own, Box box) {
    double room = ENOUGH;
    if (box.minX() < 0 || box.maxX() > width || box.minY() < 0) {
      return 0;
    }
    for (Box other : taken) {
      room = Math.min(room, apart(box, other));
    }
    for (Line other : lines) {
      if (other != own) {
        Point before = other.points.get(other.points.size() - 1);
        for (Point point : other.points) {
          Box chord =
              new Box(
                  Math.min(before.x(), point.x()),
                  Math.min(before.y(), point.y()),
                  Math.max(before.x(), point.x()),
                  Math.max(before.y(), point.y()));
          room = Math.min(room, apart(box, chord));
          before = point;
        }
      }
    }
    return room;
  }

  private static double apart(Box one, Box other) {
    double x = Math.max(0, Math.max(one.minX() - other.maxX(), other.minX() - one.maxX()));
    double y = Math.max(0, Math.max(one.minY() - other.maxY(), other.minY() - one.maxY()));
    return Math.sqrt(x * x + y * y);
  }

  /** Names beside the nest, each with a leader to its line where the lines are farthest apart. */
  private double beside(List<Line> some, double column, double ascent) {
    // The same place of every outline, so that the names stand in the order of the sizes: where the
    // line that has the least room has most; of places as good, the one nearest to the names.
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < PLACES; i++) {
      double least = ENOUGH;
      for (Line line : some) {
        Point point = line.points.get(i);
        double room = room(line, new Box(point.x(), point.y(), point.x(), point.y()));
        least = Math.min(least, room - (column - point.x()) / 1000);
      }
      if (least > most) {
        most = least;
        best = i;
      }
    }
    Map<Line, Point> ends = new LinkedHashMap<>();
    for (Line line : some) {
      ends.put(line, line.points.get(best));
    }
    List<Line> order = new ArrayList<>(some);
    order.sort(Comparator.comparingDouble(line -> ends.get(line).y()));
    double y = ascent;
    for (Line line : order) {
      Point end = ends.get(line);
      y = Math.max(y, end.y() + ascent * 0.36);
      Point foot = new Point(column - 1, y - ascent * 0.36);
      items.add(new Item.Shape(List.of(Path.polyline(List.of(foot, end))), "grade-leader"));
      items.add(new Item.Shape(List.of(Path.circle(end, DOT)), "grade-dot"));
      items.add(
          new Item.Lettering(
              line.name, new Point(column, y), Item.Alignment.START, 0, "grade-name"));
      y += COLUMN_ROW;
    }
    return some.isEmpty() ? 0 : y;
  }

  /** What each dash stands for, in rows from a baseline; returns where it ends. */
  private double key(double baseline) {
    Style style = styles.style("grade-key");
    double x = 0;
    double y = baseline;
    for (Line line : lines) {
      double own = KEY_LINE + 2 + lettering.width(line.name, style);
      if (x > 0 && x + own > width) {
        x = 0;
        y += KEY_ROW;
      }
      double middle = y - lettering.ascent(style) * 0.36;
      items.add(
          new Item.Shape(
              List.of(
                  Path.polyline(List.of(new Point(x, middle), new Point(x + KEY_LINE, middle)))),
              line.role));
      items.add(
          new Item.Lettering(
              line.name, new Point(x + KEY_LINE + 2, y), Item.Alignment.START, 0, "grade-key"));
      x += own + KEY_GAP;
    }
    return y + lettering.descent(style) + 0.5;
  }
}
