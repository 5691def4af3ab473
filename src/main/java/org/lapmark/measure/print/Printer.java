package org.lapmark.measure.print;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.lapmark.finding.FindingException;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Fractions;
import org.lapmark.measure.MeasureCode;
import org.lapmark.measure.Rounding;
import org.lapmark.measure.StepRounding;
import org.lapmark.measure.Unit;
import org.lapmark.measure.Value;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.StockSizes;
import org.lapmark.measure.Value.Truth;

/**
 * Writes one value as readers see it. Each unit is rounded from the exact value, never from another
 * unit's rounding; halves go away from zero.
 *
 * <p>No step moves a length by more than {@value #MOST_MOVED} of it. Where eighths of an inch
 * would, a length is printed in sixteenths; where those would, too, it is left to millimetres,
 * since rulers have no finer parts. Millimetres are printed to tenths, and so on, in the same way.
 */
final class Printer implements Value.Reader<String> {
  private static final char NO_BREAK = '\u00a0';
  private static final String MINUS = "\u2212";

  /** In a formula's own unit: below this, a value is the noise of sums that come to nothing. */
  private static final double NOISE = 1e-9;

  /** More steps than this are no number for a reader. */
  private static final double MOST_STEPS = 1e12;

  private static final double ANGLE_STEP = 0.5;
  private static final double PLAIN_STEP = 0.001;
  private static final double SQUARE_CENTIMETRE = 100;
  private static final double SQUARE_INCH = 25.4 * 25.4;

  private static final double MOST_MOVED = 0.06;

  /** In parts of an inch; nothing that is made or cut is finer. */
  private static final int FINEST = 1 << 20;

  /** In millimetres; shorter is the noise of sums. */
  private static final double SHORTEST = Unit.IN.size() / FINEST;

  /** In parts: what is as near to a whole one as this was stated in it. */
  private static final double WHOLE = 1e-6;

  /** A length stated in place, which is printed to the step in which it is stated. */
  private static final Pattern STATED_FRACTION =
      Pattern.compile("(?:\\d+ )?\\d+/(2|4|8|16|32|64)\\s*in");

  private static final Pattern STATED_DECIMAL = Pattern.compile("\\d+\\.(\\d{1,3})\\s*(mm|cm|m)");

  private final Formula formula;
  private final Form form;
  private final PrintForm document;
  private final Rounding rounding;

  Printer(Formula formula, Form form, PrintForm document) {
    this.formula = formula;
    this.form = form;
    this.document = document;
    this.rounding =
        form.rounding() == Rounding.NEAREST && formula != null
            ? document.finest().rounding(formula)
            : form.rounding();
  }

  /** A printer of what no author has written; what rounds to zero is printed as zero. */
  static Printer ofComputed(PrintForm document, Rounding rounding) {
    return new Printer(null, new Form(Form.Style.DOCUMENT, null, 0, 0, rounding), document);
  }

  String print(Value value) {
    return value.read(this);
  }

  @Override
  public String stock(StockSizes stock) {
    return stock.sizes().stream()
        .map(this::pair)
        .collect(Collectors.joining(document.words().between()));
  }

  @Override
  public String truth(Truth truth) {
    onlyDocument(truth);
    return truth.holds() ? document.words().yes() : document.words().no();
  }

  @Override
  public String choice(Value.Choice choice) {
    onlyDocument(choice);
    return choice.label();
  }

  private void onlyDocument(Value value) {
    if (form.style() != Form.Style.DOCUMENT) {
      throw unlike(value);
    }
  }

  @Override
  public String quantity(Quantity quantity) {
    double amount = quantity.amount();
    Dimension dimension = quantity.dimension();
    // Nothing of nobody knows what is a length where it is asked for in a unit.
    boolean asLength = dimension == Dimension.ZERO && form.style() == Form.Style.UNIT;
    switch (asLength ? Dimension.LENGTH : dimension) {
      case LENGTH:
        return length(amount, amount);
      case AREA:
        if (form.style() == Form.Style.UNIT || form.step() != 0 || form.denominator() != 0) {
          throw unlike(quantity);
        }
        return arranged(
            metricWanted() ? decimal(amount, SQUARE_CENTIMETRE, SQUARE_CENTIMETRE) : null,
            document.words().squareCentimetres(),
            inchesWanted() ? decimal(amount, SQUARE_INCH, SQUARE_INCH) : null,
            document.words().squareInches());
      case ANGLE:
        onlyNumber(quantity);
        String degrees = decimal(amount, ANGLE_STEP, 1);
        return form.style() == Form.Style.NUMBER ? degrees : degrees + '°';
      default:
        if (form.style() == Form.Style.NUMBER && form.denominator() != 0) {
          return fraction(amount, 1, form.denominator());
        }
        onlyNumber(quantity);
        return decimal(amount, PLAIN_STEP, 1);
    }
  }

