package org.lapmark.measure;

import static org.lapmark.measure.Dimension.ANGLE;
import static org.lapmark.measure.Dimension.AREA;
import static org.lapmark.measure.Dimension.COUNT;
import static org.lapmark.measure.Dimension.LENGTH;
import static org.lapmark.measure.Dimension.PLAIN;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.StockSizes;
import org.lapmark.measure.Value.Truth;

/** Computes the parts of one formula. */
final class Evaluator {
  private final SourceText source;
  private final Scope scope;

  Evaluator(SourceText source, Scope scope) {
    this.source = source;
    this.scope = scope;
  }

  Value value(Node node) {
    if (node instanceof Node.Constant constant) {
      return constant.value();
    } else if (node instanceof Node.Name name) {
      return Objects.requireNonNull(scope.value(source.part(name.start(), name.end())));
    } else if (node instanceof Node.Word) {
      throw fault(MeasureCode.FORMULA_NAME, node, "name", written(node));
    } else if (node instanceof Node.Bracketed bracketed) {
      return value(bracketed.inner());
    } else if (node instanceof Node.Negation negation) {
      Quantity operand = quantity(value(negation.operand()), negation.operand());
      return new Quantity(-operand.amount(), operand.dimension());
    } else if (node instanceof Node.Not not) {
      return new Truth(!truth(not.operand()));
    } else if (node instanceof Node.Stock stock) {
      return stock(stock);
    } else if (node instanceof Node.Geometry geometry) {
      List<SourceText> references = new ArrayList<>();
      geometry.references().forEach(name -> references.add(source.part(name.start(), name.end())));
      SourceText function = source.part(geometry.start(), geometry.nameEnd());
      return Objects.requireNonNull(scope.geometry(function, List.copyOf(references)));
    } else if (node instanceof Node.Call call) {
      return call(call);
    }
    return binary((Node.Binary) node);
  }

  private Value stock(Node.Stock stock) {
    List<NominalPair> sizes = new ArrayList<>();
    for (Node node : stock.sizes()) {
      if (!(value(node) instanceof NominalPair pair)) {
        throw fault(MeasureCode.FORMULA_STOCK_ENTRY, node);
      }
      sizes.add(pair);
    }
    return new StockSizes(sizes);
  }

  private Value binary(Node.Binary node) {
    Operator operator = node.operator();
    if (operator == Operator.AND) {
      return new Truth(truth(node.left()) && truth(node.right()));
    }
    if (operator == Operator.OR) {
      return new Truth(truth(node.left()) || truth(node.right()));
    }
    Value leftValue = value(node.left());
    if (operator.comparison() && leftValue instanceof Value.Choice choice) {
      return new Truth(chosen(node, choice));
    }
    Value rightValue = value(node.right());
    if (operator.comparison()) {
      return new Truth(compare(node, leftValue, rightValue));
    }
    Quantity left = quantity(leftValue, node.left());
    Quantity right = quantity(rightValue, node.right());
    Quantity result =
        switch (operator) {
          case PLUS -> new Quantity(left.amount() + right.amount(), common(node, left, right));
          case MINUS -> new Quantity(left.amount() - right.amount(), common(node, left, right));
          case TIMES -> new Quantity(left.amount() * right.amount(), product(node, left, right));
          case OVER -> quotient(node, left, right);
          default -> power(node, left, right);
        };
    if (!Double.isFinite(result.amount())) {
      throw fault(MeasureCode.FORMULA_TOO_LARGE, node);
    }
    return result;
  }

  /** A choice is compared with a name as written, which stands for nothing else there. */
  private boolean chosen(Node.Binary node, Value.Choice choice) {
    Operator operator = node.operator();
    if (!choice.ordered() && operator != Operator.EQUAL && operator != Operator.UNEQUAL) {
      throw wrongKind(node.left(), kind(choice), "number");
    }
    Node right = node.right();
    String word = source.text().substring(right.start(), right.end());
    if (right instanceof Node.Word && word.startsWith("\"")) {
      word = word.substring(1, word.length() - 1);
    }
    int other = choice.ids().indexOf(word);
    if (other < 0) {
      Optional<String> nearest = Nearest.of(word, choice.ids());
      throw fault(
          MeasureCode.FORMULA_CHOICE_UNKNOWN,
          right,
          "choice",
          written(right),
          "option",
          written(node.left()),
          "nearest",
          nearest.orElse(""),
          "hasNearest",
          nearest.isPresent() ? "yes" : "no",
          "known",
          Known.listed(choice.ids()));
    }
    int order = Integer.compare(choice.ids().indexOf(choice.id()), other);
    return holds(operator, order);
  }

