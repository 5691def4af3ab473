package org.lapmark.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as the walk shows them. */
final class Millimetres {
  private Millimetres() {}

  /** With two decimals. */
  static String hundredths(double value) {
    return rounded(value).toPlainString();
  }

  /** With two decimals, as a number. */
  static double number(double value) {
    return rounded(value).doubleValue();
  }

  /** Without decimals that are 0. */
  static String brief(double value) {
    return rounded(value).stripTrailingZeros().toPlainString();
  }

  private static BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
  }
}
