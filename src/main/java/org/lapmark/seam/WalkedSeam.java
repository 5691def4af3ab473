package org.lapmark.seam;

import java.util.List;

/**
 * A seam with the lengths of its sides.
 *
 * @param name the seam's name
 * @param sides the sides in the order stated
 * @param ease how much longer the first side is meant to be than each other, in millimetres
 * @param tolerance the greatest deviation allowed, in millimetres
 */
public record WalkedSeam(String name, List<Side> sides, double ease, double tolerance) {
  /** The tolerance where the author states none, in millimetres. */
  public static final double DEFAULT_TOLERANCE = 0.5;

  /** Copies the list. */
  public WalkedSeam {
    sides = List.copyOf(sides);
  }

  /**
   * One side.
   *
   * @param members its parts as written
   * @param length millimetres along the stitching line
   */
  public record Side(List<String> members, double length) {
    /** Copies the list. */
    public Side {
      members = List.copyOf(members);
    }
  }

  /**
   * How far a side is from what it should be.
   *
   * @param side the index of the side, from 1
   * @return first side less this side less ease, in millimetres
   */
  public double deviation(int side) {
    return sides.get(0).length() - sides.get(side).length() - ease;
  }

  /**
   * Whether all sides agree within the tolerance.
   *
   * @return true when they do
   */
  public boolean agrees() {
    for (int i = 1; i < sides.size(); i++) {
      if (Math.abs(deviation(i)) > tolerance) {
        return false;
      }
    }
    return true;
  }
}
