package org.lapmark.drawing;

import java.util.List;

/**
 * A vector drawing on a rectangle whose top left corner is the origin, in millimetres, x right and
 * y down, at the size at which it is printed.
 *
 * @param width the width in millimetres
 * @param height the height in millimetres
 * @param items what is drawn, from the bottom up
 */
public record Drawing(double width, double height, List<Item> items) {
  /** Copies the list. */
  public Drawing {
    items = List.copyOf(items);
  }
}
