package org.lapmark.print.sheet;

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
 * @param core the part of the window that is this tile's alone: up to the lines on which it meets
 *     its neighbours
 * @param joined the codes of the tiles that it is joined to: left, above, right, below, as far as
 *     there are
 * @param blank whether it shows the inside of a piece and no line, so that nobody needs it
 */
public record Tile(
    String code,
    int column,
    int row,
    Box window,
    Drawing page,
    List<Integer> pieces,
    String alternative,
    Box core,
    List<String> joined,
    boolean blank) {
  /** Copies the lists. */
  public Tile {
    pieces = List.copyOf(pieces);
    joined = List.copyOf(joined);
  }

  /**
   * A tile that stands alone.
   *
   * @param code row letter and column number
   * @param column 0-based, from the left
   * @param row 0-based, from the top
   * @param window what it shows, in sheet coordinates
   * @param page the whole page as drawn
   * @param pieces the numbers of the pieces on it
   * @param alternative what is on it, in words
   */
  public Tile(
      String code,
      int column,
      int row,
      Box window,
      Drawing page,
      List<Integer> pieces,
      String alternative) {
    this(code, column, row, window, page, pieces, alternative, window, List.of(), false);
  }
}
