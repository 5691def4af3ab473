package org.lapmark.panel.derivation;

import java.util.List;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchFit;
import org.lapmark.panel.PanelException;

/** How notches follow to a panel whose edges lie on or beside those of the original. */
final class FollowingNotches {
  /** How far a notch may lie from the edge it has moved with. */
  static final double OFF_EDGE = 0.05;

  private final String panel;
  private final List<Edge> edges;

  /**
   * The panel to which notches follow.
   *
   * @param panel the original's name
   * @param edges the panel's edges
   */
  FollowingNotches(String panel, List<Edge> edges) {
    this.panel = panel;
    this.edges = edges;
  }

  /**
   * What becomes of a set of notches.
   *
   * @param kept the set on its edge, or none
   * @param cutThrough whether it belongs on the panel and only a part of it fits there
   */
  record Moved(List<Mark> kept, boolean cutThrough) {}

  private static final Moved NONE = new Moved(List.of(), false);

  /**
   * The same set on its edge.
   *
   * @param old the edge on which it stood
   * @param foot where its middle has come to
   * @param most how far from an edge that may be
   */
  Moved moved(Mark.Notch notch, Path old, Point foot, double most) {
    Edge best = null;
    double least = most;
    for (Edge edge : edges) {
      boolean own = FollowingIntakes.isFrom(edge, notch.edge());
      double distance = own ? edge.path().distance(foot) : Double.POSITIVE_INFINITY;
      if (distance < least) {
        least = distance;
        best = edge;
      }
    }
    if (best == null) {
      return NONE;
    }
    double at = best.path().nearestLength(foot);
    if (isAtEnd(at, best.path()) && !isAtEnd(notch.at(), old)) {
      // Where an edge is cut its new end is seen anyway.
      return NONE;
    }
    Mark.Notch moved = new Mark.Notch(best.name(), at, notch.set());
    try {
      NotchFit.check(panel, edges, best, moved);
      return new Moved(List.of(moved), false);
    } catch (PanelException e) {
      // Half of a double notch lies beyond the cut: a notch there would say nothing.
      return new Moved(List.of(), true);
    }
  }

  private static boolean isAtEnd(double at, Path path) {
    return at <= OFF_EDGE || at >= path.length() - OFF_EDGE;
  }
}
