package org.lapmark.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lapmark.measure.Dimension;

/** An amount as findings say it: in numbers, so that those of several sizes are told as one. */
record ShownAmount(double amount, Dimension dimension) {
  String value() {
    return BigDecimal.valueOf(amount)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  String unit() {
    return switch (dimension) {
      case LENGTH -> " mm";
      case AREA -> " mm²";
      case ANGLE -> "°";
      default -> "";
    };
  }
}
