package org.lapmark.packing;

/**
 * A free place for a shape, with what taking it costs; less is better in the order of the
 * components.
 *
 * @param newTiles how many more tiles carry something
 * @param newJoins how many more lines between tiles are crossed
 * @param needless how many more lines the shape crosses than its size makes it
 * @param x in cells
 * @param y in rows of cells
 * @param turn the turn, or -1 for no place at all
 */
record Place(int newTiles, int newJoins, int needless, int x, int y, int turn) {
  static final Place NONE =
      new Place(Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, 0, 0, -1);

  boolean costsNothing() {
    return newTiles == 0 && newJoins == 0 && needless == 0;
  }

  /** Compares the costs alone. */
  int compareCost(Place other) {
    if (newTiles != other.newTiles) {
      return Integer.compare(newTiles, other.newTiles);
    }
    if (newJoins != other.newJoins) {
      return Integer.compare(newJoins, other.newJoins);
    }
    return Integer.compare(needless, other.needless);
  }
}
