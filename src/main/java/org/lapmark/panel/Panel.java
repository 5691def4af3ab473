package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
   * The marks of one kind.
   *
   * @param kind the kind, or what several kinds have in common
   * @param <M> the same
   * @return the marks in order
   */
  public <M extends Mark> List<M> marks(Class<M> kind) {
    return marks.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /**
   * Whether a name is that of a numbered part of an edge.
   *
   * @param name a name
   * @param edge the edge's name
   * @return true for the edge's name with an underscore and a number
   */
  public static boolean isPart(String name, String edge) {
    return name.startsWith(edge + "_") && name.substring(edge.length()).matches("_+[0-9]+");
  }

  /**
   * A fold line or a placement line, at which it may be folded.
   *
   * @param name its name
   * @return where it runs, unless none is called so
   */
  public Optional<Path> creaseLine(String name) {
    return linesWithin().filter(line -> line.name().equals(name)).map(LineMark::path).findFirst();
  }

  /**
   * The names of its fold lines and placement lines.
   *
   * @return the names, in order
   */
  public List<String> creaseLines() {
    return linesWithin().map(LineMark::name).toList();
  }

  private Stream<LineMark> linesWithin() {
    return marks.stream()
        .filter(LineMark.class::isInstance)
        .map(LineMark.class::cast)
        .filter(LineMark::isDrawn);
  }

  /**
   * A placement line.
   *
   * @param name its name
   * @return where it runs, unless none is called so
   */
  public Optional<Path> placementLine(String name) {
    return marks.stream()
        .filter(LineMark.Placement.class::isInstance)
        .map(LineMark.Placement.class::cast)
        .filter(line -> line.name().equals(name))
        .map(LineMark.Placement::path)
        .findFirst();
  }

  /**
   * Whether a name stands for one line. A derivation may take the middle of an edge: its name then
   * stands for the parts that are left, which don't follow one another.
   *
   * @param edgeOrChain a name
   * @return false for a chain whose edges don't follow one another
   */
  public boolean isOneLine(String edgeOrChain) {
    List<String> members = chains.getOrDefault(edgeOrChain, List.of());
    List<String> names = edges.stream().map(Edge::name).toList();
    for (int i = 1; i < members.size(); i++) {
      int before = names.indexOf(members.get(i - 1));
      if (names.indexOf(members.get(i)) != (before + 1) % names.size()) {
        return false;
      }
    }
    return true;
  }

  /**
   * What is wrong with a name that stands for several lines where one is needed.
   *
   * @param edgeOrChain the name of a chain whose edges don't follow one another
   * @return what names its parts
   */
  public PanelException inParts(String edgeOrChain) {
    List<String> members = chains.get(edgeOrChain);
    boolean edge = members.stream().allMatch(member -> isPart(member, edgeOrChain));
    return PanelCode.EDGE_IN_PARTS.exception(
        "what",
        edge ? "edge" : "chain",
        "edge",
        edgeOrChain,
        "panel",
        name,
        "parts",
        String.join(", ", members),
        "first",
        members.get(0),
        "second",
        members.get(1));
  }

  /**
   * The stitching line of an edge or of a chain of edges.
   *
   * @param edgeOrChain its name
   * @return the path, or null when the panel has neither, or the name stands for several lines
   */
  public Path line(String edgeOrChain) {
    if (!isOneLine(edgeOrChain)) {
      return null;
    }
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
