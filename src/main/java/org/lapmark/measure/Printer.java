package org.lapmark.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.FindingException;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.StockSizes;
import org.lapmark.measure.Value.Truth;

/**
 * Writes one value as readers see it. Each unit is rounded from the exact value, never from another
 * unit's rounding; halves go away from zero.
 */
final class Printer {
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

  private final Formula formula;
  private final Form form;
  private final PrintForm document;

  Printer(Formula formula, Form form, PrintForm document) {
    this.formula = formula;
    this.form = form;
    this.document = document;
  }

  /** A printer of what no author has written; what rounds to zero is printed as zero. */
  static Printer ofComputed(PrintForm document) {
    return new Printer(null, Form.DOCUMENT, document);
  }

  String print(Value value) {
    if (value instanceof Quantity quantity) {
      return quantity(quantity);
    } else if (value instanceof NominalPair pair) {
      return pair(pair);
    } else if (value instanceof StockSizes stock) {
      List<String> sizes = new ArrayList<>();
      stock.sizes().forEach(size -> sizes.add(pair(size)));
      return String.join(document.words().between(), sizes);
    }
    if (form.style() != Form.Style.DOCUMENT) {
      throw unlike(value);
    }
    if (value instanceof Value.Choice choice) {
      return choice.label();
    }
    return ((Truth) value).holds() ? document.words().yes() : document.words().no();
  }

  private String quantity(Quantity quantity) {
    double amount = quantity.amount();
    switch (quantity.dimension()) {
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
          return fraction(amount, 1);
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
      String number = unit.metric() ? metric(metric, unit) : fraction(inches, unit.size());
      return number + NO_BREAK + symbol(unit);
    }
    return arranged(
        metricWanted() ? metric(metric, Unit.MM) : null,
        symbol(Unit.MM),
        inchesWanted() ? fraction(inches, Unit.IN.size()) : null,
        symbol(Unit.IN));
  }

  private String pair(NominalPair pair) {
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
    double step = form.step() != 0 ? form.step() : document.metricStep();
    return decimal(millimetres, step, unit.size());
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

  private String fraction(double amount, double unit) {
    int denominator = form.denominator() != 0 ? form.denominator() : document.inchDenominator();
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
    double count = Steps.nearestCount(amount, step);
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
    return formula.fault(MeasureCode.PLACEHOLDER_UNLIKE_FORM, "found", Evaluator.kind(value));
  }
}
