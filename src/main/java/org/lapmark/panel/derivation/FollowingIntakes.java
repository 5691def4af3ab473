package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Inside;
import org.lapmark.panel.Mark;
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
    this.inside = new Inside(Following.outline(edges), 0);
    this.reach = 4 * Math.max(0, most) + 1;
  }

  /** The edges that an edge has become, or the parts in which it is left. */
  static boolean isFrom(Edge edge, String old) {
    return edge.name().equals(old) || Ring.isPart(edge.name(), old);
  }

  /** The mark on its edge, or nothing when it doesn't lie on one edge of the panel any more. */
  Optional<Mark.Intake> moved(Mark.Intake mark, Path old) {
    if (mark instanceof Mark.Dart dart) {
      return dart(dart, old);
    }
    return pleat((Mark.Pleat) mark);
  }

  private Optional<Mark.Intake> dart(Mark.Dart dart, Path old) {
    Point first = foot(dart.apex(), old.atLength(dart.from()));
    Point last = foot(dart.apex(), old.atLength(dart.to()));
    Edge edge = first == null || last == null ? null : edge(dart.edge(), List.of(first, last));
    if (edge == null) {
      return Optional.empty();
    }
    double from = edge.path().nearestLength(first);
    double to = edge.path().nearestLength(last);
    if (to - from <= Path.JOIN_TOLERANCE) {
      return Optional.empty();
    }
    // On a curved edge the legs would differ a little; they stay equally long.
    Point one = edge.path().atLength(from);
    Point other = edge.path().atLength(to);
    Point middle = one.towards(other, 0.5);
    Point inwards = other.minus(one).unit().quarterTurn();
    Point apex = middle.plus(inwards.times(dart.apex().minus(middle).dot(inwards)));
    return Optional.of(new Mark.Dart(dart.name(), edge.name(), from, to, apex, dart.press()));
  }

  private Optional<Mark.Intake> pleat(Mark.Pleat pleat) {
    List<Line> lines = new ArrayList<>();
    List<Point> feet = new ArrayList<>();
    for (Line line : pleat.lines()) {
      Point foot = foot(line.end(), line.start());
      if (foot == null) {
        return Optional.empty();
      }
      feet.add(foot);
      lines.add(new Line(foot, line.end()));
    }
    Edge edge = edge(pleat.edge(), feet);
    if (edge == null) {
      return Optional.empty();
    }
    double from = edge.path().nearestLength(feet.get(0));
    double to = edge.path().nearestLength(feet.get(feet.size() - 1));
    return to - from <= Path.JOIN_TOLERANCE
        ? Optional.empty()
        : Optional.of(
            new Mark.Pleat(
                pleat.name(), edge.name(), from, to, pleat.kind(), pleat.onwards(), lines));
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
    Path part = stretches.get(0).of(line);
    return part == null || part.length() < LEAST ? null : part.end();
  }

  /** The edge on which all feet stand. */
  private Edge edge(String old, List<Point> feet) {
    for (Edge edge : edges) {
      if (isFrom(edge, old)
          && feet.stream().allMatch(foot -> edge.path().distance(foot) <= OFF_EDGE)) {
        return edge;
      }
    }
    return null;
  }
}
