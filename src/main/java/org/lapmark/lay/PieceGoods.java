package org.lapmark.lay;

import java.util.List;
import org.lapmark.grade.Piece;

/**
 * Lengths cut from a tape or webbing whose width is the pieces' own.
 *
 * @param cloth the material
 * @param lengths the lengths in the order of the pieces
 * @param total all lengths together, in millimetres
 * @param purchase what to buy
 */
public record PieceGoods(Cloth cloth, List<Length> lengths, double total, Purchase purchase) {
  /** Copies the list. */
  public PieceGoods {
    lengths = List.copyOf(lengths);
  }

  /**
   * A piece that is a length of the material.
   *
   * @param piece the piece
   * @param count how many are cut
   * @param each the length of one, in millimetres
   */
  public record Length(Piece piece, int count, double each) {}
}
