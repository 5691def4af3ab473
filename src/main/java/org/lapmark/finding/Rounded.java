package org.lapmark.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as findings show them. */
public final class Rounded {
  private Rounded() {}

  /** A number to the nearest hundredth, without zeros at its end. */
  public static String hundredth(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
