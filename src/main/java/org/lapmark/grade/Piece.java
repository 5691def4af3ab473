package org.lapmark.grade;

import java.util.List;
import java.util.Optional;
import org.lapmark.panel.PieceShape;

/**
 * What a maker prints and cuts.
 *
 * @param number its stated number
 * @param name what readers see
 * @param shape panel, allowances, cutting line and notches
 * @param cuts how many from which material, in the order stated; every count in every document
 *     comes from here
 * @param statedSize the cut size of a rectangle or strip, which needs no paper
 */
public record Piece(
    int number, String name, PieceShape shape, List<Cut> cuts, Optional<StatedSize> statedSize) {
  /** Copies the list. */
  public Piece {
    cuts = List.copyOf(cuts);
  }
}
