package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.offset.IntricateOutlineException;
import org.lapmark.geometry.offset.Joint;
import org.lapmark.geometry.offset.JointException;
import org.lapmark.geometry.offset.Offset;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/** Panels' outlines moved outwards and inwards, with their edges' names. */
public final class Contour {
  private Contour() {}

  /** The cutting line; the stitching line itself where every allowance is 0. */
  static CuttingLine cuttingLine(Panel panel, Allowances allowances) {
    List<Joint> joints = joints(panel, allowances);
    List<Offset.Side> sides = new ArrayList<>();
    boolean any = false;
    for (Edge edge : panel.edges()) {
      Allowance allowance = allowances.edges().get(edge.name());
      if (allowance == null) {
        throw new IllegalArgumentException("no allowance for edge " + edge.name());
      }
      double least = Math.min(allowance.start(), allowance.end());
      if (!(least >= 0)) {
        throw PanelCode.ALLOWANCE_NEGATIVE.exception(
            "panel", panel.name(), "edge", edge.name(), "allowance", least);
      }
      any |= allowance.widest() > 0;
      sides.add(
          new Offset.Side(
              edge.path(),
              allowance.start(),
              allowance.end(),
              allowance.fold(),
              joints.get(sides.size())));
    }
    if (!any) {
      return new CuttingLine(
          panel.edges().stream()
              .map(edge -> new CuttingLine.Span(edge.name(), edge.path()))
              .toList());
    }
    List<List<Offset.Part>> loops;
    try {
      loops = loops(panel, sides);
    } catch (JointException e) {
      throw undrawn(panel, allowances, e);
    }
    if (loops.size() != 1) {
      throw ring(panel, allowances, loops);
    }
    List<CuttingLine.Span> spans = new ArrayList<>();
    for (Run run : runs(loops.get(0))) {
      spans.add(new CuttingLine.Span(panel.edges().get(run.side).name(), new Path(run.curves)));
    }
    for (Edge edge : panel.edges()) {
      if (spans.stream().noneMatch(span -> span.edge().equals(edge.name()))) {
        throw PanelCode.ALLOWANCE_COVERS_EDGE.exception(
            "panel",
            panel.name(),
            "edge",
            edge.name(),
            "allowance",
            allowances.edges().get(edge.name()).widest(),
            "at",
            edge.path().length() / 2);
      }
    }
    CuttingLine line = new CuttingLine(spans);
    checkCrossing(panel, line.path());
    return line;
  }

