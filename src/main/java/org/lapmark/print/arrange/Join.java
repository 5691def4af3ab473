package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Point;

/**
 * Where two tiles are joined.
 *
 * @param number 1-based, unique on the sheet
 * @param first the left or upper tile, which is trimmed and lies on top
 * @param second the right or lower tile
 * @param sideways whether the second lies to the right
 * @param from the line's left or upper end, in sheet coordinates
 * @param to its right or lower end
 */
public record Join(int number, Cell first, Cell second, boolean sideways, Point from, Point to) {
  public double length() {
    return from.distance(to);
  }

  /** The same joins, numbered in reading order of their first tiles. */
  static List<Join> numbered(List<Join> joins) {
    List<Join> sorted =
        joins.stream()
            .sorted(
                Comparator.<Join>comparingInt(join -> join.first().row())
                    .thenComparingInt(join -> join.first().column())
                    .thenComparingInt(join -> join.sideways() ? 0 : 1))
            .toList();
    List<Join> numbered = new ArrayList<>();
    for (Join join : sorted) {
      numbered.add(
          new Join(
              numbered.size() + 1,
              join.first(),
              join.second(),
              join.sideways(),
              join.from(),
              join.to()));
    }
    return numbered;
  }
}
