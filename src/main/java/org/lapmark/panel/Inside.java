package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Which stretches of a line lie inside an outline. A line is looked at in steps of at most 2 mm and
 * a thirty-second of each of its curves; where it goes in or out is then found by halving, to
 * rounding. What goes in and out again between two steps isn't seen.
 */
public final class Inside {
  private static final double STEP = 2;
  private static final int LEAST_STEPS = 32;
  private static final int MOST_STEPS = 4000;

  /** A place on a line: a curve's index and a parameter on it. */
  public record Place(int curve, double parameter) {
    public double order() {
      return curve + parameter;
    }
  }

  /** A stretch of a line. */
  public record Stretch(Place from, Place to) {
    public Path of(Path line) {
      return part(line, from, to);
    }
  }

  /** Steps are judged on chords; only where a line goes in or out is judged on the curves. */
  private static final double CHORD = 1e-3;

  private final Path outline;
  private final double margin;
  private final List<Point> chords;

  /**
   * An outline to look into.
   *
   * @param outline a closed path
   * @param margin how far beyond it, in millimetres, still counts as inside
   */
  public Inside(Path outline, double margin) {
    this.outline = outline;
    this.margin = margin;
    this.chords = outline.flattened(CHORD);
  }

  public boolean has(Point point) {
    return outline.encloses(point) || margin > 0 && outline.distance(point) <= margin;
  }

  /** The same but for points nearer than 0.001 mm to the outline. */
  private boolean hasNearly(Point point) {
    boolean inside = false;
    double nearest = Double.POSITIVE_INFINITY;
    Point a = chords.get(0);
    for (int i = 1; i < chords.size(); i++) {
      Point b = chords.get(i);
      if (a.y() > point.y() != b.y() > point.y()) {
        double x = a.x() + (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y());
        inside ^= x > point.x();
      }
      if (margin > 0 && isNear(a, b, point)) {
        Point along = b.minus(a);
        double square = along.dot(along);
        double t = square == 0 ? 0 : point.minus(a).dot(along) / square;
        nearest = Math.min(nearest, a.towards(b, Math.max(0, Math.min(1, t))).distance(point));
      }
      a = b;
    }
    return inside || nearest <= margin;
  }

  private boolean isNear(Point a, Point b, Point point) {
    return point.x() >= Math.min(a.x(), b.x()) - margin
        && point.x() <= Math.max(a.x(), b.x()) + margin
        && point.y() >= Math.min(a.y(), b.y()) - margin
        && point.y() <= Math.max(a.y(), b.y()) + margin;
  }

  /** The stretches of a line that lie inside, in order. */
  public List<Stretch> stretches(Path line) {
    List<Stretch> found = new ArrayList<>();
    Place begun = null;
    Place last = new Place(0, 0);
    for (int i = 0; i < line.curves().size(); i++) {
      Curve curve = line.curves().get(i);
      int steps =
          (int) Math.min(MOST_STEPS, Math.max(LEAST_STEPS, Math.ceil(curve.length() / STEP)));
      double before = 0;
      boolean insideBefore = hasNearly(curve.at(0));
      if (insideBefore && begun == null) {
        begun = new Place(i, 0);
      } else if (!insideBefore && begun != null) {
        found.add(new Stretch(begun, last));
        begun = null;
      }
      for (int k = 1; k <= steps; k++) {
        double here = (double) k / steps;
        boolean inside = hasNearly(curve.at(here));
        if (inside != insideBefore) {
          Place border = new Place(i, border(curve, before, here, insideBefore));
          if (inside) {
            begun = border;
          } else {
            found.add(new Stretch(begun, border));
            begun = null;
          }
        }
        before = here;
        insideBefore = inside;
      }
      last = new Place(i, 1);
    }
    if (begun != null) {
      found.add(new Stretch(begun, last));
    }
    return found;
  }

  private double border(Curve curve, double from, double to, boolean insideBefore) {
    double low = from;
    double high = to;
    for (int round = 0; round < 60; round++) {
      double middle = (low + high) / 2;
      if (has(curve.at(middle)) == insideBefore) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * The longest stretch of a straight line that lies inside, within 0.002 mm.
   *
   * @param from where the line begins
   * @param to where it ends
   * @return the stretch's ends, or nothing
   */
  public Optional<Line> longest(Point from, Point to) {
    Point along = to.minus(from);
    List<Double> crossings = new ArrayList<>();
    double before = along.cross(chords.get(0).minus(from));
    for (int i = 1; i < chords.size(); i++) {
      double here = along.cross(chords.get(i).minus(from));
      if (before > 0 != here > 0) {
        Point at = chords.get(i - 1).towards(chords.get(i), before / (before - here));
        crossings.add(at.minus(from).dot(along) / along.dot(along));
      }
      before = here;
    }
    Collections.sort(crossings);
    Line longest = null;
    for (int i = 1; i < crossings.size(); i += 2) {
      double start = Math.max(0, crossings.get(i - 1));
      double end = Math.min(1, crossings.get(i));
      if (end > start) {
        Line stretch = new Line(from.towards(to, start), from.towards(to, end));
        longest = longest == null || stretch.length() > longest.length() ? stretch : longest;
      }
    }
    return Optional.ofNullable(longest);
  }

  /** The part of a line between two of its places; null where nothing lies between them. */
  public static Path part(Path line, Place from, Place to) {
    List<Curve> curves = new ArrayList<>();
    for (int i = from.curve; i <= to.curve; i++) {
      double start = i == from.curve ? from.parameter : 0;
      double end = i == to.curve ? to.parameter : 1;
      if (end > start) {
        Curve curve = line.curves().get(i);
        curves.add(start == 0 && end == 1 ? curve : curve.part(start, end));
      }
    }
    return curves.isEmpty() ? null : new Path(curves);
  }
}
