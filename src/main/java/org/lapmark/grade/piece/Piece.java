package org.lapmark.grade.piece;

import java.util.List;
import java.util.Optional;
import org.lapmark.panel.Mark;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.panel.cutting.PieceShape;

/**
 * What a maker prints and cuts.
 *
 * @param number its stated number
 * @param name what readers see
 * @param shape panel, allowances, cutting line and notches
 * @param cuts how many from which material, in the order stated; every count in every document
 *     comes from here
 * @param statedSize the cut size of a rectangle or strip that is ruled and has no paper
 * @param half what paper shows of a piece that is cut on the fold; nothing when it shows all
 * @param rectangle the cut size of a rectangle or strip, also of one that has paper
 */
public record Piece(
    int number,
    String name,
    PieceShape shape,
    List<Cut> cuts,
    Optional<StatedSize> statedSize,
    Optional<FoldedHalf> half,
    Optional<StatedSize> rectangle) {
  /** Copies the list. */
  public Piece {
    cuts = List.copyOf(cuts);
  }

  /**
   * A piece that is printed if it isn't a rectangle.
   *
   * @param number its stated number
   * @param name what readers see
   * @param shape panel, allowances, cutting line and notches
   * @param cuts how many from which material
   * @param statedSize the cut size of a rectangle or strip, which needs no paper
   * @param half what paper shows of a piece that is cut on the fold
   */
  public Piece(
      int number,
      String name,
      PieceShape shape,
      List<Cut> cuts,
      Optional<StatedSize> statedSize,
      Optional<FoldedHalf> half) {
    this(number, name, shape, cuts, statedSize, half, statedSize);
  }

  /**
   * A piece whose paper shows all of it.
   *
   * @param number its stated number
   * @param name what readers see
   * @param shape panel, allowances, cutting line and notches
   * @param cuts how many from which material
   * @param statedSize the cut size of a rectangle or strip, which needs no paper
   */
  public Piece(
      int number, String name, PieceShape shape, List<Cut> cuts, Optional<StatedSize> statedSize) {
    this(number, name, shape, cuts, statedSize, Optional.empty());
  }

  /**
   * Whether it is cut along a grain.
   *
   * @return false if all of it is cut from materials without one
   */
  public boolean hasGrain() {
    return shape.panel().marks().stream().anyMatch(Mark.Grainline.class::isInstance);
  }

  /**
   * Whether paper shows an edge that is placed on a fold.
   *
   * @return true if a half is shown or an edge is stated to lie on a fold
   */
  public boolean isFolded() {
    return half.isPresent()
        || shape.panel().edges().stream().anyMatch(edge -> shape.isFold(edge.name()));
  }
}
