package org.lapmark.print.arrange;

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
}
