package org.lapmark.panel.cutting;

/**
 * What an edge has outside its stitching line. Where it changes it does so evenly along the edge's
 * length, measured along the stitching line's normals.
 *
 * @param start millimetres at the edge's start, clockwise on paper; 0 or more
 * @param end millimetres at its end
 * @param fold whether the edge lies on a fold: it has no allowance, and its line goes straight on
 *     until it meets its neighbours'; a raw edge of allowance 0 is none
 */
public record Allowance(double start, double end, boolean fold) {
  /** The allowance of an edge that lies on a fold. */
  public static final Allowance FOLD = new Allowance(0, 0, true);

  /** Checks that a fold has no allowance. */
  public Allowance {
    if (fold && (start != 0 || end != 0)) {
      throw new IllegalArgumentException("a fold has no allowance");
    }
  }

  /**
   * One allowance along the whole edge.
   *
   * @param width millimetres, 0 or more
   * @return the allowance
   */
  public static Allowance of(double width) {
    return new Allowance(width, width, false);
  }

  /**
   * The larger of its ends.
   *
   * @return millimetres
   */
  public double widest() {
    return Math.max(start, end);
  }

  /** What it is at a share of the edge's length. */
  double at(double share) {
    return start + (end - start) * Math.max(0, Math.min(1, share));
  }
}
