package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchFit;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/** Draws notches. */
final class Notches {
  /** The longest a notch is drawn. */
  static final double LONGEST = 5;

  /** A notch of an edge without allowance is a short mark inwards from the stitching line. */
  static final double INSIDE = 3;

  /** No allowance is wider than this, in millimetres, so nothing farther off is a raw edge. */
  static final double FARTHEST = 150;

  /** How much farther than the allowance the cutting line may lie beside a notch. */
  private static final double BEYOND = 0.1;

  /** Half of what a wedge opens at the raw edge, as a share of its depth. */
  private static final double WEDGE = 0.4;

  private Notches() {}

  /** How far beside an edge's end is still its end for a reader; millimetres. */
  private static final double BESIDE = 0.002;

  static List<Path> drawn(Panel panel, Map<String, Allowance> allowances, CuttingLine cutting) {
    Path line = cutting.path();
    List<Path> drawn = new ArrayList<>();
    for (Mark.Notch notch : panel.marks(Mark.Notch.class)) {
      Edge edge =
          panel.edges().stream()
              .filter(candidate -> candidate.name().equals(notch.edge()))
              .findFirst()
              .orElseThrow(() -> unknown(panel, notch));
      NotchFit.check(panel.name(), panel.edges(), edge, notch);
      Point inwards = inwards(edge.path(), notch.at());
      double length = edge.path().length();
      for (double offset : notch.set().offsets()) {
        double at = notch.at() + offset;
        double share = Math.max(0, Math.min(1, at / length));
        double allowance = allowances.get(edge.name()).at(share);
        Point foot = NotchFit.foot(panel.edges(), edge, at);
        double reach = reach(line, edge.path(), at, foot, inwards, allowance);
        Path whole = one(panel, notch, line, foot, inwards, allowance, reach);
        double away = awayFromFold(panel.edges(), allowances, edge, at);
        if (away == 0 || allowance == 0) {
          drawn.add(whole);
        } else {
          Point tip = whole.curves().get(0).end();
          Point along = inwards.quarterTurn().times(-away);
          drawn.add(besideFold(line, foot.minus(inwards.times(reach)), tip, along));
        }
      }
    }
    drawn.addAll(DartCap.slits(panel, cutting));
    return drawn;
  }

  /** At an edge's very end the tangent is that of its last curve. */
  private static Point inwards(Path path, double at) {
    return path.tangentAtLength(at).quarterTurn();
  }

  /**
   * How far the cutting line is from a notch's foot. At the very end of an edge that ends on a fold
   * the way there runs along the line's own end, so it is measured beside it.
   */
  private static double reach(
      Path line, Path edge, double at, Point foot, Point inwards, double allowance) {
    double reach = Crossings.reach(line, foot, inwards.times(-1));
    double length = edge.length();
    boolean atEnd = Math.abs(at) <= BESIDE || Math.abs(length - at) <= BESIDE;
    if (isDrawable(reach, allowance) || !atEnd || length < 4 * BESIDE) {
      return reach;
    }
    double beside = Math.max(BESIDE, Math.min(length - BESIDE, at));
    return Crossings.reach(line, edge.atLength(beside), inwards.times(-1));
  }

  /**
   * The direction along an edge away from the fold on which a place lies: 1 where the edge begins
   * on one, -1 where it ends on one, 0 elsewhere.
   */
  private static int awayFromFold(
      List<Edge> ring, Map<String, Allowance> allowances, Edge edge, double at) {
    if (Math.abs(at) <= BESIDE
        && allowances.get(NotchFit.neighbour(ring, edge, -1).name()).fold()) {
      return 1;
    }
    boolean atEnd = Math.abs(edge.path().length() - at) <= BESIDE;
    return atEnd && allowances.get(NotchFit.neighbour(ring, edge, 1).name()).fold() ? -1 : 0;
  }

  /**
   * A notch on a fold. A slit would lie on the fold line and be neither seen nor cut; what is cut
   * off the folded cloth is half a wedge, of which the slanting side is drawn.
   *
   * @param line the cutting line
   * @param start where the cutting line meets the fold
   * @param tip how far the notch reaches along the fold
   * @param away the direction in which the cloth lies
   * @return the slanting side, from the cutting line to the tip on the fold
   */
  static Path besideFold(Path line, Point start, Point tip, Point away) {
    double aside = WEDGE * start.distance(tip);
    return segment(line.atLength(line.nearestLength(start.plus(away.times(aside)))), tip);
  }

  private static boolean isDrawable(double reach, double allowance) {
    return reach <= allowance + BEYOND && reach >= allowance / 2;
  }

  private static Path one(
      Panel panel,
      Mark.Notch notch,
      Path line,
      Point foot,
      Point inwards,
      double allowance,
      double reach) {
    if (allowance == 0) {
      return segment(foot, foot.plus(inwards.times(INSIDE)));
    }
    if (!isDrawable(reach, allowance)) {
      throw PanelCode.NOTCH_WITHOUT_CUTTING_LINE.exception(
          "panel", panel.name(), "edge", notch.edge(), "at", notch.at());
    }
    Point start = foot.minus(inwards.times(reach));
    double depth = Math.min(LONGEST, reach / 2);
    Point tip = start.plus(inwards.times(depth));
    if (notch.set().cut() == NotchSet.Cut.SLIT) {
      return segment(start, tip);
    }
    double middle = line.nearestLength(start);
    double aside = WEDGE * depth;
    return Path.polyline(
        List.of(line.atLength(middle - aside), tip, line.atLength(middle + aside)));
  }

  private static Path segment(Point from, Point to) {
    return new Path(List.of(new Line(from, to)));
  }

  private static PanelException unknown(Panel panel, Mark.Notch notch) {
    return PanelCode.PANEL_EDGE_UNKNOWN.exception(
        "panel",
        panel.name(),
        "edge",
        notch.edge(),
        "user",
        "notch",
        "edges",
        Known.listed(panel.edges().stream().map(Edge::name).toList()));
  }
}