  /** How each edge's cutting line is joined to the next one's. */
  private static List<Joint> joints(Panel panel, Allowances allowances) {
    List<String> corners = panel.edges().stream().map(Edge::to).toList();
    for (String corner : allowances.corners().keySet()) {
      if (!corners.contains(corner)) {
        throw PanelCode.CORNER_KIND_NOWHERE.exception(
            "panel", panel.name(), "corner", corner, "corners", Known.listed(corners));
      }
    }
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < panel.edges().size(); i++) {
      Edge before = panel.edges().get(i);
      Edge after = panel.edges().get((i + 1) % panel.edges().size());
      CornerShape shape = allowances.corners().getOrDefault(before.to(), allowances.corner());
      Joint joint = shape.joint(before, after);
      if (joint == null) {
        throw PanelCode.CORNER_KIND_OF_OTHER_EDGE.exception(
            "panel",
            panel.name(),
            "corner",
            before.to(),
            "edge",
            shape.edge(),
            "before",
            before.name(),
            "after",
            after.name());
      }
      joints.add(joint);
    }
    return joints;
  }

  private static PanelException undrawn(Panel panel, Allowances allowances, JointException e) {
    String corner = panel.edges().get(e.side()).to();
    CornerShape shape = allowances.corners().getOrDefault(corner, allowances.corner());
    return PanelCode.CORNER_KIND_UNDRAWN.exception(
        "panel",
        panel.name(),
        "corner",
        corner,
        "kind",
        shape instanceof CornerShape.TurnedBack ? "turned" : "square",
        "edge",
        shape.edge(),
        "reason",
        e.reason().name().toLowerCase(Locale.ROOT));
  }

  /** Refuses a line that crosses itself, at the place of the edge nearest to the crossing. */
  static void checkCrossing(Panel panel, Path line) {
    Optional<Point> crossing = line.selfCrossing();
    if (crossing.isEmpty()) {
      return;
    }
    Edge nearest = panel.edges().get(0);
    for (Edge edge : panel.edges()) {
      if (edge.path().distance(crossing.get()) < nearest.path().distance(crossing.get())) {
        nearest = edge;
      }
    }
    throw PanelCode.CUTTING_LINE_CROSSES_ITSELF.exception(
        "panel",
        panel.name(),
        "edge",
        nearest.name(),
        "at",
        nearest.path().nearestLength(crossing.get()));
  }

  private static List<List<Offset.Part>> loops(Panel panel, List<Offset.Side> sides) {
    try {
      return Offset.loops(sides);
    } catch (IntricateOutlineException e) {
      throw PanelCode.OUTLINE_TOO_INTRICATE.exception("panel", panel.name());
    }
  }

  private static PanelException ring(
      Panel panel, Allowances allowances, List<List<Offset.Part>> loops) {
    if (loops.isEmpty()) {
      return PanelCode.OUTLINE_CROSSES_ITSELF.exception(
          "panel",
          panel.name(),
          "x",
          panel.outline().start().x(),
          "y",
          panel.outline().start().y());
    }
    Offset.Part part = loops.get(1).get(0);
    Edge edge = panel.edges().get(part.side());
    return PanelCode.ALLOWANCE_CLOSES_RING.exception(
        "panel",
        panel.name(),
        "edge",
        edge.name(),
        "allowance",
        allowances.edges().get(edge.name()).widest(),
        "at",
        edge.path().nearestLength(part.curve().at(0.5)));
  }

  /** Curves of one side that follow one another. */
  private record Run(int side, List<Curve> curves) {}

  private static List<Run> runs(List<Offset.Part> loop) {
    List<Run> runs = new ArrayList<>();
    for (Offset.Part part : loop) {
      if (runs.isEmpty() || runs.get(runs.size() - 1).side != part.side()) {
        runs.add(new Run(part.side(), new ArrayList<>()));
      }
      runs.get(runs.size() - 1).curves.add(part.curve());
    }
    return runs;
  }

  /**
   * The edges of a panel moved inwards, each by its own distance, until it meets its neighbours;
   * those that come in several runs get a number.
   */
  public static List<Edge> insetEdges(Panel panel, Map<String, Double> distances) {
    List<Offset.Side> sides = sides(panel, distances, -1);
    if (sides.stream().allMatch(side -> side.distance() == 0)) {
      return panel.edges();
    }
    Edge widest =
        panel.edges().stream()
            .max(Comparator.comparingDouble(edge -> distances.get(edge.name())))
            .orElseThrow();
    double distance = distances.get(widest.name());
    List<List<Offset.Part>> loops = loops(panel, sides);
    if (loops.isEmpty()) {
      boolean even = distances.values().stream().allMatch(one -> one == distance);
      throw even
          ? PanelCode.INSET_NOTHING_LEFT.exception("panel", panel.name(), "distance", distance)
          : PanelCode.INSET_EDGE_MISSES.exception(
              "panel", panel.name(), "edge", widest.name(), "distance", distance);
    }
    if (loops.size() > 1) {
      throw PanelCode.INSET_FALLS_APART.exception(
          "panel", panel.name(), "distance", distance, "parts", loops.size());
    }
    return edges(panel, loops.get(0));
  }

  private static List<Offset.Side> sides(Panel panel, Map<String, Double> distances, double sign) {
    List<Offset.Side> sides = new ArrayList<>();
    for (Edge edge : panel.edges()) {
      // 0 is added to make -0 a 0.
      double distance = sign * distances.get(edge.name()) + 0.0;
      sides.add(new Offset.Side(edge.path(), distance, distance, false, Joint.MET));
    }
    return sides;
  }

  /**
   * The edges of a panel moved outwards, each by its own distance, until it meets its neighbours.
   */
  public static List<Edge> outsetEdges(Panel panel, Map<String, Double> distances) {
    List<Offset.Side> sides = sides(panel, distances, 1);
    if (sides.stream().allMatch(side -> side.distance() == 0)) {
      return panel.edges();
    }
    List<List<Offset.Part>> loops = loops(panel, sides);
    if (loops.size() != 1) {
      throw PanelCode.OUTSET_MEETS_ITSELF.exception("panel", panel.name());
    }
    List<Edge> edges = edges(panel, loops.get(0));
    for (Edge edge : panel.edges()) {
      if (edges.stream().noneMatch(moved -> moved.name().equals(edge.name()))) {
        throw PanelCode.OUTSET_COVERS_EDGE.exception("panel", panel.name(), "edge", edge.name());
      }
    }
    return edges;
  }

  private static List<Edge> edges(Panel panel, List<Offset.Part> loop) {
    List<Run> runs = runs(loop);
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Edge old = panel.edges().get(runs.get(i).side);
      Edge next = panel.edges().get(runs.get((i + 1) % runs.size()).side);
      edges.add(new Edge(old.name(), old.from(), next.from(), new Path(runs.get(i).curves)));
    }
    edges = Ring.numbered(edges, panel);
    List<Curve> curves = new ArrayList<>();
    edges.forEach(edge -> curves.addAll(edge.path().curves()));
    checkCrossing(panel, new Path(curves));
    return edges;
  }

  /**
   * How far it is from a point along a direction to a closed line, by the first crossing.
   *
   * @return millimetres, or infinity when the ray misses
   */
  public static double reach(Path line, Point from, Point direction) {
    double least = Double.POSITIVE_INFINITY;
    double sideLast = direction.cross(line.end().minus(from));
    for (Curve curve : line.curves()) {
      int steps = curve.flattened(0.01).size() * 2;
      double before = 0;
      double sideBefore = direction.cross(curve.start().minus(from));
      double here = direction.dot(curve.start().minus(from));
      if (sideLast <= 0 != sideBefore <= 0 && here > 0) {
        // The ray slips between two curves that meet within rounding.
        least = Math.min(least, here);
      }
      for (int i = 1; i <= steps; i++) {
        double t = (double) i / steps;
        double side = direction.cross(curve.at(t).minus(from));
        if (sideBefore <= 0 != side <= 0) {
          double low = before;
          double high = t;
          for (int round = 0; round < 60; round++) {
            double middle = (low + high) / 2;
            if (direction.cross(curve.at(middle).minus(from)) <= 0 == sideBefore <= 0) {
              low = middle;
            } else {
              high = middle;
            }
          }
          double along = direction.dot(curve.at((low + high) / 2).minus(from));
          if (along > 0) {
            least = Math.min(least, along);
          }
        }
        before = t;
        sideBefore = side;
      }
      sideLast = sideBefore;
    }
    return least;
  }
}
