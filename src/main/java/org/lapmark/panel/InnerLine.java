package org.lapmark.panel;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Lines inside a panel that follow an edge at a distance. */
public final class InnerLine {
  private static final double STEP = 0.5;

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
    List<Curve> curves = new ArrayList<>();
    for (Curve curve : part.curves()) {
      for (Curve smooth : Parallel.smoothParts(curve)) {
        for (Curve moved : Parallel.of(smooth, -inset)) {
          if (!curves.isEmpty()) {
            Point end = curves.get(curves.size() - 1).end();
            if (end.distance(moved.start()) > Path.JOIN_TOLERANCE) {
              curves.add(new Line(end, moved.start()));
            }
          }
          curves.add(moved);
        }
      }
    }
    if (curves.isEmpty()) {
      return null;
    }
    Path line = new Path(curves);
    Path outline = panel.outline();
    Path inside = inside(outline, line);
    if (inside == null || !whole) {
      return inside;
    }
    return extended(outline, inside);
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
