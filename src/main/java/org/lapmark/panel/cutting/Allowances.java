package org.lapmark.panel.cutting;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a piece has outside its stitching line.
 *
 * @param edges by edge name, one entry an edge
 * @param corner how the cutting line turns at corners not stated otherwise
 * @param corners how it turns at single corners, by name
 */
public record Allowances(
    Map<String, Allowance> edges, CornerShape corner, Map<String, CornerShape> corners) {
  /** Copies the maps, keeping their order. */
  public Allowances {
    edges = Collections.unmodifiableMap(new LinkedHashMap<>(edges));
    corners = Collections.unmodifiableMap(new LinkedHashMap<>(corners));
  }

  /**
   * Allowances of one width an edge, with corners as usual.
   *
   * @param widths millimetres by edge name
   * @return the allowances
   */
  public static Allowances of(Map<String, Double> widths) {
    Map<String, Allowance> edges = new LinkedHashMap<>();
    widths.forEach((edge, width) -> edges.put(edge, Allowance.of(width)));
    return new Allowances(edges, CornerShape.USUAL, Map.of());
  }

  /** The widest of each edge. */
  Map<String, Double> widest() {
    Map<String, Double> widest = new LinkedHashMap<>();
    edges.forEach((edge, allowance) -> widest.put(edge, allowance.widest()));
    return widest;
  }
}
