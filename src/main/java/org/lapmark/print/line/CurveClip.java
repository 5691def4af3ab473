package org.lapmark.print.line;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Cuts paths at the edges of a box. Curves are split at the parameters where they cross, found to
 * within 1e-12, and stay the curves they are: no point of what is kept is moved.
 */
public final class CurveClip {
  private static final double SAME = 1e-11;

  private CurveClip() {}

  /**
   * The parts of a path inside a box, edges included.
   *
   * @param path the path
   * @param box the box
   * @return the parts in order of travel; a closed path that lies inside stays closed
   */
  public static List<Path> inside(Path path, Box box) {
    Box bounds = path.bounds();
    if (box.contains(bounds)) {
      return List.of(path);
    }
    if (!box.expanded(1e-9).overlaps(bounds.expanded(1e-9))) {
      return List.of();
    }
    List<List<Curve>> runs = new ArrayList<>();
    boolean open = false;
    boolean startsInside = false;
    boolean first = true;
    for (Curve curve : path.curves()) {
      double[] cuts = cuts(curve, box);
      for (int i = 0; i + 1 < cuts.length; i++) {
        boolean inside = box.expanded(1e-9).contains(curve.at((cuts[i] + cuts[i + 1]) / 2));
        if (inside) {
          if (!open) {
            runs.add(new ArrayList<>());
          }
          boolean whole = cuts[i] == 0 && cuts[i + 1] == 1;
          runs.get(runs.size() - 1).add(whole ? curve : curve.part(cuts[i], cuts[i + 1]));
        }
        if (first) {
          startsInside = inside;
          first = false;
        }
        open = inside;
      }
    }
    if (open && startsInside && path.isClosed() && runs.size() > 1) {
      List<Curve> last = runs.remove(runs.size() - 1);
      last.addAll(runs.remove(0));
      runs.add(0, last);
    }
    return runs.stream().map(Path::new).toList();
  }

  private static double[] cuts(Curve curve, Box box) {
    List<Double> cuts = new ArrayList<>();
    cuts.add(0.0);
    cuts.add(1.0);
    if (!box.contains(curve.bounds())) {
      for (boolean x : new boolean[] {true, false}) {
        double[] turns = turns(curve, x);
        for (int i = 0; i + 1 < turns.length; i++) {
          addCrossing(curve, x, x ? box.minX() : box.minY(), turns[i], turns[i + 1], cuts);
          addCrossing(curve, x, x ? box.maxX() : box.maxY(), turns[i], turns[i + 1], cuts);
        }
      }
    }
    double[] sorted = cuts.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    List<Double> apart = new ArrayList<>();
    apart.add(0.0);
    for (double cut : sorted) {
      if (cut - apart.get(apart.size() - 1) > SAME && 1 - cut > SAME) {
        apart.add(cut);
      }
    }
    apart.add(1.0);
    return apart.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void addCrossing(
      Curve curve, boolean x, double level, double from, double to, List<Double> cuts) {
    double low = coordinate(curve.at(from), x) - level;
    double high = coordinate(curve.at(to), x) - level;
    if (low == 0) {
      cuts.add(from);
    }
    if (high == 0) {
      cuts.add(to);
    }
    if (low * high >= 0) {
      return;
    }
    if (curve instanceof Line) {
      cuts.add(low / (low - high));
      return;
    }
    double a = from;
    double b = to;
    for (int i = 0; i < 60 && b - a > 1e-14; i++) {
      double middle = (a + b) / 2;
      if ((coordinate(curve.at(middle), x) - level) * low > 0) {
        a = middle;
      } else {
        b = middle;
      }
    }
    cuts.add((a + b) / 2);
  }

  /** Parameters, 0 and 1 included, between which a coordinate only rises or only falls. */
  private static double[] turns(Curve curve, boolean x) {
    List<Double> turns = new ArrayList<>();
    turns.add(0.0);
    if (curve instanceof Cubic cubic) {
      double p0 = coordinate(cubic.start(), x);
      double p1 = coordinate(cubic.control1(), x);
      double p2 = coordinate(cubic.control2(), x);
      double p3 = coordinate(cubic.end(), x);
      double a = p3 - 3 * p2 + 3 * p1 - p0;
      double b = 2 * (p2 - 2 * p1 + p0);
      double c = p1 - p0;
      double root = b * b - 4 * a * c;
      if (root >= 0) {
        double q = -(b + Math.copySign(Math.sqrt(root), b)) / 2;
        addInner(turns, q / a);
        addInner(turns, c / q);
      }
    } else if (curve instanceof Arc arc) {
      double cos = StrictMath.cos(arc.rotation());
      double sin = StrictMath.sin(arc.rotation());
      double u = x ? arc.radiusX() * cos : arc.radiusX() * sin;
      double v = x ? -arc.radiusY() * sin : arc.radiusY() * cos;
      double extreme = StrictMath.atan2(v, u);
      for (int k = -6; k <= 6; k++) {
        addInner(turns, (extreme + k * Math.PI - arc.startAngle()) / arc.sweep());
      }
    }
    turns.add(1.0);
    return turns.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private static void addInner(List<Double> turns, double t) {
    if (t > 0 && t < 1) {
      turns.add(t);
    }
  }

  private static double coordinate(Point point, boolean x) {
    return x ? point.x() : point.y();
  }
}
