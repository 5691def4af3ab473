package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;

/** Lines inside a panel that follow an edge at a distance. */
public final class InnerLine {
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
    List<Crossings.OfPaths> crossings = Crossings.of(line, next);
    if (!crossings.isEmpty()) {
      Crossings.OfPaths crossing = crossings.get(crossings.size() - 1);
      double before = line.lengthTo(crossing.first());
      double after = next.lengthTo(crossing.second());
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

  /** The longest stretch of a line inside an outline; null if there is none. */
  private static Path inside(Path outline, Path line) {
    Path longest = null;
    for (Inside.Stretch stretch : new Inside(outline, 0).stretches(line)) {
      double length = stretch.path().length();
      if (length > (longest == null ? Path.JOIN_TOLERANCE : longest.length())) {
        longest = stretch.path();
      }
    }
    return longest;
  }

  private static Path extended(Path outline, Path line) {
    List<Curve> curves = new ArrayList<>(line.curves());
    Point back = curves.get(0).tangent(0).times(-1);
    Point on = curves.get(curves.size() - 1).tangent(1);
    double before = Crossings.reach(outline, line.start(), back);
    double after = Crossings.reach(outline, line.end(), on);
    if (before > Path.JOIN_TOLERANCE && before <= line.length()) {
      curves.add(0, new Line(line.start().plus(back.times(before)), line.start()));
    }
    if (after > Path.JOIN_TOLERANCE && after <= line.length()) {
      curves.add(new Line(line.end(), line.end().plus(on.times(after))));
    }
    return new Path(curves);
  }
}
