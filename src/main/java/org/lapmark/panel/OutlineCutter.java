package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.PanelBuilder.CornerPair;

/** Cuts an outline into edges at its corners. */
final class OutlineCutter {
  private static final double CORNER_TOLERANCE = 0.05;
  private static final double LEAST_AREA = 1e-3;

  private record Corner(String name, double at) {}

  private final String panel;
  private final Path outline;
  private final double length;

  OutlineCutter(String panel, Path drawn) {
    this.panel = panel;
    if (!drawn.isClosed()) {
      throw PanelCode.OUTLINE_OPEN.exception(
          "panel", panel, "gap", drawn.start().distance(drawn.end()));
    }
    double area = drawn.signedArea();
    Optional<Point> crossing = drawn.selfCrossing();
    // The halves of a figure of eight make up for each other in the area.
    if (crossing.isPresent()
        && (Math.abs(area) > LEAST_AREA || drawn.enclosedArea() > LEAST_AREA)) {
      throw PanelCode.OUTLINE_CROSSES_ITSELF.exception(
          "panel", panel, "x", crossing.get().x(), "y", crossing.get().y());
    }
    if (Math.abs(area) <= LEAST_AREA) {
      throw PanelCode.OUTLINE_WITHOUT_AREA.exception("panel", panel);
    }
    this.outline = area < 0 ? drawn.reversed() : drawn;
    this.length = outline.length();
  }

  Panel cut(
      Map<String, Point> corners,
      Map<String, CornerPair> stated,
      Map<String, List<String>> statedChains,
      List<Mark> marks) {
    List<Corner> ring = ring(corners);
    for (Map.Entry<String, CornerPair> entry : stated.entrySet()) {
      checkCorner(entry.getKey(), entry.getValue().from(), corners);
      checkCorner(entry.getKey(), entry.getValue().to(), corners);
    }
    Map<String, List<Integer>> spanning = new LinkedHashMap<>();
    List<Edge> edges = edges(ring, stated, spanning);
    Map<String, List<String>> chains = new LinkedHashMap<>();
    spanning.forEach(
        (name, stretches) ->
            chains.put(name, stretches.stream().map(i -> edges.get(i).name()).toList()));
    checkNames(edges, chains, statedChains);
    for (String chain : statedChains.keySet()) {
      Set<String> members = new LinkedHashSet<>();
      try {
        expand(chain, chain, edges, chains, statedChains, members, new LinkedHashSet<>());
      } catch (PanelException e) {
        throw SwappedCorners.in(panel, chain, statedChains.get(chain), stated, chains).orElse(e);
      }
      chains.put(chain, List.copyOf(members));
    }
    List<Mark> placed = new ArrayList<>();
    for (Mark mark : marks) {
      placed.add(mark instanceof Mark.Notch notch ? placed(notch, edges, chains) : mark);
    }
    return new Panel(panel, edges, chains, placed);
  }

  private List<Corner> ring(Map<String, Point> corners) {
    List<Corner> ring = new ArrayList<>();
    for (Map.Entry<String, Point> entry : corners.entrySet()) {
      double distance = outline.distance(entry.getValue());
      if (!(distance <= CORNER_TOLERANCE)) {
        throw PanelCode.CORNER_OFF_OUTLINE.exception(
            "panel", panel, "corner", entry.getKey(), "distance", distance);
      }
      ring.add(new Corner(entry.getKey(), place(entry.getValue())));
    }
    ring.sort(Comparator.comparingDouble(Corner::at));
    for (int i = 0; i < ring.size() && ring.size() > 1; i++) {
      Corner next = ring.get((i + 1) % ring.size());
      double apart = next.at() - ring.get(i).at() + (i == ring.size() - 1 ? length : 0);
      if (apart < CORNER_TOLERANCE) {
        throw PanelCode.CORNERS_TOGETHER.exception(
            "panel", panel, "first", ring.get(i).name(), "second", next.name());
      }
    }
    return ring;
  }

  /** The arc length of a corner; the meeting point of two curves if one is near enough. */
  private double place(Point corner) {
    double best = Double.POSITIVE_INFINITY;
    double at = 0;
    double before = 0;
    for (Curve curve : outline.curves()) {
      double distance = curve.start().distance(corner);
      if (distance < best) {
        best = distance;
        at = before;
      }
      before += curve.length();
    }
    if (best <= CORNER_TOLERANCE) {
      return at;
    }
    double nearest = outline.nearestLength(corner);
    return nearest >= length ? 0 : nearest;
  }

  private void checkCorner(String edge, String corner, Map<String, Point> corners) {
    if (!corners.containsKey(corner)) {
      throw PanelCode.EDGE_CORNER_UNKNOWN.exception(
          "panel",
          panel,
          "edge",
          edge,
          "corner",
          corner,
          "corners",
          Known.listed(corners.keySet()));
    }
  }

