package org.lapmark.packing;

import org.lapmark.geometry.Box;
import org.lapmark.geometry.Whole;

/**
 * The tiles that an island is made of. Neighbouring windows overlap; the line on which two tiles
 * meet runs down the middle of their overlap. A tile's core is what lies between those lines, and
 * reaches to the window's edge where it has no neighbour.
 *
 * @param width a window's width in millimetres
 * @param height a window's height in millimetres
 * @param overlap how much two neighbouring windows share, in millimetres
 * @param edge how far shapes keep from the outer edge of an island, in millimetres
 */
public record TileGrid(double width, double height, double overlap, double edge) {
  /** Checks that a core is left. */
  public TileGrid {
    if (!(overlap >= 0 && edge >= 0 && width > 2 * overlap + 2 && height > 2 * overlap + 2)) {
      throw new IllegalArgumentException("a tile is larger than twice its overlap");
    }
  }

  /**
   * From one window's left edge to the next one's.
   *
   * @return millimetres
   */
  public double stepX() {
    return width - overlap;
  }

  /**
   * From one window's top edge to the next one's.
   *
   * @return millimetres
   */
  public double stepY() {
    return height - overlap;
  }

  /**
   * The least number of columns that shows an island.
   *
   * @param maxX the greatest x of its shapes, in millimetres from the first window's left edge
   * @return 1 or more
   */
  public int columns(double maxX) {
    return count(maxX + edge, width, stepX());
  }

  /**
   * The least number of rows that shows an island.
   *
   * @param maxY the greatest y of its shapes, in millimetres from the first window's top edge
   * @return 1 or more
   */
  public int rows(double maxY) {
    return count(maxY + edge, height, stepY());
  }

  /**
   * The column in whose core a place lies.
   *
   * @param x millimetres from the first window's left edge
   * @param columns how many columns there are
   * @return 0-based, from the left
   */
  public int column(double x, int columns) {
    return index(x, stepX(), columns);
  }

  /**
   * The row in whose core a place lies.
   *
   * @param y millimetres from the first window's top edge
   * @param rows how many rows there are
   * @return 0-based, from the top
   */
  public int row(double y, int rows) {
    return index(y, stepY(), rows);
  }

  /**
   * Where two neighbouring columns meet.
   *
   * @param column the right one of the two, 0-based
   * @return millimetres from the first window's left edge
   */
  public double seamX(int column) {
    return column * stepX() + overlap / 2;
  }

  /**
   * Where two neighbouring rows meet.
   *
   * @param row the lower one of the two, 0-based
   * @return millimetres from the first window's top edge
   */
  public double seamY(int row) {
    return row * stepY() + overlap / 2;
  }

  /**
   * What is one tile's alone.
   *
   * @param island the island
   * @param row the tile's row, 0-based
   * @param column its column, 0-based
   * @return its box in millimetres from the first window's corner
   */
  public Box core(Island island, int row, int column) {
    boolean last = column + 1 == island.columns();
    boolean lowest = row + 1 == island.rows();
    return new Box(
        column == 0 ? 0 : seamX(column),
        row == 0 ? 0 : seamY(row),
        last ? column * stepX() + width : seamX(column + 1),
        lowest ? row * stepY() + height : seamY(row + 1));
  }

  private static int count(double end, double side, double step) {
    return 1 + Math.max(0, Whole.ceil((end - side) / step - 1e-9));
  }

  private int index(double at, double step, int count) {
    int index = Whole.floor((at - overlap / 2) / step);
    return Math.max(0, Math.min(count - 1, index));
  }
}
