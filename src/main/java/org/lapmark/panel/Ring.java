package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Comparator;
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
public final class Ring {
  private Ring() {}

  /** Edges that follow one another as one line. */
  public static Path outline(List<Edge> edges) {
    List<Curve> curves = new ArrayList<>();
    edges.forEach(edge -> curves.addAll(edge.path().curves()));
    return new Path(curves);
  }

  public static Edge edge(Panel panel, String name) {
    return panel.edges().get(index(panel, name));
  }

  public static int index(Panel panel, String name) {
    for (int i = 0; i < panel.edges().size(); i++) {
      if (panel.edges().get(i).name().equals(name)) {
        return i;
      }
    }
    if (!panel.isOneLine(name)) {
      throw panel.inParts(name);
    }
    throw PanelCode.DERIVED_EDGE_UNKNOWN.exception(
        "panel", panel.name(), "edge", name, "edges", names(panel));
  }

  /** The edges that a name stands for: one, or those of a chain. */
  public static List<String> members(Panel panel, String edgeOrChain) {
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
  public static Path mirrored(Path path, Affine map) {
    return path.transformed(map).reversed();
  }

  /**
   * Edges of which several have one name, as parts of one edge that was left in parts: they are
   * numbered along it, {@code side_1} and {@code side_2}.
   *
   * @param edges the edges of a derived panel
   * @param old the panel that it is derived from
   */
  public static List<Edge> numbered(List<Edge> edges, Panel old) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    edges.forEach(edge -> counts.merge(edge.name(), 1, Integer::sum));
    Set<String> taken = new LinkedHashSet<>(old.chains().keySet());
    old.edges().forEach(edge -> taken.add(edge.name()));
    List<Edge> numbered = new ArrayList<>();
    for (Edge edge : edges) {
      String name = edge.name();
      if (counts.get(name) > 1) {
        double own = along(edge, old);
        long before =
            edges.stream()
                .filter(other -> other.name().equals(edge.name()) && along(other, old) < own)
                .count();
        String number = "_" + (before + 1);
        while (taken.contains(name + number)) {
          number = "_" + number;
        }
        name += number;
      }
      numbered.add(new Edge(name, edge.from(), edge.to(), edge.path()));
    }
    return numbered;
  }

  /** How far along the edge of which it is a part an edge lies. */
  private static double along(Edge part, Panel old) {
    Point middle = part.path().atLength(part.path().length() / 2);
    return edge(old, part.name()).path().nearestLength(middle);
  }

  /**
   * The chains of a derived panel: those of the panel that it is derived from as far as their edges
   * are left, and the names of edges that are left in parts. Where what is left of one doesn't
   * follow one another, it stands for no single line.
   */
  public static Map<String, List<String>> chains(Panel old, List<Edge> edges) {
    List<String> ring = edges.stream().map(Edge::name).toList();
    List<String> before = old.edges().stream().map(Edge::name).toList();
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (String edge : before) {
      if (!ring.contains(edge)) {
        parts.put(
            edge,
            ring.stream()
                .filter(name -> Panel.isPart(name, edge) && !before.contains(name))
                .sorted(Comparator.comparingInt(String::length).thenComparing(name -> name))
                .toList());
      }
    }
    Map<String, List<String>> all = new LinkedHashMap<>();
    old.chains()
        .forEach(
            (chain, members) -> {
              List<String> left = new ArrayList<>();
              members.forEach(member -> left.addAll(parts.getOrDefault(member, List.of(member))));
              all.put(chain, left);
            });
    parts.forEach(all::putIfAbsent);
    return chains(all, edges);
  }

  /** Chains as far as their edges are left, in the order of the ring. */
  public static Map<String, List<String>> chains(
      Map<String, List<String>> chains, List<Edge> edges) {
    List<String> ring = edges.stream().map(Edge::name).toList();
    Map<String, List<String>> kept = new LinkedHashMap<>();
    chains.forEach(
        (chain, members) -> {
          List<String> left = members.stream().filter(ring::contains).toList();
          if (!left.isEmpty() && !ring.contains(chain)) {
            kept.put(chain, inOrder(left, ring));
          }
        });
    return kept;
  }

  /** Some edges in the order of the ring, the run around the first of them first. */
  private static List<String> inOrder(List<String> left, List<String> ring) {
    int count = ring.size();
    if (left.size() == count) {
      return left;
    }
    int first = ring.indexOf(left.get(0));
    while (left.contains(ring.get(Math.floorMod(first - 1, count)))) {
      first = Math.floorMod(first - 1, count);
    }
    List<String> run = new ArrayList<>();
    for (int i = first; i < first + count; i++) {
      if (left.contains(ring.get(i % count))) {
        run.add(ring.get(i % count));
      }
    }
    return run;
  }

  /** A name that isn't taken: the name itself, or with an ending as often as needed. */
  public static String free(String name, String ending, Set<String> taken) {
    String free = name;
    while (taken.contains(free)) {
      free += ending;
    }
    return free;
  }

  /** A path whose ends are moved by rounding, or by little, to where its neighbours end. */
  public static Path between(Path path, Point start, Point end) {
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
  public static void check(String panel, List<Edge> edges) {
    outline(edges)
        .selfCrossing()
        .ifPresent(
            at -> {
              throw PanelCode.OUTLINE_CROSSES_ITSELF.exception(
                  "panel", panel, "x", at.x(), "y", at.y());
            });
  }
}
