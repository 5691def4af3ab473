package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Joins lines to one closed outline, end to nearest end, some of them turned round.
 *
 * @param curves the outline; its small gaps are closed
 * @param widestGap the widest gap there was between two ends, in millimetres
 * @param closed how many gaps were closed
 */
record OutlineJoiner(List<Curve> curves, double widestGap, int closed) {
  /** No panel's outline is drawn in more pieces. */
  private static final int MOST = 500;

  /** Joins them; null if they are several closed ones, or too many. */
  static OutlineJoiner join(List<OutlineBuilder.Subpath> subpaths) {
    if (subpaths.size() > MOST) {
      return null;
    }
    for (OutlineBuilder.Subpath subpath : subpaths) {
      if (subpaths.size() > 1
          && (subpath.closed() || gap(subpath.curves(), subpath.curves()) <= ShapeReading.GAP)) {
        return null;
      }
    }
    List<List<Curve>> left = new ArrayList<>();
    subpaths.forEach(subpath -> left.add(subpath.curves()));
    List<Curve> all = new ArrayList<>(left.remove(0));
    double widest = 0;
    int closed = 0;
    while (!left.isEmpty()) {
      List<Curve> next = nearest(all, left);
      double gap = gap(all, next);
      widest = Math.max(widest, gap);
      if (gap > ShapeReading.GAP) {
        // What follows would be joined at random.
        return new OutlineJoiner(all, gap, 0);
      }
      if (gap > Path.JOIN_TOLERANCE) {
        closed++;
        close(all, next);
      }
      all.addAll(next);
    }
    double gap = gap(all, all);
    widest = Math.max(widest, gap);
    if (gap > Path.JOIN_TOLERANCE && gap <= ShapeReading.GAP) {
      closed++;
      close(all, all);
    }
    return new OutlineJoiner(all, widest, closed);
  }

  private static Point end(List<Curve> curves) {
    return curves.get(curves.size() - 1).end();
  }

  private static double gap(List<Curve> first, List<Curve> second) {
    return end(first).distance(second.get(0).start());
  }

  /** Takes the line with the end nearest to that of a run, turned so that it begins there. */
  private static List<Curve> nearest(List<Curve> run, List<List<Curve>> left) {
    Point end = end(run);
    double least = Double.POSITIVE_INFINITY;
    int best = 0;
    boolean turned = false;
    for (int i = 0; i < left.size(); i++) {
      double ahead = end.distance(left.get(i).get(0).start());
      double behind = end.distance(end(left.get(i)));
      if (Math.min(ahead, behind) < least) {
        least = Math.min(ahead, behind);
        best = i;
        turned = behind < ahead;
      }
    }
    List<Curve> found = left.remove(best);
    List<Curve> next = new ArrayList<>();
    for (Curve curve : found) {
      next.add(turned ? 0 : next.size(), turned ? curve.reversed() : curve);
    }
    return next;
  }

  /** Moves one run's end to another's start, or that start; between arcs adds a line. */
  private static void close(List<Curve> run, List<Curve> next) {
    int last = run.size() - 1;
    Point start = next.get(0).start();
    Point end = end(run);
    if (run.get(last) instanceof Line line) {
      run.set(last, new Line(line.start(), start));
    } else if (run.get(last) instanceof Cubic cubic) {
      run.set(
          last,
          new Cubic(
              cubic.start(), cubic.control1(), cubic.control2().plus(start.minus(end)), start));
    } else if (next.get(0) instanceof Line line) {
      next.set(0, new Line(end, line.end()));
    } else if (next.get(0) instanceof Cubic cubic) {
      next.set(
          0,
          new Cubic(end, cubic.control1().plus(end.minus(start)), cubic.control2(), cubic.end()));
    } else {
      run.add(new Line(end, start));
    }
  }
}
