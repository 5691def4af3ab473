package org.lapmark.panel.stated;

import java.util.ArrayList;
import java.util.List;

/**
 * The kinds of shapes that are stated by numbers rather than drawn, with the names of their corners
 * and edges in order, clockwise on paper; each edge runs from the corner of its own place in the
 * order to the next.
 */
public enum StatedKind {
  /** A circle or an ellipse: four quarters, and the chain {@code rim} all the way round. */
  ROUND(
      List.of("top", "right", "bottom", "left"),
      List.of("top_right", "right_bottom", "bottom_left", "left_top"),
      "rim"),
  /** A part of a ring: centre above, outer arc below; it starts on the right. */
  RING_SECTOR(
      List.of("outer_start", "outer_end", "inner_end", "inner_start"),
      List.of("outer", "end", "inner", "start"),
      ""),
  /** A band between two lengths, the lower one below; it starts on the right. */
  CONE_BAND(
      List.of("lower_start", "lower_end", "upper_end", "upper_start"),
      List.of("lower", "end", "upper", "start"),
      "");

  private final List<String> corners;
  private final List<String> edges;
  private final String chain;

  StatedKind(List<String> corners, List<String> edges, String chain) {
    this.corners = corners;
    this.edges = edges;
    this.chain = chain;
  }

  /**
   * The corners' names.
   *
   * @return clockwise on paper
   */
  public List<String> corners() {
    return corners;
  }

  /**
   * The edges' names.
   *
   * @return clockwise on paper, the first beginning at the first corner
   */
  public List<String> edges() {
    return edges;
  }

  /**
   * The name of the edge between two corners.
   *
   * @param from the corner where it begins
   * @param to the corner where it ends
   * @return its name, or the empty text where no single edge runs so
   */
  public String edge(String from, String to) {
    int first = corners.indexOf(from);
    boolean next = first >= 0 && corners.get((first + 1) % corners.size()).equals(to);
    return next ? edges.get(first) : "";
  }

  /**
   * The names of the chain that goes all the way round.
   *
   * @return one name, or none
   */
  public List<String> chains() {
    List<String> names = new ArrayList<>();
    if (!chain.isEmpty()) {
      names.add(chain);
    }
    return names;
  }
}
