package org.lapmark.print;

import java.util.List;

/**
 * The pieces of one variant arranged at full size, and the tiles that show them.
 *
 * @param paper the paper
 * @param columns how many tiles lie side by side
 * @param rows how many lie below each other
 * @param pieces the pieces at their places, by number
 * @param tiles in reading order; empty ones left out
 */
public record SheetPlan(
    Paper paper, int columns, int rows, List<PlacedPiece> pieces, List<Tile> tiles) {
  /** Copies the lists. */
  public SheetPlan {
    pieces = List.copyOf(pieces);
    tiles = List.copyOf(tiles);
  }
}
