package org.lapmark.grade;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as findings show them. */
final class Rounded {
  private Rounded() {}

  static String hundredth(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
