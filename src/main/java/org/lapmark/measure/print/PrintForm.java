package org.lapmark.measure.print;

import java.util.Objects;
import java.util.Optional;
import org.lapmark.measure.Rounding;
import org.lapmark.measure.Value;

/**
 * How values are printed in one document.
 *
 * @param units which units are printed, and which come first
 * @param metricStep the step to which metric lengths are rounded, in millimetres
 * @param inchDenominator the denominator of inch fractions: 8 means eighths
 * @param words how numbers are written in the document's language
 * @param finest what the uses of single quantities ask for
 */
public record PrintForm(
    Units units, double metricStep, int inchDenominator, NumberWords words, FinestSteps finest) {
  /** Metric to 1 mm, inches to eighths, metric first. */
  public static final PrintForm DEFAULT = new PrintForm(Units.METRIC_FIRST, 1, 8);

  /** The parts of an inch on rulers and tapes at home; none has finer ones. */
  public static final int RULER = 16;

  /** In millimetres: what differs by less is alike for anybody with a ruler. */
  private static final double ALIKE = 1;

  /** Of short lengths it is this share of them, by which no step may move a length either. */
  private static final double SHARE = 0.06;

  /** In millimetres; depths are told no finer. */
  private static final double FINEST_DEPTH = 0.05;

  /** Checks the steps. */
  public PrintForm {
    Objects.requireNonNull(units);
    Objects.requireNonNull(words);
    Objects.requireNonNull(finest);
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
    this(units, metricStep, inchDenominator, NumberWords.SYMBOLS, FinestSteps.NONE);
  }

  /**
   * The same in another language.
   *
   * @param others how its numbers are written
   * @return the form
   */
  public PrintForm with(NumberWords others) {
    return new PrintForm(units, metricStep, inchDenominator, others, finest);
  }

  /**
   * The same in other units.
   *
   * @param others the units
   * @return the form
   */
  public PrintForm with(Units others) {
    return new PrintForm(others, metricStep, inchDenominator, words, finest);
  }

  /**
   * The same with steps that single quantities ask for.
   *
   * @param others the steps
   * @return the form
   */
  public PrintForm with(FinestSteps others) {
    return new PrintForm(units, metricStep, inchDenominator, words, others);
  }

  /**
   * The same for lengths that are ruled or measured with a ruler in the hand.
   *
   * @return the form, with sixteenths or what is finer
   */
  public PrintForm ruled() {
    return inches(RULER);
  }

  /**
   * The same with inches in parts no coarser than some.
   *
   * @param denominator the parts: 16 means sixteenths
   * @return the form
   */
  public PrintForm inches(int denominator) {
    return new PrintForm(units, metricStep, Math.max(denominator, inchDenominator), words, finest);
  }

  /**
   * The same with metric steps no coarser than one.
   *
   * @param step the step in millimetres
   * @return the form
   */
  public PrintForm metric(double step) {
    return new PrintForm(units, Math.min(step, metricStep), inchDenominator, words, finest);
  }

  /**
   * Prints a quantity that stands in no text of the author's.
   *
   * @param quantity the quantity
   * @return its text
   */
  public String print(Value.Quantity quantity) {
    return rounding(Rounding.NEAREST).print(quantity);
  }

  /**
   * Prints a length that is needed, never less than it is. One that is printed elsewhere, too, is
   * printed alike.
   *
   * @param millimetres the length
   * @return its text
   */
  public String printAtLeast(double millimetres) {
    Rounding rounding = finest.has(millimetres) ? Rounding.NEAREST : Rounding.AT_LEAST;
    return rounding(rounding).print(Value.Quantity.length(millimetres));
  }

  /**
   * Prints a length that is not to be exceeded, such as the distance from clip to clip.
   *
   * @param millimetres the length
   * @return its text
   */
  public String printAtMost(double millimetres) {
    return rounding(Rounding.AT_MOST).print(Value.Quantity.length(millimetres));
  }

  /**
   * Prints a length in inches where the document has inches and a ruler has parts for it.
   *
   * @param millimetres the length
   * @return its text, or nothing
   */
  public Optional<String> printInches(double millimetres) {
    return rounding(Rounding.NEAREST)
        .inches(millimetres)
        .map(printed -> with(Units.INCHES).print(Value.Quantity.length(millimetres)));
  }

  /**
   * Whether a maker with a ruler can tell two lengths apart.
   *
   * @param one in millimetres
   * @param other in millimetres
   * @return true if they differ by more than 1 mm, or of short lengths by more than the share by
   *     which no step may move a length
   */
  public static boolean differ(double one, double other) {
    double smaller = Math.min(Math.abs(one), Math.abs(other));
    return Math.abs(one - other) > Math.min(ALIKE, SHARE * smaller) + 1e-9;
  }

  /**
   * Prints how deep to cut into an allowance: never deeper than it is, and in inches only where
   * that is less than the allowance as it is printed.
   *
   * @param depth the depth in millimetres
   * @param allowance the allowance in millimetres
   * @return its text
   */
  public String printDepth(double depth, double allowance) {
    PrintForm form = this;
    while (form.metricStep > FINEST_DEPTH
        && form.rounding(Rounding.AT_MOST).metric(depth)
            >= rounding(Rounding.NEAREST).metric(allowance)) {
      form = form.metric(form.metricStep / 10);
    }
    // An allowance that is printed as less than it is: its seam is where the reader has it.
    double seam = rounding(Rounding.NEAREST).metric(allowance);
    if (form.rounding(Rounding.AT_MOST).metric(depth) >= seam) {
      return form.with(Units.METRIC)
          .rounding(Rounding.AT_MOST)
          .print(Value.Quantity.length(Math.min(depth, seam - form.metricStep)));
    }
    boolean clear =
        form.rounding(Rounding.AT_MOST).inches(depth).orElse(0.0)
            < rounding(Rounding.NEAREST).inches(allowance).orElse(allowance);
    return (clear ? form : form.with(Units.METRIC))
        .rounding(Rounding.AT_MOST)
        .print(Value.Quantity.length(depth));
  }

  private Printer rounding(Rounding rounding) {
    return Printer.ofComputed(this, rounding);
  }

  /**
   * Prints a stock size that stands in no text of the author's.
   *
   * @param size the size
   * @return the two names under which it is sold, or the one in the units wanted
   */
  public String print(Value.NominalPair size) {
    return new Printer(null, Form.DOCUMENT, this).print(size);
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