  private void onlyNumber(Quantity quantity) {
    boolean wanted = form.style() == Form.Style.DOCUMENT || form.style() == Form.Style.NUMBER;
    if (!wanted || form.denominator() != 0) {
      throw unlike(quantity);
    }
  }

  /** A length, or the two that a pair names; both in millimetres. */
  private String length(double metric, double inches) {
    if (form.style() == Form.Style.NUMBER && form.denominator() != 0) {
      throw formula.fault(MeasureCode.PLACEHOLDER_UNLIKE_FORM, "found", "length");
    }
    if (form.style() == Form.Style.UNIT) {
      Unit unit = form.unit();
      if (unit.metric()) {
        return metric(metric, unit) + NO_BREAK + symbol(unit);
      }
      return parts(inches, unit)
          .map(parts -> fraction(inches, unit, parts) + NO_BREAK + symbol(unit))
          .orElseGet(() -> millimetres(metric));
    }
    if (!inchesWanted()) {
      return form.style() == Form.Style.NUMBER ? metric(metric, Unit.MM) : millimetres(metric);
    }
    Optional<Integer> parts = parts(inches, Unit.IN);
    if (parts.isEmpty()) {
      return millimetres(metric);
    }
    return arranged(
        metricWanted() ? metric(metric, Unit.MM) : null,
        symbol(Unit.MM),
        fraction(inches, Unit.IN, parts.get()),
        symbol(Unit.IN));
  }

  private String millimetres(double length) {
    return metric(length, Unit.MM) + NO_BREAK + symbol(Unit.MM);
  }

  @Override
  public String pair(NominalPair pair) {
    boolean stated = form.style() != Form.Style.UNIT && form.step() == 0 && form.denominator() == 0;
    if (!stated) {
      return length(pair.metric(), pair.inches());
    }
    return arranged(
        figures(pair.metricText()),
        unit(pair.metricText()),
        figures(pair.inchText()),
        unit(pair.inchText()));
  }

  private boolean metricWanted() {
    return switch (form.style()) {
      case METRIC, BOTH -> true;
      case INCHES -> false;
      case NUMBER -> document.units().metricLeads();
      default -> document.units() != PrintForm.Units.INCHES;
    };
  }

  private boolean inchesWanted() {
    return switch (form.style()) {
      case INCHES, BOTH -> true;
      case METRIC -> false;
      case NUMBER -> !document.units().metricLeads();
      default -> document.units() != PrintForm.Units.METRIC;
    };
  }

  /** One number or both, in the document's order. */
  private String arranged(String metric, String metricUnit, String inches, String inchUnit) {
    if (form.style() == Form.Style.NUMBER) {
      return metricWanted() ? metric : inches;
    }
    String metricText = metric + NO_BREAK + metricUnit;
    String inchText = inches + NO_BREAK + inchUnit;
    if (!inchesWanted()) {
      return metricText;
    }
    if (!metricWanted()) {
      return inchText;
    }
    return document.units().metricLeads()
        ? metricText + " (" + inchText + ")"
        : inchText + " (" + metricText + ")";
  }

  private String symbol(Unit unit) {
    return document.words().symbols().get(unit);
  }

  private String metric(double millimetres, Unit unit) {
    return decimal(millimetres, step(millimetres), unit.size());
  }

  /** The step of a metric length. */
  private double step(double millimetres) {
    double step = form.step() != 0 ? form.step() : document.metricStep();
    step = Math.min(step, document.finest().step(millimetres));
    if (form.step() == 0) {
      step = Math.min(step, statedStep());
    }
    while (Math.abs(millimetres) >= SHORTEST && moves(millimetres, step)) {
      step = Math.rint(step / 10 * 1e12) / 1e12;
    }
    return step;
  }

  private double statedStep() {
    Matcher stated = formula == null ? null : STATED_DECIMAL.matcher(formula.text().text());
    if (stated == null || !stated.matches()) {
      return Double.MAX_VALUE;
    }
    double unit = Unit.of(stated.group(2)).orElseThrow().size();
    return unit / StrictMath.pow(10, stated.group(1).length());
  }

  /** Whether a step moves a length by more than may be. */
  private boolean moves(double length, double step) {
    double rounded = StepRounding.count(length, step, rounding) * step;
    return Math.abs(rounded - length) > MOST_MOVED * Math.abs(length) + NOISE;
  }

