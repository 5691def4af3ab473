package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.Ring;

/**
 * How darts and pleats follow to a panel whose edges lie on or beside those of the original: their
 * lines end on the new edge, drawn on or cut off there, so that a dart gets narrower where its edge
 * moves towards its apex, as it is sewn.
 */
final class FollowingIntakes {
  /** How far the end of a line may lie off its edge, in millimetres. */
  private static final double OFF_EDGE = 0.05;

  /** What is left of a line has to be longer than this, in millimetres. */
  private static final double LEAST = 1;

  private final List<Edge> edges;
  private final Inside inside;
  private final double reach;

  /**
   * The panel to which marks follow.
   *
   * @param edges its edges
   * @param most the farthest that any edge lies outside its original, in millimetres
   */
  FollowingIntakes(List<Edge> edges, double most) {
    this.edges = edges;
    this.inside = new Inside(Ring.outline(edges), 0);
    this.reach = 4 * Math.max(0, most) + 1;
  }

  /** The edges that an edge has become, or the parts in which it is left. */
  static boolean isFrom(Edge edge, String old) {
    return edge.name().equals(old) || Panel.isPart(edge.name(), old);
  }

  /** The mark on its edge, or nothing when it doesn't lie on one edge of the panel any more. */
  List<Mark> moved(Intake mark, Path old) {
    List<Line> lines = new ArrayList<>();
    for (Line line : mark.lines(old)) {
      Point foot = foot(line.end(), line.start());
      if (foot == null) {
        return List.of();
      }
      lines.add(new Line(foot, line.end()));
    }
    Edge edge = edge(mark.edge(), lines);
    if (edge == null) {
      return List.of();
    }
    double from = edge.path().nearestLength(lines.get(0).start());
    double to = edge.path().nearestLength(lines.get(lines.size() - 1).start());
    return to - from <= Path.JOIN_TOLERANCE
        ? List.of()
        : List.of(mark.standing(edge, from, to, lines));
  }

  /** Where a line from a point inside, through its old foot and beyond, leaves the panel. */
  private Point foot(Point from, Point old) {
    if (!inside.has(from)) {
      return null;
    }
    Point on = old.plus(old.minus(from).unit().times(reach));
    Path line = new Path(List.of(new Line(from, on)));
    List<Inside.Stretch> stretches = inside.stretches(line);
    if (stretches.isEmpty()) {
      return null;
    }
    Path part = stretches.get(0).path();
    return part.length() < LEAST ? null : part.end();
  }

  /** The edge on which all lines stand. */
  private Edge edge(String old, List<Line> lines) {
    for (Edge edge : edges) {
      if (isFrom(edge, old)
          && lines.stream().allMatch(line -> edge.path().distance(line.start()) <= OFF_EDGE)) {
        return edge;
      }
    }
    return null;
  }
}
