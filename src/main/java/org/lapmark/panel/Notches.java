package org.lapmark.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Draws notches. */
final class Notches {
  /** The longest a notch is drawn. */
  private static final double LONGEST = 5;

  /** How far apart the two lines of a double notch stand along the stitching line. */
  private static final double APART = 5;

  /** A notch of an edge without allowance is a short mark inwards from the stitching line. */
  private static final double WITHOUT_ALLOWANCE = 3;

  /** How much farther than the allowance the cutting line may lie beside a notch. */
  private static final double BEYOND = 0.1;

  private Notches() {}

  /** Where the outline turns by less than this, in degrees, one edge goes on as the next. */
  private static final double SMOOTH = 5;

  /**
   * Checks a notch against its edge. Where the outline goes on smoothly, a double notch may stand
   * on both sides of the edge's end.
   *
   * @param ring the panel's edges
   */
  static void check(String panel, List<Edge> ring, Edge edge, Mark.Notch notch) {
    if (notch.count() != 1 && notch.count() != 2) {
      throw PanelCode.NOTCH_COUNT.exception(
          "panel", panel, "edge", notch.edge(), "count", notch.count());
    }
    double length = edge.path().length();
    double aside = notch.count() == 2 ? APART / 2 : 0;
    double rounding = Path.JOIN_TOLERANCE;
    double before = goesOn(neighbour(ring, edge, -1), edge) ? aside : 0;
    double after = goesOn(edge, neighbour(ring, edge, 1)) ? aside : 0;
    if (!(notch.at() >= -rounding
        && notch.at() <= length + rounding
        && notch.at() - aside >= -rounding - before
        && notch.at() + aside <= length + rounding + after)) {
      throw PanelCode.NOTCH_OFF_EDGE.exception(
          "panel", panel, "edge", notch.edge(), "at", notch.at(), "length", length);
    }
  }

  private static Edge neighbour(List<Edge> ring, Edge edge, int by) {
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
  private static Point foot(List<Edge> ring, Edge edge, double at) {
    double length = edge.path().length();
    if (at < 0) {
      Path before = neighbour(ring, edge, -1).path();
      return before.atLength(before.length() + at);
    }
    return at > length
        ? neighbour(ring, edge, 1).path().atLength(at - length)
        : edge.path().atLength(at);
  }

  static List<Path> drawn(Panel panel, Map<String, Double> allowances, CuttingLine cutting) {
    Path line = cutting.path();
    List<Path> drawn = new ArrayList<>();
    for (Mark mark : panel.marks()) {
      if (mark instanceof Mark.Notch notch) {
        Edge edge =
            panel.edges().stream()
                .filter(candidate -> candidate.name().equals(notch.edge()))
                .findFirst()
                .orElseThrow(() -> unknown(panel, notch));
        check(panel.name(), panel.edges(), edge, notch);
        double aside = notch.count() == 2 ? APART / 2 : 0;
        Point inwards = inwards(edge.path(), notch.at());
        for (int i = 0; i < notch.count(); i++) {
          Point foot = foot(panel.edges(), edge, notch.at() - aside + i * APART);
          drawn.add(one(panel, notch, line, foot, inwards, allowances.get(edge.name())));
        }
      }
    }
    return drawn;
  }

  /** At an edge's very end the tangent is that of its last curve. */
  private static Point inwards(Path path, double at) {
    return path.tangentAtLength(at).quarterTurn();
  }

  private static Path one(
      Panel panel, Mark.Notch notch, Path line, Point foot, Point inwards, double allowance) {
    if (allowance == 0) {
      return segment(foot, foot.plus(inwards.times(WITHOUT_ALLOWANCE)));
    }
    double reach = Contour.reach(line, foot, inwards.times(-1));
    if (!(reach <= allowance + BEYOND && reach >= allowance / 2)) {
      throw PanelCode.NOTCH_WITHOUT_CUTTING_LINE.exception(
          "panel", panel.name(), "edge", notch.edge(), "at", notch.at());
    }
    Point start = foot.minus(inwards.times(reach));
    return segment(start, start.plus(inwards.times(Math.min(LONGEST, reach / 2))));
  }

  private static Path segment(Point from, Point to) {
    return new Path(List.of(new Line(from, to)));
  }

  private static PanelException unknown(Panel panel, Mark.Notch notch) {
    return PanelCode.EDGE_UNKNOWN.exception(
        "panel",
        panel.name(),
        "edge",
        notch.edge(),
        "user",
        "notch",
        "edges",
        String.join(", ", panel.edges().stream().map(Edge::name).toList()));
  }
}
