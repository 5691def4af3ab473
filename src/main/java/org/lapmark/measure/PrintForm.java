package org.lapmark.measure;

import java.util.Objects;

/**
 * How values are printed in one document.
 *
 * @param units which units are printed, and which come first
 * @param metricStep the step to which metric lengths are rounded, in millimetres
 * @param inchDenominator the denominator of inch fractions: 8 means eighths
 * @param words how numbers are written in the document's language
 */
public record PrintForm(Units units, double metricStep, int inchDenominator, NumberWords words) {
  /** Metric to 1 mm, inches to eighths, metric first. */
  public static final PrintForm DEFAULT = new PrintForm(Units.METRIC_FIRST, 1, 8);

  /** Rulers aren't divided into finer parts of an inch than these. */
  private static final int RULER = 16;

  /** In parts of an inch; nothing that is made or cut is finer. */
  private static final int FINEST = 1 << 20;

  /** In millimetres; shorter is the noise of sums. */
  private static final double SHORTEST = Unit.IN.size() / FINEST;

  /** Checks the steps. */
  public PrintForm {
    Objects.requireNonNull(units);
    Objects.requireNonNull(words);
    if (!(metricStep > 0) || inchDenominator < 1) {
      throw new IllegalArgumentException("steps are above zero");
    }
  }

  /**
   * A form with symbols alone and a decimal point.
   *
   * @param units which units are printed, and which come first
   * @param metricStep the step to which metric lengths are rounded, in millimetres
   * @param inchDenominator the denominator of inch fractions
   */
  public PrintForm(Units units, double metricStep, int inchDenominator) {
    this(units, metricStep, inchDenominator, NumberWords.SYMBOLS);
  }

  /**
   * The same in another language.
   *
   * @param others how its numbers are written
   * @return the form
   */
  public PrintForm with(NumberWords others) {
    return new PrintForm(units, metricStep, inchDenominator, others);
  }

  /**
   * The same in other units.
   *
   * @param others the units
   * @return the form
   */
  public PrintForm with(Units others) {
    return new PrintForm(others, metricStep, inchDenominator, words);
  }

  /**
   * Prints a quantity that stands in no text of the author's. A length that would vanish in
   * rounding is printed to a finer step: nobody can be asked to state one. Rulers end at a
   * sixteenth of an inch, so that what is shorter is left to millimetres where they are printed.
   *
   * @param quantity the quantity
   * @return its text
   */
  public String print(Value.Quantity quantity) {
    PrintForm form =
        quantity.dimension() == Dimension.LENGTH ? showing(Math.abs(quantity.amount())) : this;
    return Printer.ofComputed(form).print(quantity);
  }

  private PrintForm showing(double millimetres) {
    if (millimetres < SHORTEST) {
      return this;
    }
    double step = metricStep;
    while (Steps.nearestCount(millimetres, step) == 0) {
      step /= 10;
    }
    int denominator = inchDenominator;
    while (denominator < FINEST && Steps.nearestCount(millimetres, inches(denominator)) == 0) {
      denominator *= 2;
    }
    boolean both = units == Units.METRIC_FIRST || units == Units.INCHES_FIRST;
    boolean tooShort = denominator > inchDenominator && denominator > RULER;
    return new PrintForm(both && tooShort ? Units.METRIC : units, step, denominator, words);
  }

  private static double inches(int denominator) {
    return Unit.IN.size() / denominator;
  }

  /** Which units are printed. */
  public enum Units {
    /** Metric alone. */
    METRIC,
    /** Inches alone. */
    INCHES,
    /** Metric, then inches in brackets. */
    METRIC_FIRST,
    /** Inches, then metric in brackets. */
    INCHES_FIRST;

    /**
     * Whether metric comes first or alone.
     *
     * @return false when inches do
     */
    public boolean metricLeads() {
      return this == METRIC || this == METRIC_FIRST;
    }
  }
}
