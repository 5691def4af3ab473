package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.cutting.Allowance;

/**
 * The allowances that are sewn: of each edge of each panel, those that its pieces are cut with. A
 * piece without allowance there isn't caught in the seam (interfacing that stops at the stitching
 * line), or its raw edge is its edge (webbing), so 0 isn't among them.
 */
public final class SeamAllowances {
  /** No pieces. */
  static final SeamAllowances NONE = new SeamAllowances();

  private final Map<String, Map<String, List<Double>>> widest = new LinkedHashMap<>();
  private final Map<String, Map<String, Double>> narrowest = new LinkedHashMap<>();

  private SeamAllowances() {}

  public static SeamAllowances of(List<Piece> pieces) {
    SeamAllowances all = new SeamAllowances();
    pieces.forEach(all::add);
    return all;
  }

  private void add(Piece piece) {
    String panel = piece.shape().panel().name();
    Map<String, List<Double>> wide = widest.computeIfAbsent(panel, key -> new LinkedHashMap<>());
    Map<String, Double> narrow = narrowest.computeIfAbsent(panel, key -> new LinkedHashMap<>());
    piece
        .shape()
        .allowances()
        .forEach(
            (edge, allowance) -> {
              List<Double> known = wide.computeIfAbsent(edge, name -> new ArrayList<>());
              if (allowance > 0) {
                if (!known.contains(allowance)) {
                  known.add(allowance);
                }
                Allowance stated = piece.shape().stated().edges().get(edge);
                narrow.merge(edge, Math.min(stated.start(), stated.end()), Math::min);
              }
            });
  }

  /** The allowances of an edge, the larger where one changes along it. */
  public List<Double> of(String panel, String edge) {
    return widest.getOrDefault(panel, Map.of()).getOrDefault(edge, List.of());
  }

  /** Whether a panel is cut at all. */
  boolean isCut(String panel) {
    return widest.containsKey(panel);
  }

  /** The narrowest allowance on an edge; 0 where it is cut without one. */
  double least(String panel, String edge) {
    return narrowest.getOrDefault(panel, Map.of()).getOrDefault(edge, 0.0);
  }
}
