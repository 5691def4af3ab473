package org.lapmark.print.paper;

/**
 * What a maker's printer does to lengths: what the bars of the printing page, of 180 mm across and
 * 240 mm down, measured on her print.
 *
 * @param across what the bar of 180 mm measured, in millimetres
 * @param down what the bar of 240 mm measured, in millimetres
 */
public record Correction(double across, double down) {
  /** The length of the bar across, in millimetres. */
  public static final double ACROSS = 180;

  /** The length of the bar down, in millimetres. */
  public static final double DOWN = 240;

  /** A printer that keeps the scale. */
  public static final Correction NONE = new Correction(ACROSS, DOWN);

  /** No printer errs by more: a greater difference comes from measuring something else. */
  private static final double MOST = 0.06;

  /** Checks that both are plausible. */
  public Correction {
    if (!plausible(across, down)) {
      throw new IllegalArgumentException("a printer doesn't err by more than 6 %");
    }
  }

  /**
   * Whether a correction can be made from two measurements.
   *
   * @param across what the bar of 180 mm measured, in millimetres
   * @param down what the bar of 240 mm measured, in millimetres
   * @return false when one is more than 6 per cent out
   */
  public static boolean plausible(double across, double down) {
    return Math.abs(across / ACROSS - 1) <= MOST && Math.abs(down / DOWN - 1) <= MOST;
  }

  /** How much longer than stated lengths across come out. */
  public double scaleX() {
    return across / ACROSS;
  }

  /** How much longer than stated lengths down come out. */
  public double scaleY() {
    return down / DOWN;
  }
}
