package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Where a dimension may stand: its line in one of several rows beside a shape, its words at the
 * middle of the line or beyond one of its ends.
 *
 * @param a one of the points between which it is measured
 * @param b the other
 * @param from where its line begins
 * @param to where its line ends
 * @param beside on which side of the shape it stands
 * @param words the box of its lettering
 */
record DimensionLine(Point a, Point b, Point from, Point to, Beside beside, Box words) {
  /** Room between a shape and the first dimension beside it, and between dimensions. */
  private static final double FIRST = 4.5;

  private static final double NEXT = 5.5;
  private static final int ROWS = 5;
  private static final double TICK = 0.9;

  /** Between its line and words above or below it. */
  private static final double OVER_LINE = 0.7;

  /** The same where the words reach over its ticks. */
  private static final double OVER_TICKS = 1.5;

  /** Between its line and words beside it. */
  private static final double BESIDE_LINE = 1.5;

  /** Between its end and words beyond it. */
  private static final double BEYOND = 1.7;

  private static final double FAR_WITNESS = 1.5;
  private static final double BEFORE_WITNESS = 0.8;
  private static final double SHORTEST_WITNESS = 0.4;
  private static final double AFTER_WITNESS = 0.9;

  /** What the words keep clear of lines and of other words, and lines of other words. */
  private static final double FROM_LINES = 0.5;

  private static final double FROM_WORDS = 0.8;

  /** How far from a shape the line in a row stands, counted from 0 for the nearest. */
  static double at(int row) {
    return FIRST + row * NEXT;
  }

