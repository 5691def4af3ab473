package org.lapmark.seam;

/**
 * Two parts of a side that meet end to end and are already sewn to each other there.
 *
 * @param side the side's index, from 0
 * @param before the part that ends there, as written
 * @param after the part that begins there
 * @param at millimetres from the seam's start
 * @param angle the sum of the two panels' inner angles in degrees; 180 where the corners are true
 */
public record Joint(int side, String before, String after, double at, double angle) {
  /** How far from straight the line over a joint may be, in degrees. */
  public static final double TOLERANCE = 5;

  /**
   * How far the line over the joint is from going straight on.
   *
   * @return degrees; above 0 where it juts out, below 0 where it dips in
   */
  public double deviation() {
    return 180 - angle;
  }

  /**
   * Whether the line goes on smoothly.
   *
   * @return true within the tolerance
   */
  public boolean isTrue() {
    return Math.abs(deviation()) <= TOLERANCE;
  }
}
