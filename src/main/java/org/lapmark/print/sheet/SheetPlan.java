package org.lapmark.print.sheet;

import java.util.List;
import java.util.Optional;
import org.lapmark.print.arrange.Arranged;
import org.lapmark.print.arrange.PlanQuality;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PlacedPiece;

/**
 * The pieces of one variant arranged at full size, and the tiles that show them.
 *
 * @param paper the paper
 * @param columns how many tiles lie side by side
 * @param rows how many lie below each other
 * @param pieces the pieces at their places, by number
 * @param tiles the one with the test square first, then in reading order; empty ones left out
 * @param quality how many pages and joins there are, and the bound they were held to
 * @param arranged where everything lies, to be kept by later editions; empty without tiles
 */
public record SheetPlan(
    Paper paper,
    int columns,
    int rows,
    List<PlacedPiece> pieces,
    List<Tile> tiles,
    PlanQuality quality,
    Optional<Arranged> arranged) {
  /** Copies the lists. */
  public SheetPlan {
    pieces = List.copyOf(pieces);
    tiles = List.copyOf(tiles);
  }

  /**
   * A plan that wasn't measured.
   *
   * @param paper the paper
   * @param columns how many tiles lie side by side
   * @param rows how many lie below each other
   * @param pieces the pieces at their places, by number
   * @param tiles the one with the test square first, then in reading order; empty ones left out
   */
  public SheetPlan(Paper paper, int columns, int rows, List<PlacedPiece> pieces, List<Tile> tiles) {
    this(paper, columns, rows, pieces, tiles, PlanQuality.NOTHING, Optional.empty());
  }
}
