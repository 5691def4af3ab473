package org.lapmark.cli.console;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as the walk shows them. */
public final class Millimetres {
  private Millimetres() {}

  /** With two decimals. */
  public static String hundredths(double value) {
    return rounded(value).toPlainString();
  }

  /** With two decimals, as a number. */
  public static double number(double value) {
    return rounded(value).doubleValue();
  }

  /** Without decimals that are 0. */
  public static String brief(double value) {
    return rounded(value).stripTrailingZeros().toPlainString();
  }

  private static BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
  }
}
