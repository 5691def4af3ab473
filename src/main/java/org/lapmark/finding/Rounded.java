package org.lapmark.finding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as findings show them. */
public final class Rounded {
  private static final double MILLIMETRES = 1000;

  /** From here on figures say less than their number. */
  private static final double MANY = 1e9;

  private Rounded() {}

  /** A length in metres, the longest as a power of ten. */
  public static String metres(double millimetres) {
    double metres = millimetres / MILLIMETRES;
    return Math.abs(metres) < MANY
        ? hundredth(metres)
        : new BigDecimal(metres, new MathContext(3, RoundingMode.HALF_UP)).toString();
  }

  /** A number to the nearest hundredth, without zeros at its end. */
  public static String hundredth(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
