package org.lapmark.measure;

/**
 * How values are printed in one document.
 *
 * @param units which units are printed, and which come first
 * @param metricStep the step to which metric lengths are rounded, in millimetres
 * @param inchDenominator the denominator of inch fractions: 8 means eighths
 */
public record PrintForm(Units units, double metricStep, int inchDenominator) {
  /** Metric to 1 mm, inches to eighths, metric first. */
  public static final PrintForm DEFAULT = new PrintForm(Units.METRIC_FIRST, 1, 8);

  /** Which units are printed. */
  public enum Units {
    /** Metric alone. */
    METRIC,
    /** Inches alone. */
    INCHES,
    /** Metric, then inches in brackets. */
    METRIC_FIRST,
    /** Inches, then metric in brackets. */
    INCHES_FIRST
  }
}