  private boolean compare(Node.Binary node, Value left, Value right) {
    Operator operator = node.operator();
    if (left instanceof Truth a && right instanceof Truth b) {
      if (operator == Operator.EQUAL || operator == Operator.UNEQUAL) {
        return a.holds() == b.holds() == (operator == Operator.EQUAL);
      }
    }
    int order;
    if (left instanceof NominalPair a && right instanceof NominalPair b) {
      // Nominals are the same size only when both their names are.
      int byMetric = order(a.metric(), b.metric());
      order = byMetric != 0 ? byMetric : order(a.inches(), b.inches());
    } else {
      Quantity a = quantity(left, node.left());
      Quantity b = quantity(right, node.right());
      common(node, a, b);
      order = order(a.amount(), b.amount());
    }
    return holds(operator, order);
  }

  private static boolean holds(Operator operator, int order) {
    return switch (operator) {
      case LESS -> order < 0;
      case AT_MOST -> order <= 0;
      case MORE -> order > 0;
      case AT_LEAST -> order >= 0;
      case EQUAL -> order == 0;
      default -> order != 0;
    };
  }

  private static int order(double a, double b) {
    double margin = Formula.TOLERANCE * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
    return Math.abs(a - b) <= margin ? 0 : Double.compare(a, b);
  }

  /** The kind of two like quantities. */
  private Dimension common(Node.Binary node, Quantity left, Quantity right) {
    Dimension a = left.dimension();
    Dimension b = right.dimension();
    if (a == b) {
      return a;
    }
    if (isNumber(a) && isNumber(b)) {
      return COUNT;
    }
    if (a == PLAIN) {
      throw unitMissing(node.left(), b);
    }
    if (b == PLAIN) {
      throw unitMissing(node.right(), a);
    }
    throw fault(
        MeasureCode.FORMULA_UNLIKE_DIMENSIONS,
        node.signStart(),
        node.signEnd(),
        "left",
        word(a),
        "right",
        word(b),
        "operation",
        node.operator().comparison() ? "compare" : "add");
  }

  private Dimension product(Node.Binary node, Quantity left, Quantity right) {
    Dimension a = left.dimension();
    Dimension b = right.dimension();
    if (a == PLAIN) {
      return b;
    }
    if (b == PLAIN || b == COUNT) {
      return a;
    }
    if (a == COUNT) {
      return b;
    }
    if (a == LENGTH && b == LENGTH) {
      return AREA;
    }
    throw noSuchDimension(node, a, b);
  }

  private Quantity quotient(Node.Binary node, Quantity left, Quantity right) {
    Dimension a = left.dimension();
    Dimension b = right.dimension();
    Dimension result;
    if (b == PLAIN || b == COUNT && a != COUNT) {
      result = a;
    } else if (a == b) {
      result = PLAIN;
    } else if (a == AREA && b == LENGTH) {
      result = LENGTH;
    } else {
      throw noSuchDimension(node, a, b);
    }
    if (right.amount() == 0) {
      throw fault(MeasureCode.FORMULA_DIVISION_BY_ZERO, node.right());
    }
    return new Quantity(left.amount() / right.amount(), result);
  }

  private Quantity power(Node.Binary node, Quantity base, Quantity exponent) {
    if (!isNumber(exponent.dimension())) {
      throw wrongKind(node.right(), word(exponent.dimension()), word(PLAIN));
    }
    double power = exponent.amount();
    Dimension result;
    if (isNumber(base.dimension()) || order(power, 0) == 0) {
      result = PLAIN;
    } else if (order(power, 1) == 0) {
      result = base.dimension();
    } else if (base.dimension() == LENGTH && order(power, 2) == 0) {
      result = AREA;
    } else if (base.dimension() == AREA && order(power, 0.5) == 0) {
      result = LENGTH;
    } else {
      throw noSuchDimension(node, base.dimension(), exponent.dimension());
    }
    if (base.amount() == 0 && power < 0) {
      throw fault(MeasureCode.FORMULA_DIVISION_BY_ZERO, node.left());
    }
    if (base.amount() < 0 && power != Math.rint(power)) {
      throw fault(MeasureCode.FORMULA_NO_VALUE, node.left(), "function", "^");
    }
    return new Quantity(StrictMath.pow(base.amount(), power), result);
  }

  private Value call(Node.Call call) {
    Node first = call.arguments().get(0);
    return switch (call.function()) {
      case IF -> chosen(call, truth(first));
      case MIN, MAX -> extreme(call);
      case ABS -> {
        Quantity of = quantity(value(first), first);
        yield new Quantity(Math.abs(of.amount()), of.dimension());
      }
      case SQRT -> root(first);
      case ROUND, ROUND_UP, ROUND_DOWN -> rounded(call);
      case SIN -> Quantity.plain(Degrees.sin(amount(value(first), first, ANGLE)));
      case COS -> Quantity.plain(Degrees.cos(amount(value(first), first, ANGLE)));
      case TAN -> tangent(first);
      case ASIN, ACOS, ATAN -> inverse(call.function(), first);
      case LONGEST_UP_TO -> longest(call);
    };
  }

