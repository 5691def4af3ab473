package org.lapmark.lay;

import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.grade.piece.Piece;

/**
 * A piece at its place on the cloth, or one of the lengths that a bias strip is joined from.
 *
 * @param piece the piece
 * @param reversed whether the paper lies face down
 * @param part which of the lengths it is, from 1
 * @param parts how many lengths the piece is joined from; 1 for a whole piece
 * @param shape the closed line to cut along, in the panel's coordinates
 * @param map from the panel's coordinates to the lay's, x along the cloth and y across; it mirrors
 *     reversed pieces
 */
public record Placement(
    Piece piece, boolean reversed, int part, int parts, Path shape, Affine map) {
  /**
   * Where to cut.
   *
   * @return a closed path in lay coordinates
   */
  public Path outline() {
    return shape.transformed(map);
  }
}
