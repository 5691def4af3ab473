package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;

/**
 * One closed shape in one variant, on its stitching line.
 *
 * @param name the panel's name
 * @param edges the edges in order, clockwise on paper, the last ending where the first begins
 * @param chains names for runs of consecutive edges, each a list of edge names in outline order
 * @param marks notches, grainline, drill points and lines
 */
public record Panel(
    String name, List<Edge> edges, Map<String, List<String>> chains, List<Mark> marks) {
  /** Copies the collections, keeping their order. */
  public Panel {
    edges = List.copyOf(edges);
    chains = Collections.unmodifiableMap(new LinkedHashMap<>(chains));
    marks = List.copyOf(marks);
  }

  /**
   * The whole stitching line.
   *
   * @return a closed path, clockwise on paper, from the first edge's start
   */
  public Path outline() {
    List<Curve> curves = new ArrayList<>();
    edges.forEach(edge -> curves.addAll(edge.path().curves()));
    return new Path(curves);
  }

  /**
   * The stitching line of an edge or of a chain of edges.
   *
   * @param edgeOrChain its name
   * @return the path, or null when the panel has neither
   */
  public Path line(String edgeOrChain) {
    List<String> names = chains.getOrDefault(edgeOrChain, List.of(edgeOrChain));
    List<Curve> curves = new ArrayList<>();
    for (String name : names) {
      edges.stream()
          .filter(edge -> edge.name().equals(name))
          .forEach(edge -> curves.addAll(edge.path().curves()));
    }
    return curves.isEmpty() ? null : new Path(curves);
  }
}
