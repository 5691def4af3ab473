package org.lapmark.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Token.Kind;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;

/** Reads a formula by precedence climbing; stops at the first thing it can't understand. */
final class Parser {
  /** Two names of one stock size are never further apart than this share of the smaller. */
  private static final double PAIR_SHARE = 0.1;

  /** In millimetres: by this, two names of a short one may always be apart. */
  private static final double PAIR_APART = 1;

  private static final double PAIR_NOISE = 1e-9;

  /** No ruler has finer fractions than four figures can say. */
  private static final int FRACTION_FIGURES = 4;

  private final SourceText source;
  private final List<Token> tokens;
  private int at;
  private int depth;
  private int brackets;

  private Parser(SourceText source) {
    this.source = source;
    this.tokens = Lexer.tokens(source);
  }

  static Node parse(SourceText source) {
    int length = source.text().length();
    if (length > Formula.MAX_LENGTH) {
      throw new FindingException(
          Finding.of(
              MeasureCode.FORMULA_TOO_LONG,
              source.position(Formula.MAX_LENGTH, length),
              "length",
              length,
              "limit",
              Formula.MAX_LENGTH));
    }
    Parser parser = new Parser(source);
    if (parser.token().kind() == Kind.END) {
      throw new FindingException(Finding.of(MeasureCode.FORMULA_EMPTY, source.position()));
    }
    Node whole = parser.expression(0);
    if (parser.token().kind() != Kind.END) {
      throw parser.outOfPlace();
    }
    return whole;
  }

  private Node expression(int binding) {
    enter();
    Node left = operand(binding);
    while (true) {
      Token sign = token();
      Operator operator = Operator.of(sign);
      if (operator == null || operator.binding() < binding) {
        break;
      }
      at++;
      if (operator.comparison()) {
        checkQuoted(left);
      }
      // A power groups to the right, and its exponent may bear a sign; all else groups to the left.
      Node right =
          expression(
              operator == Operator.POWER ? Operator.NEGATION_BINDING : operator.binding() + 1);
      left = new Node.Binary(operator, left, right, sign.start(), sign.end());
    }
    depth--;
    return left;
  }

  /** Reports the name of a size or a choice that reads as a number and a unit, such as 2T. */
  private void checkQuoted(Node left) {
    Token number = token();
    Token word = peek(1);
    boolean unknown =
        number.kind() == Kind.NUMBER
            && word.kind() == Kind.NAME
            && !Names.isWord(word.text())
            && Unit.of(word.text()).isEmpty();
    if (!unknown || !(left instanceof Node.Name name)) {
      return;
    }
    boolean size = source.text().substring(name.start(), name.end()).equals("size");
    if (size || nearestUnit(word.text()).isEmpty()) {
      String written = source.text().substring(number.start(), word.end());
      throw fault(
          MeasureCode.FORMULA_CHOICE_UNQUOTED,
          number.start(),
          word.end(),
          "written",
          written,
          "name",
          source.text().substring(name.start(), name.end()));
    }
  }

  private Node operand(int binding) {
    Token first = token();
    if (first.is("-")) {
      at++;
      return new Node.Negation(expression(Operator.NEGATION_BINDING), first.start());
    }
    if (first.is("not")) {
      if (binding > Operator.NOT_BINDING) {
        throw outOfPlace();
      }
      at++;
      return new Node.Not(expression(Operator.NOT_BINDING), first.start());
    }
    return primary();
  }

  private Node primary() {
    Token first = token();
    switch (first.kind()) {
      case NUMBER, FRACTION:
        return literal();
      case NAME:
        if (peek(1).is("(")) {
          return call();
        }
        if (Names.reserved().contains(first.text()) && !first.text().equals("pi")) {
          throw outOfPlace();
        }
        at++;
        if (first.text().equals("pi")) {
          return new Node.Constant(Quantity.plain(Math.PI), first.start(), first.end());
        }
        return new Node.Name(first.start(), first.end());
      case WORD:
        at++;
        return new Node.Word(first.start(), first.end());
      case END:
        throw fault(MeasureCode.FORMULA_UNFINISHED, lastEnd(), lastEnd() + 1);
      default:
        if (first.is("(")) {
          return bracketed();
        }
        if (first.is("[")) {
          return stock();
        }
        throw outOfPlace();
    }
  }

  private Node bracketed() {
    Token opening = open();
    Node inner = expression(0);
    Token closing = close(opening, ")");
    return new Node.Bracketed(inner, opening.start(), closing.end());
  }

  private Node stock() {
    Token opening = open();
    List<Node> sizes = new ArrayList<>();
    do {
      if (sizes.size() == Formula.MAX_ARGUMENTS) {
        throw fault(
            MeasureCode.FORMULA_ARGUMENT_COUNT,
            token().start(),
            token().end(),
            "function",
            "[ ]",
            "fewest",
            1,
            "most",
            Formula.MAX_ARGUMENTS,
            "range",
            "several");
      }
      sizes.add(expression(0));
    } while (skip(","));
    Token closing = close(opening, "]");
    return new Node.Stock(List.copyOf(sizes), opening.start(), closing.end());
  }

