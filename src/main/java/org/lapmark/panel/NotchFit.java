package org.lapmark.panel;

import java.util.List;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Where a set of notches has room on its edge, or over its end. */
public final class NotchFit {
  /** Where the outline turns by less than this, in degrees, one edge goes on as the next. */
  private static final double SMOOTH = 5;

  private NotchFit() {}

  /**
   * Checks a notch against its edge. Where the outline goes on smoothly, a set may stand on both
   * sides of the edge's end.
   *
   * @param ring the panel's edges
   */
  public static void check(String panel, List<Edge> ring, Edge edge, Mark.Notch notch) {
    NotchSet set = notch.set();
    if (set.count() < 1 || set.count() > NotchSet.MOST || set.gaps().size() != set.count() - 1) {
      throw PanelCode.NOTCH_COUNT.exception(
          "panel", panel, "edge", notch.edge(), "count", notch.count());
    }
    for (double gap : set.gaps()) {
      if (!(gap >= NotchSet.LEAST_GAP)) {
        throw PanelCode.NOTCH_GAP.exception(
            "panel", panel, "edge", notch.edge(), "gap", gap, "least", NotchSet.LEAST_GAP);
      }
    }
    double length = edge.path().length();
    double aside = set.span() / 2;
    double rounding = Path.JOIN_TOLERANCE;
    double before = goesOn(neighbour(ring, edge, -1), edge) ? aside : 0;
    double after = goesOn(edge, neighbour(ring, edge, 1)) ? aside : 0;
    if (!(notch.at() >= -rounding
        && notch.at() <= length + rounding
        && notch.at() - aside >= -rounding - before
        && notch.at() + aside <= length + rounding + after)) {
      throw PanelCode.NOTCH_OFF_EDGE.exception(
          "panel",
          panel,
          "edge",
          notch.edge(),
          "at",
          notch.at(),
          "span",
          set.span(),
          "length",
          length);
    }
  }

  /** The edge so many places after another; before it where the number is below 0. */
  public static Edge neighbour(List<Edge> ring, Edge edge, int by) {
    return ring.get((ring.indexOf(edge) + by + ring.size()) % ring.size());
  }

  private static boolean goesOn(Edge edge, Edge next) {
    List<Curve> curves = edge.path().curves();
    Point in = curves.get(curves.size() - 1).tangent(1);
    Point out = next.path().curves().get(0).tangent(0);
    double turn = StrictMath.toDegrees(StrictMath.atan2(in.cross(out), in.dot(out)));
    return edge.path().end().distance(next.path().start()) <= Path.JOIN_TOLERANCE
        && Math.abs(turn) < SMOOTH;
  }

  /** A place that may lie a little beyond an edge's ends: on the neighbour's then. */
  public static Point foot(List<Edge> ring, Edge edge, double at) {
    double length = edge.path().length();
    if (at < 0) {
      Path before = neighbour(ring, edge, -1).path();
      return before.atLength(before.length() + at);
    }
    return at > length
        ? neighbour(ring, edge, 1).path().atLength(at - length)
        : edge.path().atLength(at);
  }
}