  /** Cuts the stretches; stated edges over several of them are put into {@code spanning}. */
  private List<Edge> edges(
      List<Corner> ring, Map<String, CornerPair> stated, Map<String, List<Integer>> spanning) {
    if (ring.isEmpty()) {
      return List.of(new Edge("outline", "start", "start", outline));
    }
    int count = ring.size();
    List<String> order = ring.stream().map(Corner::name).toList();
    String[] names = new String[count];
    for (Map.Entry<String, CornerPair> entry : stated.entrySet()) {
      int first = order.indexOf(entry.getValue().from());
      int after = order.indexOf(entry.getValue().to());
      int stretches = after > first ? after - first : after - first + count;
      if (stretches > 1) {
        List<Integer> members = new ArrayList<>();
        for (int i = 0; i < stretches; i++) {
          members.add((first + i) % count);
        }
        spanning.put(entry.getKey(), members);
      } else if (names[first] != null) {
        throw PanelCode.EDGE_STATED_TWICE.exception(
            "panel", panel, "first", names[first], "second", entry.getKey());
      } else {
        names[first] = entry.getKey();
      }
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Corner from = ring.get(i);
      Corner to = ring.get((i + 1) % count);
      String name = names[i] == null ? from.name() + "-" + to.name() : names[i];
      edges.add(new Edge(name, from.name(), to.name(), stretch(from.at(), to.at())));
    }
    return edges;
  }

  private Path stretch(double from, double to) {
    // A single corner at the outline's own start leaves the outline as it is.
    return from == 0 && to == 0 ? outline : outline.around(from, to);
  }

  private void checkNames(
      List<Edge> edges, Map<String, List<String>> spanning, Map<String, List<String>> chains) {
    Set<String> taken = new LinkedHashSet<>();
    List<String> all = new ArrayList<>(edges.stream().map(Edge::name).toList());
    all.addAll(spanning.keySet());
    all.addAll(chains.keySet());
    for (String name : all) {
      if (!taken.add(name)) {
        throw PanelCode.EDGE_NAME_TAKEN.exception("panel", panel, "edge", name);
      }
    }
  }

  /** Replaces chains by their edges, which have to follow one another around the panel. */
  private void expand(
      String chain,
      String name,
      List<Edge> edges,
      Map<String, List<String>> known,
      Map<String, List<String>> stated,
      Set<String> members,
      Set<String> open) {
    if (edges.stream().anyMatch(edge -> edge.name().equals(name))) {
      String last = null;
      for (String member : members) {
        last = member;
      }
      if (!members.add(name) || last != null && !follows(last, name, edges)) {
        throw PanelCode.CHAIN_BROKEN.exception(
            "panel", panel, "chain", chain, "first", last, "second", name);
      }
      return;
    }
    List<String> inner = stated.getOrDefault(name, known.get(name));
    // A chain that leads back to itself has no edge of its own at that place.
    if (inner == null || !open.add(name)) {
      throw unknown(name, "chain", edges);
    }
    for (String member : inner) {
      expand(chain, member, edges, known, stated, members, open);
    }
    open.remove(name);
  }

  private static boolean follows(String first, String second, List<Edge> edges) {
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).name().equals(first)) {
        return edges.get((i + 1) % edges.size()).name().equals(second);
      }
    }
    return false;
  }

  private PanelException unknown(String edge, String user, List<Edge> edges) {
    return PanelCode.PANEL_EDGE_UNKNOWN.exception(
        "panel",
        panel,
        "edge",
        edge,
        "user",
        user,
        "edges",
        Known.listed(edges.stream().map(Edge::name).toList()));
  }

  private Mark.Notch placed(Mark.Notch notch, List<Edge> edges, Map<String, List<String>> chains) {
    List<String> names = chains.getOrDefault(notch.edge(), List.of(notch.edge()));
    double total = 0;
    double before = 0;
    Mark.Notch found = null;
    Edge on = null;
    for (String name : names) {
      Edge edge =
          edges.stream()
              .filter(candidate -> candidate.name().equals(name))
              .findFirst()
              .orElseThrow(() -> unknown(notch.edge(), "notch", edges));
      total += edge.path().length();
      if (found == null && notch.at() <= total) {
        found = new Mark.Notch(name, notch.at() - before, notch.set());
        on = edge;
      }
      before = total;
      if (found == null) {
        on = edge;
      }
    }
    if (names.size() > 1 && (found == null || notch.at() < 0)) {
      throw PanelCode.NOTCH_OFF_EDGE.exception(
          "panel",
          panel,
          "edge",
          notch.edge(),
          "at",
          notch.at(),
          "span",
          notch.set().span(),
          "length",
          total);
    }
    Mark.Notch placed = found == null ? notch : found;
    NotchFit.check(panel, edges, on, placed);
    return placed;
  }
}
