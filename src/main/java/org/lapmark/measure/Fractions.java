package org.lapmark.measure;

/**
 * Fractions as they are read, also those with a character of their own, and as they are printed.
 */
public final class Fractions {
  private static final String SIGNS = "½¼¾⅛⅜⅝⅞";
  private static final int[][] PARTS = {{1, 2}, {1, 4}, {3, 4}, {1, 8}, {3, 8}, {5, 8}, {7, 8}};

  private Fractions() {}

  static boolean isSign(int character) {
    return SIGNS.indexOf(character) >= 0;
  }

  /** The value of a fraction's character; exact, for all are eighths. */
  static double value(char sign) {
    int[] parts = PARTS[SIGNS.indexOf(sign)];
    return (double) parts[0] / parts[1];
  }

  /**
   * A number of whole things and a reduced fraction as readers see it. All are set alike,
   * sixteenths and halves, with digits and a slash: only some fractions have a character of their
   * own.
   */
  public static String text(String whole, long numerator, long denominator) {
    String fraction = numerator + "/" + denominator;
    return whole.isEmpty() ? fraction : whole + '\u00a0' + fraction;
  }
}
