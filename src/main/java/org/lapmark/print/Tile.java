package org.lapmark.print;

import java.util.List;
import org.lapmark.drawing.Drawing;
import org.lapmark.geometry.Box;

/**
 * One page's window onto the sheet.
 *
 * @param code row letter and column number, such as {@code B3}
 * @param column 0-based, from the left
 * @param row 0-based, from the top
 * @param window what it shows, in sheet coordinates, at the size of the paper's tile window
 * @param page the whole page as drawn, without its page number
 * @param pieces the numbers of the pieces on it
 * @param alternative what is on it, in words
 */
public record Tile(
    String code,
    int column,
    int row,
    Box window,
    Drawing page,
    List<Integer> pieces,
    String alternative) {
  /** Copies the list. */
  public Tile {
    pieces = List.copyOf(pieces);
  }
}