  /**
   * Its places, the best first.
   *
   * @param a one point
   * @param b the other
   * @param beside where it stands
   * @param width the width of its lettering
   * @param height the height of its lettering
   * @param shape the box that it stands beside
   * @return the places
   */
  static List<DimensionLine> places(
      Point a, Point b, Beside beside, double width, double height, Box shape) {
    List<DimensionLine> places = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      double offset = at(row);
      double at =
          switch (beside) {
            case ABOVE -> shape.minY() - offset;
            case BELOW -> shape.maxY() + offset;
            case LEFT -> shape.minX() - offset;
            case RIGHT -> shape.maxX() + offset;
          };
      boolean level = beside.isLevel();
      Point from = level ? new Point(a.x(), at) : new Point(at, a.y());
      Point to = level ? new Point(b.x(), at) : new Point(at, b.y());
      for (Box words :
          level
              ? along(from, to, beside, width, height)
              : upright(from, to, beside, width, height)) {
        places.add(new DimensionLine(a, b, from, to, beside, words));
      }
    }
    return places;
  }

  private static List<Box> along(Point from, Point to, Beside beside, double width, double height) {
    double first = Math.min(from.x(), to.x());
    double last = Math.max(from.x(), to.x());
    // Words that reach over the ticks at its ends stand clear of them.
    double off = last - first < width + 2 * TICK + 3 * FROM_LINES ? OVER_TICKS : OVER_LINE;
    double top = beside.isBack() ? from.y() - off - height : from.y() + off;
    double level = from.y() - height / 2;
    return List.of(
        Box.at((first + last - width) / 2, top, width, height),
        Box.at(last + BEYOND, level, width, height),
        Box.at(first - BEYOND - width, level, width, height));
  }

  private static List<Box> upright(
      Point from, Point to, Beside beside, double width, double height) {
    double first = Math.min(from.y(), to.y());
    double last = Math.max(from.y(), to.y());
    double left = beside.isBack() ? from.x() - BESIDE_LINE - width : from.x() + BESIDE_LINE;
    return List.of(
        Box.at(left, (first + last - height) / 2, width, height),
        Box.at(left, last + BEYOND, width, height),
        Box.at(left, first - BEYOND - height, width, height));
  }

  /**
   * Whether it is in nothing’s way.
   *
   * @param lines what is drawn
   * @param texts lettering that stands
   * @param others the dimensions that stand
   * @param interrupted whether its witness lines stop at lettering and go on behind it
   */
  boolean isFree(
      List<Canvas.Stretch> lines,
      List<Box> texts,
      List<DimensionLine> others,
      boolean interrupted) {
    Box clear = words.expanded(FROM_LINES);
    Box line = line();
    for (Box text : texts) {
      Box kept = text.expanded(FROM_WORDS);
      if (kept.overlaps(words) || kept.overlaps(line)) {
        return false;
      }
    }
    if (!interrupted && !witnesses(texts).equals(witnesses())) {
      return false;
    }
    return lines.stream().noneMatch(one -> Polygons.crosses(clear, one.from(), one.to()))
        && witnesses().stream().noneMatch(one -> Polygons.crosses(clear, one.from(), one.to()))
        && others.stream().noneMatch(this::runsInto);
  }

  /** Whether two lines in one row have more than an end in common. */
  private boolean runsInto(DimensionLine other) {
    if (beside.isLevel() != other.beside.isLevel()) {
      return false;
    }
    boolean level = beside.isLevel();
    double apart = level ? from.y() - other.from.y() : from.x() - other.from.x();
    double common =
        level
            ? common(from.x(), to.x(), other.from.x(), other.to.x())
            : common(from.y(), to.y(), other.from.y(), other.to.y());
    return Math.abs(apart) < TICK && common > FROM_LINES;
  }

  private static double common(double a, double b, double c, double d) {
    return Math.min(Math.max(a, b), Math.max(c, d)) - Math.max(Math.min(a, b), Math.min(c, d));
  }

  private Box line() {
    return new Box(
            Math.min(from.x(), to.x()),
            Math.min(from.y(), to.y()),
            Math.max(from.x(), to.x()),
            Math.max(from.y(), to.y()))
        .expanded(0.6);
  }

  /** The lines from the points that are measured to the ends of the dimension. */
  List<Canvas.Stretch> witnesses() {
    List<Canvas.Stretch> found = new ArrayList<>();
    Point out = beside.outward();
    for (Point[] one : new Point[][] {{a, from}, {b, to}}) {
      if (one[0].distance(one[1]) > FAR_WITNESS) {
        found.add(
            new Canvas.Stretch(
                one[0].plus(out.times(BEFORE_WITNESS)), one[1].plus(out.times(AFTER_WITNESS))));
      }
    }
    return found;
  }

  /** Its witness lines where they don’t run through lettering. */
  List<Canvas.Stretch> witnesses(List<Box> texts) {
    List<Canvas.Stretch> left = witnesses();
    for (Box text : texts) {
      Box kept = text.expanded(FROM_LINES);
      List<Canvas.Stretch> parts = new ArrayList<>();
      for (Canvas.Stretch one : left) {
        if (Polygons.crosses(kept, one.from(), one.to())) {
          parts.addAll(around(one, kept));
        } else {
          parts.add(one);
        }
      }
      left = parts;
    }
    return left;
  }

  /** What of a line away from the shape lies before a box and behind it. */
  private List<Canvas.Stretch> around(Canvas.Stretch one, Box box) {
    boolean level = beside.isLevel();
    double low = level ? box.minY() : box.minX();
    double high = level ? box.maxY() : box.maxX();
    Point before = at(one, beside.isBack() ? high : low);
    Point behind = at(one, beside.isBack() ? low : high);
    List<Canvas.Stretch> parts = new ArrayList<>();
    for (Canvas.Stretch part :
        List.of(new Canvas.Stretch(one.from(), before), new Canvas.Stretch(behind, one.to()))) {
      if (part.to().minus(part.from()).dot(beside.outward()) > SHORTEST_WITNESS) {
        parts.add(part);
      }
    }
    return parts;
  }

  private Point at(Canvas.Stretch one, double level) {
    return beside.isLevel() ? new Point(one.from().x(), level) : new Point(level, one.from().y());
  }

  /** The strokes across its ends. */
  List<Path> ticks() {
    List<Path> found = new ArrayList<>();
    for (Point at : List.of(from, to)) {
      found.add(
          Path.polyline(
              List.of(
                  new Point(at.x() - TICK, at.y() + TICK),
                  new Point(at.x() + TICK, at.y() - TICK))));
    }
    return found;
  }
}
