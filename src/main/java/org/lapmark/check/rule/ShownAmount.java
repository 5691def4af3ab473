package org.lapmark.check.rule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lapmark.measure.Dimension;

/** An amount as findings say it: in numbers, so that those of several sizes are told as one. */
public record ShownAmount(double amount, Dimension dimension) {
  public String value() {
    return BigDecimal.valueOf(amount)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  public String unit() {
    return switch (dimension) {
      case LENGTH -> " mm";
      case AREA -> " mm²";
      case ANGLE -> "°";
      default -> "";
    };
  }
}
