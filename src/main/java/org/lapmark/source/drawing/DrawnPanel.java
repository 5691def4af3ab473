package org.lapmark.source.drawing;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * What a drawing shows in one variant, in millimetres.
 *
 * @param outline the closed outline
 * @param marks everything else by what it stands for, in file order
 */
public record DrawnPanel(Path outline, Map<Role, List<DrawnMark>> marks) {
  /** Copies the collections, keeping their order. */
  public DrawnPanel {
    Map<Role, List<DrawnMark>> copy = new EnumMap<>(Role.class);
    marks.forEach((role, some) -> copy.put(role, List.copyOf(some)));
    marks = Collections.unmodifiableMap(copy);
  }

  /** What stands for something, in file order. */
  public List<DrawnMark> marks(Role role) {
    return marks.getOrDefault(role, List.of());
  }

  /** Named points, in file order. */
  public Map<String, Point> points(Role role) {
    Map<String, Point> points = new LinkedHashMap<>();
    marks(role).forEach(mark -> points.put(mark.name(), mark.point()));
    return points;
  }

  /** Named lines, in file order. */
  public Map<String, Path> lines(Role role) {
    Map<String, Path> lines = new LinkedHashMap<>();
    marks(role).forEach(mark -> lines.put(mark.name(), mark.path()));
    return lines;
  }
}
