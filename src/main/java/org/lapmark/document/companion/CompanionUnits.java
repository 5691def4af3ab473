package org.lapmark.document.companion;

import java.util.Locale;
import org.lapmark.measure.print.PrintForm;

/** The choices of units that a companion offers. */
public enum CompanionUnits {
  /** Both, in the author's order. */
  BOTH,
  /** Metric alone. */
  METRIC,
  /** Inches alone. */
  INCHES;

  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The author's form with these units. */
  PrintForm of(PrintForm author) {
    return author.with(
        switch (this) {
          case METRIC -> PrintForm.Units.METRIC;
          case INCHES -> PrintForm.Units.INCHES;
          case BOTH ->
              author.units().metricLeads()
                  ? PrintForm.Units.METRIC_FIRST
                  : PrintForm.Units.INCHES_FIRST;
        });
  }

  /** The choice that the author made. */
  static CompanionUnits chosen(PrintForm author) {
    return switch (author.units()) {
      case METRIC -> METRIC;
      case INCHES -> INCHES;
      default -> BOTH;
    };
  }
}