  /**
   * One of two values. The other isn't computed, as what it asks for may not be there; where its
   * kind shows all the same, it has to be that of the first.
   */
  private Value chosen(Node.Call call, boolean first) {
    Value value = value(call.arguments().get(first ? 1 : 2));
    String own = kind(value);
    String other = WrittenKind.of(call.arguments().get(first ? 2 : 1)).orElse(own);
    boolean numbers = WrittenKind.isNumber(own) && WrittenKind.isNumber(other);
    if (!own.equals(other) && !numbers) {
      throw fault(
          MeasureCode.FORMULA_UNLIKE_BRANCHES,
          call,
          "first",
          first ? own : other,
          "second",
          first ? other : own,
          "units",
          own.equals(word(PLAIN)) || other.equals(word(PLAIN)) ? "yes" : "no");
    }
    return value;
  }

  /** The least or greatest; a pair stays a pair, and of equal ones the first is taken. */
  private Value extreme(Node.Call call) {
    Value best = null;
    Node bestNode = null;
    boolean count = false;
    for (Node node : call.arguments()) {
      Value next = value(node);
      count |= quantity(next, node).dimension() == COUNT;
      if (best == null) {
        best = next;
        bestNode = node;
        continue;
      }
      Operator operator = call.function() == Function.MIN ? Operator.LESS : Operator.MORE;
      if (compare(
          new Node.Binary(operator, node, bestNode, node.start(), node.end()), next, best)) {
        best = next;
        bestNode = node;
      }
    }
    return count ? new Quantity(((Quantity) best).amount(), COUNT) : best;
  }

  private Quantity root(Node node) {
    Quantity of = quantity(value(node), node);
    if (of.dimension() != AREA && !isNumber(of.dimension())) {
      throw wrongKind(node, word(of.dimension()), word(AREA));
    }
    if (of.amount() < 0) {
      throw fault(MeasureCode.FORMULA_NO_VALUE, node, "function", "sqrt");
    }
    return new Quantity(Math.sqrt(of.amount()), of.dimension() == AREA ? LENGTH : PLAIN);
  }

  private Quantity rounded(Node.Call call) {
    Node first = call.arguments().get(0);
    Quantity of = quantity(value(first), first);
    double step = 1;
    if (call.arguments().size() > 1) {
      Node second = call.arguments().get(1);
      Quantity by = quantity(value(second), second);
      // Rounding compares: a step must be like what is rounded.
      common(new Node.Binary(Operator.LESS, first, second, second.start(), second.end()), of, by);
      step = by.amount();
      if (!(step > 0)) {
        throw fault(MeasureCode.FORMULA_STEP, second, "function", call.function().written());
      }
    } else if (!isNumber(of.dimension())) {
      throw fault(
          MeasureCode.FORMULA_ARGUMENT_COUNT,
          call,
          "function",
          call.function().written(),
          "fewest",
          2,
          "most",
          2,
          "range",
          "one");
    }
    double result =
        switch (call.function()) {
          case ROUND_UP -> Steps.up(of.amount(), step);
          case ROUND_DOWN -> Steps.down(of.amount(), step);
          default -> Steps.nearest(of.amount(), step);
        };
    if (!Double.isFinite(result)) {
      throw fault(MeasureCode.FORMULA_TOO_LARGE, call);
    }
    return new Quantity(result, of.dimension());
  }

  private Quantity tangent(Node node) {
    double angle = amount(value(node), node, ANGLE);
    double across = Degrees.cos(angle);
    if (across == 0) {
      throw fault(MeasureCode.FORMULA_NO_VALUE, node, "function", "tan");
    }
    return Quantity.plain(Degrees.sin(angle) / across);
  }

  private Quantity inverse(Function function, Node node) {
    double of = amount(value(node), node, PLAIN);
    if (function != Function.ATAN && Math.abs(of) > 1 + Formula.TOLERANCE) {
      throw fault(MeasureCode.FORMULA_NO_VALUE, node, "function", function.written());
    }
    double clamped = Math.max(-1, Math.min(1, of));
    double radians =
        switch (function) {
          case ASIN -> StrictMath.asin(clamped);
          case ACOS -> StrictMath.acos(clamped);
          default -> StrictMath.atan(of);
        };
    return new Quantity(StrictMath.toDegrees(radians), ANGLE);
  }

