package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.finding.Known;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder.CornerPair;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.SwappedCorners;

/** Gives edges of a finished panel further names. */
public final class Naming {
  private final Panel panel;
  private final List<String> corners;
  private final List<String> names = new ArrayList<>();
  private final Map<String, List<String>> chains = new LinkedHashMap<>();

  private Naming(Panel panel) {
    this.panel = panel;
    this.corners = panel.edges().stream().map(Edge::from).toList();
    panel.edges().forEach(edge -> names.add(edge.name()));
  }

  /**
   * A panel with further names: an edge that is a stretch from one corner to the next is renamed,
   * one over several of them is a chain.
   *
   * @param panel the panel
   * @param edges edges by name
   * @param chains chains by name, of edges or of other chains
   * @return the panel with those names
   * @throws PanelException when a corner or an edge doesn't exist, a name is taken, or the edges of
   *     a chain don't follow one another clockwise
   */
  public static Panel named(
      Panel panel, Map<String, CornerPair> edges, Map<String, List<String>> chains) {
    return edges.isEmpty() && chains.isEmpty() ? panel : new Naming(panel).named(edges, chains);
  }

  private Panel named(Map<String, CornerPair> edges, Map<String, List<String>> stated) {
    edges.forEach(this::edge);
    Map<String, String> renamed = new LinkedHashMap<>();
    List<Edge> all = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Edge edge = panel.edges().get(i);
      renamed.put(edge.name(), names.get(i));
      all.add(new Edge(names.get(i), edge.from(), edge.to(), edge.path()));
    }
    panel
        .chains()
        .forEach(
            (chain, members) -> {
              List<String> now = members.stream().map(renamed::get).toList();
              if (!chains.containsKey(chain)) {
                chains.put(chain, now);
              }
            });
    for (Map.Entry<String, List<String>> chain : stated.entrySet()) {
      take(chain.getKey());
      try {
        chains.put(chain.getKey(), members(chain.getKey(), chain.getValue()));
      } catch (PanelException e) {
        throw SwappedCorners.in(panel.name(), chain.getKey(), chain.getValue(), edges, chains)
            .orElse(e);
      }
    }
    List<Mark> marks = panel.marks().stream().map(mark -> mark.renamed(renamed::get)).toList();
    return new Panel(panel.name(), all, chains, marks);
  }

  private void edge(String name, CornerPair pair) {
    int first = corner(name, pair.from());
    int after = corner(name, pair.to());
    int count = names.size();
    int stretches = after > first ? after - first : after - first + count;
    if (stretches == 1) {
      if (!names.get(first).equals(name)) {
        take(name);
        names.set(first, name);
      }
      return;
    }
    take(name);
    List<String> members = new ArrayList<>();
    for (int i = 0; i < stretches; i++) {
      members.add(names.get((first + i) % count));
    }
    chains.put(name, members);
  }

  private int corner(String edge, String corner) {
    int at = corners.indexOf(corner);
    if (at < 0) {
      throw PanelCode.EDGE_CORNER_UNKNOWN.exception(
          "panel", panel.name(), "edge", edge, "corner", corner, "corners", Known.listed(corners));
    }
    return at;
  }

  private void take(String name) {
    if (names.contains(name) || chains.containsKey(name)) {
      throw PanelCode.EDGE_NAME_TAKEN.exception("panel", panel.name(), "edge", name);
    }
  }

  private List<String> members(String chain, List<String> stated) {
    Set<String> members = new LinkedHashSet<>();
    String last = null;
    for (String name : stated) {
      List<String> inner = chains.getOrDefault(name, List.of(name));
      for (String edge : inner) {
        int at = names.indexOf(edge);
        if (at < 0) {
          throw PanelCode.PANEL_EDGE_UNKNOWN.exception(
              "panel", panel.name(), "edge", edge, "user", "chain", "edges", Known.listed(names));
        }
        boolean follows =
            last == null || names.indexOf(last) == Math.floorMod(at - 1, names.size());
        if (!members.add(edge) || !follows) {
          throw PanelCode.CHAIN_BROKEN.exception(
              "panel", panel.name(), "chain", chain, "first", last, "second", edge);
        }
        last = edge;
      }
    }
    return List.copyOf(members);
  }
}
