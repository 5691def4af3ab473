package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.derived.DerivedSource;
import org.lapmark.source.key.Key;
import org.lapmark.source.yaml.YamlNode;

/** How the edges and chains of each panel are called, as far as that shows without computing. */
final class PanelLines {
  private final Map<String, PanelSource> panels;
  private final Map<String, Set<String>> statedEdges = new TreeMap<>();
  private final Map<String, Set<String>> statedChains = new TreeMap<>();

  /**
   * Names of lines.
   *
   * @param panels the panels that could be read, by name
   * @param written the panels as written: names of what couldn't be read are known all the same
   */
  PanelLines(PatternSource source, Map<String, PanelSource> panels, YamlNode.Entries written) {
    this.panels = panels;
    for (YamlNode.Entry panel : written.entries()) {
      String name = panel.key().text().text();
      if (panel.value() instanceof YamlNode.Entries parts) {
        names(
            parts, EdgeReader.EDGES, statedEdges.computeIfAbsent(name, unused -> new TreeSet<>()));
        names(
            parts,
            EdgeReader.CHAINS,
            statedChains.computeIfAbsent(name, unused -> new TreeSet<>()));
      }
    }
    for (PanelSource panel : source.panels()) {
      String name = panel.name().text();
      Set<String> edges = statedEdges.computeIfAbsent(name, unused -> new TreeSet<>());
      panel.edges().forEach(edge -> edges.add(edge.name().text()));
      Set<String> chains = statedChains.computeIfAbsent(name, unused -> new TreeSet<>());
      panel.chains().forEach(chain -> chains.add(chain.name().text()));
    }
  }

  private static void names(YamlNode.Entries parts, Key<?> key, Set<String> names) {
    for (YamlNode.Entry part : parts.entries()) {
      if (part.key().text().text().equals(key.name())
          && part.value() instanceof YamlNode.Entries entries) {
        entries.entries().forEach(entry -> names.add(entry.key().text().text()));
      }
    }
  }

  /** A panel's edges: stated ones, those of its shape, an inset's original's; null if unknown. */
  Set<String> edges(PanelSource panel) {
    return edges(panel, new TreeSet<>());
  }

  /** A panel's chains: stated ones, those of its shape and of what it is derived from. */
  Set<String> chains(PanelSource panel) {
    return chains(panel, new TreeSet<>());
  }

  private Set<String> edges(PanelSource panel, Set<String> visited) {
    if (panel.shape() == null) {
      return null;
    }
    Set<String> names = new TreeSet<>(statedEdges.getOrDefault(panel.name().text(), Set.of()));
    if (panel.shape().derivation().isPresent()) {
      Set<String> inherited = inherited(panel, panel.shape().derivation().get(), visited);
      if (inherited == null) {
        return null;
      }
      names.addAll(inherited);
    }
    names.addAll(panel.shape().edges(panel.edges()));
    return names;
  }

  private Set<String> chains(PanelSource panel, Set<String> visited) {
    Set<String> names = new TreeSet<>(statedChains.getOrDefault(panel.name().text(), Set.of()));
    if (panel.shape() == null) {
      return names;
    }
    names.addAll(panel.shape().chains());
    Optional<DerivedSource> how = panel.shape().derivation();
    if (how.isPresent() && visited.add(panel.name().text())) {
      for (SourceText original : how.get().originals()) {
        if (panels.containsKey(original.text())) {
          names.addAll(
              how.get().chains(chains(panels.get(original.text()), new TreeSet<>(visited))));
        }
      }
    }
    return names;
  }

  /** The edges that a panel has from those that it is derived from; null if unknown. */
  private Set<String> inherited(PanelSource panel, DerivedSource how, Set<String> visited) {
    if (!visited.add(panel.name().text())) {
      return null;
    }
    List<Set<String>> known = new ArrayList<>();
    for (SourceText original : how.originals()) {
      PanelSource source = panels.get(original.text());
      Set<String> edges = source == null ? null : edges(source, new TreeSet<>(visited));
      if (edges == null) {
        return null;
      }
      known.add(edges);
    }
    return how.edges(known);
  }
}
