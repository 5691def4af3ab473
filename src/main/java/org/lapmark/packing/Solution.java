package org.lapmark.packing;

import java.util.List;

/**
 * Boards with what they cost.
 *
 * @param boards the islands
 * @param tiles how many tiles carry something
 * @param joins how many are joined
 * @param reach how far down the only island reaches, in rows of cells
 * @param together how much of what is free lies together, in tiles
 * @param uneven how unevenly tiles are filled
 */
record Solution(List<Board> boards, int tiles, int joins, int reach, double together, double uneven)
    implements Comparable<Solution> {
  /** A join weighs so much of a tile while searching. */
  private static final double JOIN = 0.005;

  /** Free room that lies together counts so much of a tile while searching. */
  private static final double TOGETHER = 0.1;

  /**
   * Full tiles beside empty ones count so much more of a tile than all equally full, while
   * searching: an emptier one is on its way out.
   */
  private static final double UNEVEN = 0.3;

  static Solution of(List<Board> boards) {
    int tiles = 0;
    int joins = 0;
    double together = 0;
    double uneven = 0;
    for (Board board : boards) {
      tiles += board.tiles();
      joins += board.joins();
      together += board.free() * board.free() / Math.max(1, board.tiles());
      uneven += board.uneven();
    }
    int reach = boards.size() == 1 ? boards.get(0).lastRow() : 0;
    return new Solution(boards, tiles, joins, reach, together, uneven);
  }

  /** What searching compares: less is better. */
  double weight() {
    return tiles + JOIN * joins - TOGETHER * together - UNEVEN * uneven;
  }

  @Override
  public int compareTo(Solution other) {
    int byTiles = Integer.compare(tiles, other.tiles);
    int byJoins = byTiles != 0 ? byTiles : Integer.compare(joins, other.joins);
    int byReach = byJoins != 0 ? byJoins : Integer.compare(reach, other.reach);
    return byReach != 0 ? byReach : Double.compare(other.together, together);
  }
}