  private Node call() {
    Token name = token();
    int references = Function.references(name.text());
    if (references > 0) {
      return geometry(references);
    }
    Function function = Function.of(name.text());
    if (function == null) {
      if (Names.isWord(name.text()) && !name.text().equals("pi")) {
        throw outOfPlace();
      }
      throw fault(
          MeasureCode.FORMULA_UNKNOWN_FUNCTION,
          name.start(),
          name.end(),
          "function",
          name.text(),
          "nearest",
          Nearest.of(name.text(), Function.names()).orElse(""),
          "hasNearest",
          Nearest.of(name.text(), Function.names()).isPresent() ? "yes" : "no");
    }
    at++;
    Token opening = open();
    List<Node> arguments = new ArrayList<>();
    if (!token().is(")")) {
      do {
        arguments.add(expression(0));
        if (arguments.size() > function.most()) {
          break;
        }
      } while (skip(","));
    }
    int end = arguments.size() > function.most() ? tooManyEnd() : close(opening, ")").end();
    if (arguments.size() < function.fewest() || arguments.size() > function.most()) {
      throw argumentCount(name, end, function.fewest(), function.most());
    }
    return new Node.Call(function, List.copyOf(arguments), name.start(), end);
  }

  private Node geometry(int needed) {
    Token name = token();
    at++;
    Token opening = open();
    List<Node.Name> references = new ArrayList<>();
    if (!token().is(")")) {
      do {
        Token reference = token();
        if (reference.kind() != Kind.NAME || Names.reserved().contains(reference.text())) {
          int end = Math.max(reference.end(), reference.start() + 1);
          throw fault(
              MeasureCode.FORMULA_REFERENCE, reference.start(), end, "function", name.text());
        }
        at++;
        if (!token().is(",") && !token().is(")") && token().kind() != Kind.END) {
          throw fault(
              MeasureCode.FORMULA_REFERENCE,
              reference.start(),
              token().end(),
              "function",
              name.text());
        }
        references.add(new Node.Name(reference.start(), reference.end()));
      } while (references.size() <= needed && skip(","));
    }
    int end = references.size() > needed ? tooManyEnd() : close(opening, ")").end();
    if (references.size() != needed) {
      throw argumentCount(name, end, needed, needed);
    }
    return new Node.Geometry(name.end(), List.copyOf(references), name.start(), end);
  }

  private int tooManyEnd() {
    return token().is(")") ? token().end() : lastEnd();
  }

  private FindingException argumentCount(Token name, int end, int fewest, int most) {
    return fault(
        MeasureCode.FORMULA_ARGUMENT_COUNT,
        name.start(),
        end,
        "function",
        name.text(),
        "fewest",
        fewest,
        "most",
        most,
        "range",
        fewest == most ? "one" : "several");
  }

  private Node literal() {
    Literal metricOrNot = quantity();
    if (metricOrNot.unit == null || !token().is("(")) {
      return metricOrNot.node();
    }
    return pair(metricOrNot);
  }

  private Node pair(Literal first) {
    Token opening = open();
    boolean number = token().kind() == Kind.NUMBER || token().kind() == Kind.FRACTION;
    Literal second = number ? quantity() : null;
    boolean right =
        second != null
            && second.unit != null
            && first.unit.dimension() == Dimension.LENGTH
            && second.unit.dimension() == Dimension.LENGTH
            && first.unit.metric() != second.unit.metric();
    if (!right) {
      int end = second == null ? opening.end() : second.end;
      throw fault(MeasureCode.FORMULA_PAIR, opening.start(), Math.max(end, token().end()));
    }
    Token closing = close(opening, ")");
    Literal metric = first.unit.metric() ? first : second;
    Literal inches = first.unit.metric() ? second : first;
    double apart = Math.abs(metric.amount() - inches.amount());
    double may = Math.max(PAIR_APART, PAIR_SHARE * Math.min(metric.amount(), inches.amount()));
    if (!(apart <= may + PAIR_NOISE)) {
      throw fault(
          MeasureCode.FORMULA_PAIR_FAR_APART,
          first.start,
          closing.end(),
          "metric",
          metric.written(),
          "inches",
          inches.written());
    }
    return new Node.Constant(
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
      String figures = source.text().substring(start, numberEnd).replaceAll("\\s*/\\s*", "/");
      return figures.replaceAll("[\\s\u00a0\u202f]+", " ") + ' ' + unit.symbol();
    }

    Node node() {
      Dimension dimension = unit == null ? Dimension.PLAIN : unit.dimension();
      if (!Double.isFinite(amount())) {
        throw fault(MeasureCode.FORMULA_TOO_LARGE, start, end);
      }
      return new Node.Constant(new Quantity(amount(), dimension), start, end);
    }
  }

