package org.lapmark.print.nest;

import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.grade.Piece;
import org.locationtech.jts.geom.Polygon;

/**
 * One piece in all sizes that have it, lying on each other.
 *
 * @param members the piece in each size, in the order of the sizes
 * @param extent the piece that takes their place while the sheet is arranged: its cutting line goes
 *     around all of them, and it has no edges and no marks
 * @param core what all of them have in common; empty when that is no single area
 */
public record NestedPiece(List<Member> members, Piece extent, List<Polygon> core) {
  /** Copies the lists. */
  public NestedPiece {
    members = List.copyOf(members);
    core = List.copyOf(core);
  }

  /**
   * The piece in one size.
   *
   * @param size the size's place in the list of sizes
   * @param piece the piece
   * @param stack from the panel's coordinates to those of the nest, a turn and a shift
   */
  public record Member(int size, Piece piece, Affine stack) {}

  public int number() {
    return extent.number();
  }
}
