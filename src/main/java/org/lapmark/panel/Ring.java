package org.lapmark.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** What all derivations do with edges, corners and chains. */
final class Ring {
  private Ring() {}

  static Edge edge(Panel panel, String name) {
    return panel.edges().get(index(panel, name));
  }

  static int index(Panel panel, String name) {
    for (int i = 0; i < panel.edges().size(); i++) {
      if (panel.edges().get(i).name().equals(name)) {
        return i;
      }
    }
    throw PanelCode.DERIVED_EDGE_UNKNOWN.exception(
        "panel", panel.name(), "edge", name, "edges", names(panel));
  }

  /** The edges that a name stands for: one, or those of a chain. */
  static List<String> members(Panel panel, String edgeOrChain) {
    List<String> members = panel.chains().get(edgeOrChain);
    return members == null ? List.of(edge(panel, edgeOrChain).name()) : members;
  }

  static String names(Panel panel) {
    Set<String> names = new LinkedHashSet<>();
    panel.edges().forEach(edge -> names.add(edge.name()));
    names.addAll(panel.chains().keySet());
    return String.join(", ", names);
  }

  /** The image under a map that mirrors, travelled the other way round. */
  static Path mirrored(Path path, Affine map) {
    return path.transformed(map).reversed();
  }

  /** The map that mirrors over a line. */
  static Affine mirror(Point at, Point direction) {
    Point along = direction.unit();
    double c = along.x() * along.x() - along.y() * along.y();
    double s = 2 * along.x() * along.y();
    return new Affine(
        c, s, s, -c, at.x() - c * at.x() - s * at.y(), at.y() - s * at.x() + c * at.y());
  }

  /**
   * Chains as far as their edges are left. Where what is left doesn't follow one another, the first
   * run counts.
   */
  static Map<String, List<String>> chains(Map<String, List<String>> chains, List<Edge> edges) {
    List<String> ring = edges.stream().map(Edge::name).toList();
    Map<String, List<String>> kept = new LinkedHashMap<>();
    chains.forEach(
        (chain, members) -> {
          List<String> left = members.stream().filter(ring::contains).toList();
          if (!left.isEmpty() && !ring.contains(chain)) {
            kept.put(chain, run(left, ring));
          }
        });
    return kept;
  }

  /** The run around the first of some edges. */
  private static List<String> run(List<String> left, List<String> ring) {
    int count = ring.size();
    if (left.size() == count) {
      return left;
    }
    int first = ring.indexOf(left.get(0));
    while (left.contains(ring.get(Math.floorMod(first - 1, count)))) {
      first = Math.floorMod(first - 1, count);
    }
    List<String> run = new ArrayList<>();
    for (int i = first; left.contains(ring.get(i % count)); i++) {
      run.add(ring.get(i % count));
    }
    return run;
  }

  /** A name that isn't taken: the name itself, or with an ending as often as needed. */
  static String free(String name, String ending, Set<String> taken) {
    String free = name;
    while (taken.contains(free)) {
      free += ending;
    }
    return free;
  }

  /** A path whose ends are moved by rounding, or by little, to where its neighbours end. */
  static Path between(Path path, Point start, Point end) {
    List<Curve> curves = new ArrayList<>(path.curves());
    if (curves.get(0).start().distance(start) > 0) {
      List<Curve> first = moved(curves.remove(0), start, null);
      curves.addAll(0, first);
    }
    int last = curves.size() - 1;
    if (curves.get(last).end().distance(end) > 0) {
      curves.addAll(moved(curves.remove(last), null, end));
    }
    return new Path(curves);
  }

  /** An arc gives way only to more than rounding, as cubics. */
  private static List<Curve> moved(Curve curve, Point start, Point end) {
    if (curve instanceof Line line) {
      return List.of(
          new Line(start == null ? line.start() : start, end == null ? line.end() : end));
    }
    List<Curve> curves = new ArrayList<>();
    if (curve instanceof Arc arc) {
      double gap = start == null ? curve.end().distance(end) : curve.start().distance(start);
      if (gap <= Path.JOIN_TOLERANCE / 4) {
        return List.of(curve);
      }
      curves.addAll(arc.cubics());
    } else {
      curves.add(curve);
    }
    int at = start == null ? curves.size() - 1 : 0;
    Cubic cubic = (Cubic) curves.get(at);
    Point shift = start == null ? end.minus(cubic.end()) : start.minus(cubic.start());
    curves.set(
        at,
        start == null
            ? new Cubic(cubic.start(), cubic.control1(), cubic.control2().plus(shift), end)
            : new Cubic(start, cubic.control1().plus(shift), cubic.control2(), cubic.end()));
    return curves;
  }

  /** Refuses an outline that crosses itself. */
  static void check(String panel, List<Edge> edges) {
    List<Curve> curves = new ArrayList<>();
    edges.forEach(edge -> curves.addAll(edge.path().curves()));
    Path outline = new Path(curves);
    outline
        .selfCrossing()
        .ifPresent(
            at -> {
              throw PanelCode.OUTLINE_CROSSES_ITSELF.exception(
                  "panel", panel, "x", at.x(), "y", at.y());
            });
  }
}