  private Literal quantity() {
    Token first = token();
    at++;
    double number;
    if (first.kind() == Kind.FRACTION) {
      number = Fractions.value(first.text().charAt(0));
    } else {
      number = Double.parseDouble(first.text());
      if (token().kind() == Kind.FRACTION) {
        number += Fractions.value(token().text().charAt(0));
        wholeBefore(first);
        at++;
      } else if (token().kind() == Kind.NUMBER) {
        // Two numbers side by side can only be a whole number and a fraction.
        if (!peek(1).is("/") || peek(2).kind() != Kind.NUMBER) {
          throw fault(MeasureCode.FORMULA_FRACTION, first.start(), token().end());
        }
        wholeBefore(first);
        number += fraction(true);
      } else if (token().is("/")
          && peek(1).kind() == Kind.NUMBER
          && first.whole()
          && peek(1).whole()
          && isUnit(peek(2))) {
        at--;
        number = fraction(false);
      }
    }
    int numberEnd = lastEnd();
    Unit unit = unit();
    return new Literal(number, first.start(), numberEnd, unit, lastEnd());
  }

  private void wholeBefore(Token whole) {
    if (!whole.whole()) {
      throw fault(MeasureCode.FORMULA_FRACTION, whole.start(), token().end());
    }
  }

  private double fraction(boolean afterWhole) {
    Token numerator = token();
    Token denominator = peek(2);
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
      throw fault(MeasureCode.FORMULA_FRACTION, numerator.start(), denominator.end());
    }
    at += 3;
    return above / below;
  }

  private static boolean isUnit(Token token) {
    return token.is("°") || token.kind() == Kind.NAME && Unit.of(token.text()).isPresent();
  }

  private Unit unit() {
    Token word = token();
    if (word.is("°")) {
      at++;
      return Unit.DEG;
    }
    if (word.kind() != Kind.NAME || Names.isWord(word.text())) {
      return null;
    }
    Optional<Unit> unit = Unit.of(word.text());
    if (unit.isEmpty()) {
      throw fault(
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
    at++;
    return unit.get();
  }

  private static String nearestUnit(String word) {
    return switch (word) {
      case "inch", "inches", "ins" -> "in";
      case "foot", "feet" -> "ft";
      case "yard", "yards", "yds" -> "yd";
      case "metre", "metres", "meter", "meters" -> "m";
      case "degree", "degrees" -> "deg";
      case "millimetres", "millimeters", "millimetre", "millimeter" -> "mm";
      case "centimetres", "centimeters", "centimetre", "centimeter" -> "cm";
      default -> Nearest.of(word, Unit.symbols()).orElse("");
    };
  }

  private Token open() {
    brackets++;
    return tokens.get(at++);
  }

  private Token close(Token opening, String closing) {
    Token found = token();
    if (!found.is(closing)) {
      if (found.kind() == Kind.END || found.is(")") || found.is("]")) {
        throw fault(
            MeasureCode.FORMULA_BRACKET_UNCLOSED,
            opening.start(),
            opening.end(),
            "opening",
            opening.text(),
            "closing",
            closing);
      }
      throw outOfPlace();
    }
    at++;
    brackets--;
    return found;
  }

  private void enter() {
    depth++;
    if (depth > Formula.MAX_DEPTH) {
      throw fault(
          MeasureCode.FORMULA_TOO_DEEP, token().start(), token().end(), "limit", Formula.MAX_DEPTH);
    }
  }

  private FindingException outOfPlace() {
    Token found = token();
    if (found.is(",") && brackets == 0 && touchesDigits()) {
      return fault(MeasureCode.FORMULA_DECIMAL_COMMA, found.start(), found.end());
    }
    if (brackets == 0 && (found.is(")") || found.is("]"))) {
      return fault(
          MeasureCode.FORMULA_BRACKET_UNOPENED, found.start(), found.end(), "found", found.text());
    }
    return fault(
        MeasureCode.FORMULA_OUT_OF_PLACE, found.start(), found.end(), "found", found.text());
  }

  private boolean touchesDigits() {
    Token comma = token();
    return at > 0
        && tokens.get(at - 1).kind() == Kind.NUMBER
        && tokens.get(at - 1).end() == comma.start()
        && peek(1).kind() == Kind.NUMBER
        && peek(1).start() == comma.end();
  }

  private boolean skip(String sign) {
    if (token().is(sign)) {
      at++;
      return true;
    }
    return false;
  }

  private Token token() {
    return tokens.get(at);
  }

  private Token peek(int ahead) {
    return tokens.get(Math.min(at + ahead, tokens.size() - 1));
  }

  private int lastEnd() {
    return at == 0 ? 0 : tokens.get(at - 1).end();
  }

  private FindingException fault(MeasureCode code, int start, int end, Object... arguments) {
    return new FindingException(Finding.of(code, source.position(start, end), arguments));
  }
}
