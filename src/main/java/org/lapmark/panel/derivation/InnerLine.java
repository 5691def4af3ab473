package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.Contour;

/** Lines inside a panel that follow an edge at a distance. */
public final class InnerLine {
  private static final double STEP = 0.5;
  private static final double CHORD = 0.01;

  /** Curves shorter than this, in millimetres, have no direction to speak of. */
  private static final double STUB = 1e-4;

  private InnerLine() {}

  /**
   * The line at a distance inside a part of an edge. Where it runs out of the panel it ends on the
   * stitching line; where it ends short of the stitching line beside a whole edge, it goes on
   * straight until it meets it.
   *
   * @param panel the panel
   * @param edge the edge or chain, clockwise
   * @param from where the part begins, in millimetres along it
   * @param to where it ends
   * @param inset millimetres inwards, 0 or more
   * @return the line, or null when no part of it is inside the panel
   */
  public static Path of(Panel panel, Path edge, double from, double to, double inset) {
    boolean whole = from <= Path.JOIN_TOLERANCE && to >= edge.length() - Path.JOIN_TOLERANCE;
    Path part = whole ? edge : edge.part(from, to);
    if (inset == 0) {
      return part;
    }
    Path line = moved(part, inset);
    if (line == null) {
      return null;
    }
    Path outline = panel.outline();
    Path inside = inside(outline, line);
    if (inside == null || !whole) {
      return inside;
    }
    return extended(outline, inside);
  }

  /** The parallel of a part; at a corner its stretches end where they cross. */
  private static Path moved(Path part, double inset) {
    Path line = null;
    for (Curve curve : part.curves()) {
      for (Curve smooth : Parallel.smoothParts(curve)) {
        if (smooth.length() <= STUB) {
          continue;
        }
        List<Curve> beside = Parallel.of(smooth, -inset);
        if (!beside.isEmpty()) {
          Path next = new Path(beside);
          line = line == null ? next : joined(line, next);
        }
      }
    }
    return line;
  }

  private static Path joined(Path line, Path next) {
    Point end = line.end();
    if (end.distance(next.start()) <= Path.JOIN_TOLERANCE) {
      return line.then(next);
    }
    Point crossing = crossing(line, next);
    if (crossing != null) {
      double before = line.nearestLength(crossing);
      double after = next.nearestLength(crossing);
      if (before > STUB && after < next.length() - STUB) {
        Path first = line.part(0, before);
        Path last = after > STUB ? next.part(after, next.length()) : next;
        return across(first, last.start()).then(last);
      }
    }
    return across(line, next.start()).then(next);
  }

  private static Path across(Path line, Point to) {
    return line.end().distance(to) <= Path.JOIN_TOLERANCE
        ? line
        : line.then(new Path(List.of(new Line(line.end(), to))));
  }

  /** Where two lines cross, the last place of the one that is found from its end. */
  private static Point crossing(Path one, Path other) {
    List<Point> first = one.flattened(CHORD);
    List<Point> second = other.flattened(CHORD);
    for (int i = first.size() - 1; i > 0; i--) {
      Point a = first.get(i - 1);
      Point along = first.get(i).minus(a);
      for (int j = 1; j < second.size(); j++) {
        Point c = second.get(j - 1);
        Point step = second.get(j).minus(c);
        double area = along.cross(step);
        if (Math.abs(area) > 1e-12) {
          double t = c.minus(a).cross(step) / area;
          double u = c.minus(a).cross(along) / area;
          if (t >= 0 && t <= 1 && u >= 0 && u <= 1) {
            return a.plus(along.times(t));
          }
        }
      }
    }
    return null;
  }

  /** The longest stretch of a line inside an outline. */
  private static Path inside(Path outline, Path line) {
    double length = line.length();
    int steps = (int) Math.max(8, Math.min(20_000, Math.ceil(length / STEP)));
    int best = 0;
    int bestStart = -1;
    int start = -1;
    for (int i = 0; i <= steps + 1; i++) {
      boolean in = i <= steps && outline.encloses(line.atLength(length * i / steps));
      if (in && start < 0) {
        start = i;
      } else if (!in && start >= 0) {
        if (i - start > best) {
          best = i - start;
          bestStart = start;
        }
        start = -1;
      }
    }
    if (bestStart < 0) {
      return null;
    }
    double from = bestStart == 0 ? 0 : border(outline, line, bestStart, bestStart - 1, steps);
    int last = bestStart + best - 1;
    double to = last == steps ? length : border(outline, line, last, last + 1, steps);
    return to - from > Path.JOIN_TOLERANCE ? line.part(from, to) : null;
  }

  private static double border(Path outline, Path line, int inside, int outside, int steps) {
    double length = line.length();
    double in = length * inside / steps;
    double out = length * outside / steps;
    for (int round = 0; round < 50; round++) {
      double middle = (in + out) / 2;
      if (outline.encloses(line.atLength(middle))) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  private static Path extended(Path outline, Path line) {
    List<Curve> curves = new ArrayList<>(line.curves());
    Point back = curves.get(0).tangent(0).times(-1);
    Point on = curves.get(curves.size() - 1).tangent(1);
    double before = Contour.reach(outline, line.start(), back);
    double after = Contour.reach(outline, line.end(), on);
    if (before > Path.JOIN_TOLERANCE && before <= line.length()) {
      curves.add(0, new Line(line.start().plus(back.times(before)), line.start()));
    }
    if (after > Path.JOIN_TOLERANCE && after <= line.length()) {
      curves.add(new Line(line.end(), line.end().plus(on.times(after))));
    }
    return new Path(curves);
  }
}
