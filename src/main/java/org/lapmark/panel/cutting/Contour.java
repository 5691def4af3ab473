package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.offset.IntricateOutlineException;
import org.lapmark.geometry.offset.Joint;
import org.lapmark.geometry.offset.JointException;
import org.lapmark.geometry.offset.Offset;
import org.lapmark.geometry.offset.Part;
import org.lapmark.geometry.offset.Side;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/** The line along which a panel is cut, and what all moved outlines have in common. */
public final class Contour {
  private Contour() {}

  /** The cutting line; the stitching line itself where every allowance is 0. */
  static CuttingLine cuttingLine(Panel panel, Allowances allowances) {
    List<Joint> joints = joints(panel, allowances);
    List<Side> sides = new ArrayList<>();
    boolean any = false;
    for (Edge edge : panel.edges()) {
      Allowance allowance = allowances.edges().get(edge.name());
      if (allowance == null) {
        throw new IllegalArgumentException("no allowance for edge " + edge.name());
      }
      double least = Math.min(allowance.start(), allowance.end());
      if (!(least >= 0)) {
        throw PanelCode.EDGE_ALLOWANCE_NEGATIVE.exception(
            "panel", panel.name(), "edge", edge.name(), "allowance", least);
      }
      any |= allowance.widest() > 0;
      sides.add(
          new Side(
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
    List<List<Part>> loops;
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
  public static void checkCrossing(Panel panel, Path line) {
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

  public static List<List<Part>> loops(Panel panel, List<Side> sides) {
    try {
      return Offset.loops(sides);
    } catch (IntricateOutlineException e) {
      throw PanelCode.OUTLINE_TOO_INTRICATE.exception("panel", panel.name());
    }
  }

  private static PanelException ring(Panel panel, Allowances allowances, List<List<Part>> loops) {
    if (loops.isEmpty()) {
      return PanelCode.OUTLINE_CROSSES_ITSELF.exception(
          "panel",
          panel.name(),
          "x",
          panel.outline().start().x(),
          "y",
          panel.outline().start().y());
    }
    Part part = loops.get(1).get(0);
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
  public record Run(int side, List<Curve> curves) {}

  public static List<Run> runs(List<Part> loop) {
    List<Run> runs = new ArrayList<>();
    for (Part part : loop) {
      if (runs.isEmpty() || runs.get(runs.size() - 1).side != part.side()) {
        runs.add(new Run(part.side(), new ArrayList<>()));
      }
      runs.get(runs.size() - 1).curves.add(part.curve());
    }
    return runs;
  }
}
