package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;

/**
 * An allowance that is turned to the wrong side and seen there, in the panel's own coordinates. It
 * may reach a little beyond the piece's ends, where the piece itself ends it.
 *
 * @param shape its outline
 * @param raw its raw edge
 */
public record Flap(Path shape, Path raw) {
  private static final double FLATNESS = 0.05;

  /** Those of a piece that lies with its wrong side up. */
  public static List<Flap> of(
      Panel panel, Map<String, Double> stated, Map<String, Double> left, List<String> turned) {
    Map<Double, List<String>> byDepth = new LinkedHashMap<>();
    for (String edge : turned) {
      double depth = stated.getOrDefault(edge, 0.0);
      if (depth > 0) {
        byDepth.computeIfAbsent(depth, unused -> new ArrayList<>()).add(edge);
      }
    }
    List<Flap> flaps = new ArrayList<>();
    byDepth.forEach(
        (depth, edges) -> {
          List<Path> folds = Lines.beside(panel, left, edges, 0, turned);
          List<Path> raws = Lines.beside(panel, left, edges, -depth, turned);
          // An allowance too deep to be turned in leaves fewer lines than edges.
          for (int i = 0; i < folds.size() && folds.size() == raws.size(); i++) {
            flaps.add(between(folds.get(i), raws.get(i), left));
          }
        });
    return flaps;
  }

  private static Flap between(Path fold, Path raw, Map<String, Double> allowances) {
    if (fold.isClosed() && raw.isClosed()) {
      double at = raw.nearestLength(fold.start());
      Path turned =
          at < 1e-6 || at > raw.length() - 1e-6
              ? raw
              : raw.part(at, raw.length()).then(raw.part(0, at));
      return new Flap(ring(fold, turned), raw);
    }
    double most = allowances.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    Path beyond = Lines.extended(raw, most);
    return new Flap(ring(fold, beyond), beyond);
  }

  private static Path ring(Path outer, Path inner) {
    List<Point> points = new ArrayList<>(outer.flattened(FLATNESS));
    points.addAll(inner.reversed().flattened(FLATNESS));
    points.add(points.get(0));
    return Path.polyline(points);
  }
}
