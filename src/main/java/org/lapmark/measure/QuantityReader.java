package org.lapmark.measure;

import java.util.Arrays;
import java.util.Optional;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.measure.Token.Kind;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;

/** Reads numbers, quantities and pairs of stock sizes. */
final class QuantityReader {
  /** Two names of one stock size are never further apart than this share of the smaller. */
  private static final double PAIR_SHARE = 0.1;

  /** In millimetres: by this, two names of a short one may always be apart. */
  private static final double PAIR_APART = 1;

  private static final double PAIR_NOISE = 1e-9;

  /** No ruler has finer fractions than four figures can say. */
  private static final int FRACTION_FIGURES = 4;

  private final Tokens tokens;

  QuantityReader(Tokens tokens) {
    this.tokens = tokens;
  }

  /** A number, a quantity, or the two names of a stock size; a number comes next. */
  Node read() {
    Literal metricOrNot = quantity();
    if (metricOrNot.unit == null || !tokens.next().is("(")) {
      return metricOrNot.node();
    }
    return pair(metricOrNot);
  }

  private Node pair(Literal first) {
    Token opening = tokens.open();
    boolean number = tokens.next().kind() == Kind.NUMBER || tokens.next().kind() == Kind.FRACTION;
    Literal second = number ? quantity() : null;
    boolean right =
        second != null
            && second.unit != null
            && first.unit.dimension() == Dimension.LENGTH
            && second.unit.dimension() == Dimension.LENGTH
            && first.unit.metric() != second.unit.metric();
    if (!right) {
      int end = second == null ? opening.end() : second.end;
      throw tokens.fault(
          MeasureCode.FORMULA_PAIR, opening.start(), Math.max(end, tokens.next().end()));
    }
    Token closing = tokens.close(opening, ")");
    Literal metric = first.unit.metric() ? first : second;
    Literal inches = first.unit.metric() ? second : first;
    double apart = Math.abs(metric.amount() - inches.amount());
    double may = Math.max(PAIR_APART, PAIR_SHARE * Math.min(metric.amount(), inches.amount()));
    if (!(apart <= may + PAIR_NOISE)) {
      throw tokens.fault(
          MeasureCode.FORMULA_PAIR_FAR_APART,
          first.start,
          closing.end(),
          "metric",
          metric.written(),
          "inches",
          inches.written());
    }
    return new Nodes.Constant(
        new NominalPair(metric.amount(), metric.written(), inches.amount(), inches.written()),
        first.start,
        closing.end());
  }

  /** A number as written, with its unit if it has one. */
  private final class Literal {
    private final double number;
    private final int start;
    private final int numberEnd;
    private final Unit unit;
    private final int end;

    Literal(double number, int start, int numberEnd, Unit unit, int end) {
      this.number = number;
      this.start = start;
      this.numberEnd = numberEnd;
      this.unit = unit;
      this.end = end;
    }

    double amount() {
      return unit == null ? number : number * unit.size();
    }

    String written() {
      String figures = tokens.written(start, numberEnd).replaceAll("\\s*/\\s*", "/");
      return figures.replaceAll("[\\s\u00a0\u202f]+", " ") + ' ' + unit.symbol();
    }

    Node node() {
      Dimension dimension = unit == null ? Dimension.PLAIN : unit.dimension();
      if (unit == null && number == 0) {
        dimension = Dimension.ZERO;
      }
      if (!Double.isFinite(amount())) {
        throw tokens.fault(MeasureCode.FORMULA_TOO_LARGE, start, end);
      }
      return new Nodes.Constant(new Quantity(amount(), dimension), start, end);
    }
  }

  private Literal quantity() {
    Token first = tokens.take();
    double number;
    if (first.kind() == Kind.FRACTION) {
      number = Fractions.value(first.text().charAt(0));
    } else {
      number = Double.parseDouble(first.text());
      if (tokens.next().kind() == Kind.FRACTION) {
        number += Fractions.value(tokens.next().text().charAt(0));
        wholeBefore(first);
        tokens.take();
      } else if (tokens.next().kind() == Kind.NUMBER) {
        // Two numbers side by side can only be a whole number and a fraction.
        if (!tokens.peek(1).is("/") || tokens.peek(2).kind() != Kind.NUMBER) {
          throw tokens.fault(MeasureCode.FORMULA_FRACTION, first.start(), tokens.next().end());
        }
        wholeBefore(first);
        number += fraction(true);
      } else if (tokens.next().is("/")
          && tokens.peek(1).kind() == Kind.NUMBER
          && first.whole()
          && tokens.peek(1).whole()
          && isUnit(tokens.peek(2))) {
        tokens.back();
        number = fraction(false);
      }
    }
    int numberEnd = tokens.lastEnd();
    Unit unit = unit();
    return new Literal(number, first.start(), numberEnd, unit, tokens.lastEnd());
  }

  private void wholeBefore(Token whole) {
    if (!whole.whole()) {
      throw tokens.fault(MeasureCode.FORMULA_FRACTION, whole.start(), tokens.next().end());
    }
  }

  private double fraction(boolean afterWhole) {
    Token numerator = tokens.next();
    Token denominator = tokens.peek(2);
    double above = Double.parseDouble(numerator.text());
    double below = Double.parseDouble(denominator.text());
    boolean tooLong =
        numerator.text().length() > FRACTION_FIGURES
            || denominator.text().length() > FRACTION_FIGURES;
    if (tooLong
        || !numerator.whole()
        || !denominator.whole()
        || below == 0
        || afterWhole && above >= below) {
      throw tokens.fault(MeasureCode.FORMULA_FRACTION, numerator.start(), denominator.end());
    }
    tokens.take();
    tokens.take();
    tokens.take();
    return above / below;
  }

  private static boolean isUnit(Token token) {
    return token.is("°") || token.kind() == Kind.NAME && Unit.of(token.text()).isPresent();
  }

  private Unit unit() {
    Token word = tokens.next();
    if (word.is("°")) {
      tokens.take();
      return Unit.DEG;
    }
    if (word.kind() != Kind.NAME || Names.isWord(word.text())) {
      return null;
    }
    Optional<Unit> unit = Unit.of(word.text());
    if (unit.isEmpty()) {
      throw tokens.fault(
          MeasureCode.FORMULA_UNKNOWN_UNIT,
          word.start(),
          word.end(),
          "unit",
          word.text(),
          "nearest",
          nearestUnit(word.text()),
          "known",
          Known.listed(Arrays.stream(Unit.values()).map(Unit::symbol).toList()));
    }
    tokens.take();
    return unit.get();
  }

  /** The unit that a word is meant as, or nothing. */
  static String nearestUnit(String word) {
    return switch (word) {
      case "inch", "inches", "ins" -> "in";
      case "foot", "feet" -> "ft";
      case "yard", "yards", "yds" -> "yd";
      case "metre", "metres", "meter", "meters" -> "m";
      case "degree", "degrees" -> "deg";
      case "millimetres", "millimeters", "millimetre", "millimeter" -> "mm";
      case "centimetres", "centimeters", "centimetre", "centimeter" -> "cm";
      default -> NearestWord.of(word, Unit.symbols()).orElse("");
    };
  }
}