  private NominalPair longest(Node.Call call) {
    Node stockNode = call.arguments().get(0);
    Node limitNode = call.arguments().get(1);
    Value stock = value(stockNode);
    if (!(stock instanceof StockSizes sizes)) {
      throw wrongKind(stockNode, kind(stock), "stock");
    }
    double limit = amount(value(limitNode), limitNode, LENGTH);
    NominalPair longest = null;
    NominalPair shortest = null;
    for (NominalPair size : sizes.sizes()) {
      if (shortest == null || size.metric() < shortest.metric()) {
        shortest = size;
      }
      if (order(size.metric(), limit) <= 0
          && (longest == null || size.metric() > longest.metric())) {
        longest = size;
      }
    }
    if (longest == null) {
      throw fault(
          MeasureCode.FORMULA_NO_STOCK_SIZE,
          call,
          "limit",
          Math.rint(limit * 10) / 10,
          "shortest",
          shortest == null ? "" : shortest.metricText(),
          "hasShortest",
          shortest == null ? "no" : "yes");
    }
    return longest;
  }

  boolean truth(Node node) {
    Value value = value(node);
    if (value instanceof Truth truth) {
      return truth.holds();
    }
    throw wrongKind(node, kind(value), "truth");
  }

  Quantity quantity(Value value, Node node) {
    if (value instanceof Quantity quantity) {
      return quantity;
    }
    if (value instanceof NominalPair pair) {
      return Quantity.length(pair.metric());
    }
    throw wrongKind(node, kind(value), "number");
  }

  double amount(Value value, Node node, Dimension needed) {
    Quantity quantity = quantity(value, node);
    if (quantity.dimension() == needed || isNumber(quantity.dimension()) && isNumber(needed)) {
      return quantity.amount();
    }
    if (quantity.dimension() == PLAIN) {
      throw unitMissing(node, needed);
    }
    throw wrongKind(node, word(quantity.dimension()), word(needed));
  }

  private static boolean isNumber(Dimension dimension) {
    return dimension == PLAIN || dimension == COUNT;
  }

  static String word(Dimension dimension) {
    return dimension.name().toLowerCase(Locale.ROOT);
  }

  /** A stable word for messages to choose by. */
  static String kind(Value value) {
    if (value instanceof Quantity quantity) {
      return word(quantity.dimension());
    } else if (value instanceof NominalPair) {
      return word(LENGTH);
    }
    if (value instanceof Value.Choice) {
      return "choice";
    }
    return value instanceof StockSizes ? "stock" : "truth";
  }

  private FindingException unitMissing(Node node, Dimension needed) {
    return statedWithoutUnit(node, needed).orElseGet(() -> unitMissingHere(node, needed));
  }

  /** The fault of a name in a part that comes to a plain number, if one alone can be to blame. */
  Optional<FindingException> statedWithoutUnit(Node node, Dimension needed) {
    Map<Position, SourceText> stated = new LinkedHashMap<>();
    for (SourceText name : Formula.names(source, node)) {
      scope.withoutUnit(name).ifPresent(place -> stated.putIfAbsent(place, name));
    }
    if (stated.size() != 1) {
      return Optional.empty();
    }
    Position place = stated.keySet().iterator().next();
    SourceText name = stated.get(place);
    return Optional.of(
        new FindingException(
            Finding.of(
                MeasureCode.MEASURE_UNIT_MISSING,
                place,
                "name",
                name.text(),
                "file",
                name.position().file(),
                "line",
                Integer.toString(name.position().line()),
                "needed",
                word(needed),
                "stated",
                place.file() + ":" + place.line())));
  }

  private FindingException unitMissingHere(Node node, Dimension needed) {
    return fault(
        MeasureCode.FORMULA_UNIT_MISSING, node, "number", written(node), "needed", word(needed));
  }

  private FindingException wrongKind(Node node, String found, String needed) {
    return fault(
        MeasureCode.FORMULA_WRONG_KIND,
        node,
        "written",
        written(node),
        "found",
        found,
        "needed",
        needed);
  }

  private FindingException noSuchDimension(Node.Binary node, Dimension left, Dimension right) {
    return fault(
        MeasureCode.FORMULA_NO_SUCH_DIMENSION,
        node.signStart(),
        node.signEnd(),
        "left",
        word(left),
        "right",
        word(right),
        "operation",
        node.operator().word());
  }

  private String written(Node node) {
    String whole = source.text().substring(node.start(), node.end());
    return whole.length() <= 60 ? whole : whole.substring(0, whole.offsetByCodePoints(0, 40)) + "…";
  }

  private FindingException fault(MeasureCode code, Node node, Object... arguments) {
    return fault(code, node.start(), node.end(), arguments);
  }

  private FindingException fault(MeasureCode code, int start, int end, Object... arguments) {
    return new FindingException(Finding.of(code, source.position(start, end), arguments));
  }
}
