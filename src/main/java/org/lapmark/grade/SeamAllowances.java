package org.lapmark.grade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The allowances that are sewn: of each edge of each panel, those that its pieces are cut with. A
 * piece without allowance there isn't caught in the seam (interfacing that stops at the stitching
 * line), or its raw edge is its edge (webbing), so 0 isn't among them.
 */
final class SeamAllowances {
  private SeamAllowances() {}

  static Map<String, Map<String, List<Double>>> of(List<Piece> pieces) {
    Map<String, Map<String, List<Double>>> all = new LinkedHashMap<>();
    for (Piece piece : pieces) {
      Map<String, List<Double>> edges =
          all.computeIfAbsent(piece.shape().panel().name(), panel -> new LinkedHashMap<>());
      piece
          .shape()
          .allowances()
          .forEach(
              (edge, allowance) -> {
                List<Double> known = edges.computeIfAbsent(edge, name -> new ArrayList<>());
                if (allowance > 0 && !known.contains(allowance)) {
                  known.add(allowance);
                }
              });
    }
    return all;
  }
}
