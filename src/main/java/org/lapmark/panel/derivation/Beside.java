package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.offset.Joint;
import org.lapmark.geometry.offset.Part;
import org.lapmark.geometry.offset.Side;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;
import org.lapmark.panel.cutting.Contour;

/**
 * A panel whose outline runs inside or outside another's, each edge at a distance of its own. At
 * corners an edge's line goes on as it runs, or ends, where it meets its neighbours': a straight
 * line goes on straight, an arc as an arc. What is refused: when nothing is left, more than one
 * part is, the outline would meet itself, or an edge's line doesn't meet its neighbours'.
 *
 * @param panel the panel
 * @param outwards whether the outline runs outside
 * @param distances millimetres, 0 or more, by edge
 * @param marks which notches, points and lines follow; the grainline and style lines always do
 */
public record Beside(Panel panel, boolean outwards, Map<String, Double> distances, Marks marks)
    implements Derivation {
  /** Which marks follow to a panel that runs beside another. */
  public enum Marks {
    /** All that lie on it. */
    ALL,
    /** Those of edges that don't move; the others are counted in a notice. */
    OF_UNMOVED_EDGES,
    /** None. */
    NONE
  }

  /** Refuses distances below 0. */
  public Beside {
    if (distances.values().stream().anyMatch(distance -> !(distance >= 0))) {
      throw new IllegalArgumentException("distances are 0 or more");
    }
  }

  @Override
  public Panel derive(String name, Consumer<PanelException> notices) {
    Map<String, Double> moves = new LinkedHashMap<>();
    // 0 is added to make -0 a 0.
    distances.forEach((edge, distance) -> moves.put(edge, (outwards ? 1 : -1) * distance + 0.0));
    boolean still = moves.values().stream().allMatch(move -> move == 0);
    List<Edge> edges = still ? panel.edges() : outwards ? outside(moves) : inside(moves);
    return new Panel(
        name,
        edges,
        Ring.chains(panel, edges),
        new MarksBeside(panel, edges, moves, marks, notices).marks());
  }

  private List<List<Part>> loops(Map<String, Double> moves) {
    List<Side> sides = new ArrayList<>();
    for (Edge edge : panel.edges()) {
      double move = moves.get(edge.name());
      sides.add(new Side(edge.path(), move, move, false, Joint.MET));
    }
    return Contour.loops(panel, sides);
  }

  private List<Edge> inside(Map<String, Double> moves) {
    Edge widest =
        panel.edges().stream()
            .max(Comparator.comparingDouble(edge -> distances.get(edge.name())))
            .orElseThrow();
    double distance = distances.get(widest.name());
    List<List<Part>> loops = loops(moves);
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
    return edges(loops.get(0));
  }

  private List<Edge> outside(Map<String, Double> moves) {
    List<List<Part>> loops = loops(moves);
    if (loops.size() != 1) {
      throw PanelCode.OUTSET_MEETS_ITSELF.exception("panel", panel.name());
    }
    List<Edge> edges = edges(loops.get(0));
    for (Edge edge : panel.edges()) {
      if (edges.stream().noneMatch(moved -> moved.name().equals(edge.name()))) {
        throw PanelCode.OUTSET_COVERS_EDGE.exception("panel", panel.name(), "edge", edge.name());
      }
    }
    return edges;
  }

  /** The edges of a loop; those that come in several runs get a number. */
  private List<Edge> edges(List<Part> loop) {
    List<Contour.Run> runs = Contour.runs(loop);
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Edge old = panel.edges().get(runs.get(i).side());
      Edge next = panel.edges().get(runs.get((i + 1) % runs.size()).side());
      edges.add(new Edge(old.name(), old.from(), next.from(), new Path(runs.get(i).curves())));
    }
    edges = Ring.numbered(edges, panel);
    Contour.checkCrossing(panel, Ring.outline(edges));
    return edges;
  }
}