  /**
   * The parts of an inch, or of another such unit, in which a length is printed; nothing where a
   * ruler has none that do.
   */
  private Optional<Integer> parts(double length, Unit unit) {
    int parts = form.denominator() != 0 ? form.denominator() : document.inchDenominator();
    if (form.style() == Form.Style.DOCUMENT
        && form.denominator() == 0
        && document.finest().isMetricAlone(length)) {
      return Optional.empty();
    }
    if (unit == Unit.IN) {
      parts = Math.max(parts, document.finest().denominator(length));
      if (form.denominator() == 0) {
        parts = Math.max(parts, statedParts(length));
      }
    }
    // A number without its unit can't be left to another one.
    int finest = form.style() == Form.Style.NUMBER ? FINEST : Math.max(PrintForm.RULER, parts);
    while (Math.abs(length) >= SHORTEST && moves(length, unit.size() / parts)) {
      parts *= 2;
      if (parts > finest) {
        return Optional.empty();
      }
    }
    return Optional.of(parts);
  }

  /** The parts in which a length was stated, 1 where it wasn't in any that matter. */
  private int statedParts(double length) {
    Matcher stated = formula == null ? null : STATED_FRACTION.matcher(formula.text().text());
    if (stated != null && stated.matches()) {
      return Integer.parseInt(stated.group(1));
    }
    double sixteenths = length / (Unit.IN.size() / PrintForm.RULER);
    return Math.abs(sixteenths - Math.rint(sixteenths)) < WHOLE ? PrintForm.RULER : 1;
  }

  /** A length as it comes out in inches, in millimetres; nothing where it is printed without. */
  Optional<Double> inches(double length) {
    return inchesWanted()
        ? parts(length, Unit.IN)
            .map(
                parts -> {
                  double step = Unit.IN.size() / parts;
                  return StepRounding.count(length, step, rounding) * step;
                })
        : Optional.empty();
  }

  /** A length as it comes out in metric, in millimetres. */
  double metric(double length) {
    double step = step(length);
    return StepRounding.count(length, step, rounding) * step;
  }

  /**
   * A number rounded to a step, then counted in units; both in the amount's own unit. The product
   * of a whole number and a decimal is exact.
   */
  private String decimal(double amount, double step, double unit) {
    double count = steps(amount, step);
    BigDecimal rounded =
        step == unit
            ? new BigDecimal(count)
            : new BigDecimal(count)
                .multiply(BigDecimal.valueOf(step))
                .divide(BigDecimal.valueOf(unit));
    String figures = rounded.abs().stripTrailingZeros().toPlainString();
    return sign(count) + figures.replace(".", document.words().decimalMark());
  }

  private String fraction(double amount, Unit unit, int denominator) {
    return fraction(amount, unit.size(), denominator);
  }

  private String fraction(double amount, double unit, int denominator) {
    double count = steps(amount, unit / denominator);
    // Far beyond any article's length it stays at the greatest number there is.
    long parts = (long) Math.abs(count);
    long whole = parts / denominator;
    long rest = parts % denominator;
    if (rest == 0) {
      return sign(count) + whole;
    }
    long common = BigInteger.valueOf(rest).gcd(BigInteger.valueOf(denominator)).longValue();
    return sign(count)
        + Fractions.text(
            whole == 0 ? "" : Long.toString(whole), rest / common, denominator / common);
  }

  private double steps(double amount, double step) {
    if (Math.abs(amount) < NOISE) {
      return 0;
    }
    double count = StepRounding.count(amount, step, rounding);
    if (formula == null) {
      return count;
    }
    if (count == 0) {
      throw formula.fault(
          MeasureCode.PLACEHOLDER_ROUNDS_TO_ZERO, "expression", formula.text().text());
    }
    if (!(Math.abs(count) <= MOST_STEPS)) {
      throw formula.fault(MeasureCode.FORMULA_TOO_LARGE);
    }
    return count;
  }

  private static String sign(double count) {
    return count < 0 ? MINUS : "";
  }

  /** The figures of a stated stock size, typeset like computed ones. */
  private String figures(String stated) {
    String figures = stated.substring(0, stated.lastIndexOf(' '));
    int slash = figures.indexOf('/');
    if (slash < 0) {
      return figures.replace(" ", "").replace(".", document.words().decimalMark());
    }
    int space = figures.indexOf(' ');
    return Fractions.text(
        space < 0 ? "" : figures.substring(0, space),
        Long.parseLong(figures.substring(space + 1, slash)),
        Long.parseLong(figures.substring(slash + 1)));
  }

  private String unit(String stated) {
    String symbol = stated.substring(stated.lastIndexOf(' ') + 1);
    return Unit.of(symbol).map(this::symbol).orElse(symbol);
  }

  private FindingException unlike(Value value) {
    return formula.fault(MeasureCode.PLACEHOLDER_UNLIKE_FORM, "found", value.kind());
  }
}
