package org.lapmark.measure;

import static org.lapmark.measure.Dimension.ANGLE;
import static org.lapmark.measure.Dimension.AREA;
import static org.lapmark.measure.Dimension.COUNT;
import static org.lapmark.measure.Dimension.LENGTH;
import static org.lapmark.measure.Dimension.PLAIN;
import static org.lapmark.measure.Dimension.ZERO;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.StockSizes;

/**
 * The functions of formulas. Those of values say here what they take, what kind they come to as far
 * as that shows without computing, and what they come to; those of the geometry, how many things
 * they name, and the {@link Scope} does the rest.
 */
enum Function {
  IF(
      3,
      3,
      (call, in) -> branch(call, in.truth(call.first()), in),
      (arguments, kinds) -> kinds.first(arguments.get(1), arguments.get(2))),
  MIN(1, Function.MAX_ARGUMENTS, (call, in) -> extreme(call, -1, in), Kind.OF_ANY),
  MAX(1, Function.MAX_ARGUMENTS, (call, in) -> extreme(call, 1, in), Kind.OF_ANY),
  ABS(
      1,
      1,
      (call, in) -> {
        Quantity of = in.quantity(call.first());
        return new Quantity(Math.abs(of.amount()), of.dimension());
      },
      Kind.OF_THE_FIRST),
  SQRT(1, 1, Function::root, (arguments, kinds) -> Optional.empty()),
  ROUND(1, 2, (call, in) -> rounded(call, StepRounding::nearest, in), Kind.OF_THE_FIRST),
  ROUND_UP(1, 2, (call, in) -> rounded(call, StepRounding::up, in), Kind.OF_THE_FIRST),
  ROUND_DOWN(1, 2, (call, in) -> rounded(call, StepRounding::down, in), Kind.OF_THE_FIRST),
  SIN(
      1,
      1,
      (call, in) -> Quantity.plain(Degrees.sin(in.amount(call.first(), ANGLE))),
      Kind.of(PLAIN)),
  COS(
      1,
      1,
      (call, in) -> Quantity.plain(Degrees.cos(in.amount(call.first(), ANGLE))),
      Kind.of(PLAIN)),
  TAN(1, 1, Function::tangent, Kind.of(PLAIN)),
  ASIN(1, 1, (call, in) -> angle(call, StrictMath::asin, 1, in), Kind.of(ANGLE)),
  ACOS(1, 1, (call, in) -> angle(call, StrictMath::acos, 1, in), Kind.of(ANGLE)),
  ATAN(
      1,
      1,
      (call, in) -> angle(call, StrictMath::atan, Double.POSITIVE_INFINITY, in),
      Kind.of(ANGLE)),
  LONGEST_UP_TO(2, 2, Function::longest, Kind.of(LENGTH)),
  LENGTH_OF("length", 1),
  WIDTH("width", 1),
  HEIGHT("height", 1),
  PERIMETER("perimeter", 1),
  AREA_OF("area", 1),
  DISTANCE("distance", 2);

  /** How many arguments a function, or entries a list may have. */
  static final int MAX_ARGUMENTS = 100;

  private final String written;
  private final int fewest;
  private final int most;
  private final boolean ofGeometry;
  private final Computing computing;
  private final Kind kind;

  Function(int fewest, int most, Computing computing, Kind kind) {
    this.written = name().toLowerCase(Locale.ROOT);
    this.fewest = fewest;
    this.most = most;
    this.ofGeometry = false;
    this.computing = computing;
    this.kind = kind;
  }

  /** One of the geometry. */
  Function(String written, int references) {
    this.written = written;
    this.fewest = references;
    this.most = references;
    this.ofGeometry = true;
    this.computing = null;
    this.kind = null;
  }

  /** What a call comes to. */
  @FunctionalInterface
  private interface Computing {
    Value value(Nodes.Call call, Evaluation in);
  }

  /** What kind a call comes to, as far as that shows without computing it. */
  @FunctionalInterface
  private interface Kind {
    Kind OF_THE_FIRST = (arguments, kinds) -> arguments.get(0).kind(kinds);

    Kind OF_ANY = (arguments, kinds) -> kinds.first(arguments);

    Optional<String> of(List<Node> arguments, Kinds kinds);

    public static Kind of(Dimension dimension) {
      return (arguments, kinds) -> Optional.of(dimension.word());
    }
  }

  Value value(Nodes.Call call, Evaluation in) {
    return computing.value(call, in);
  }

  Optional<String> kind(List<Node> arguments, Kinds kinds) {
    return kind.of(arguments, kinds);
  }

  int fewest() {
    return fewest;
  }

  int most() {
    return most;
  }

  /** Whether it takes the names of things that are drawn, not values. */
  boolean ofGeometry() {
    return ofGeometry;
  }

  String written() {
    return written;
  }

  /** The function of a name. */
  public static Optional<Function> of(String name) {
    return Arrays.stream(values()).filter(function -> function.written.equals(name)).findFirst();
  }

  /** All names that may stand before a bracket. */
  static List<String> names() {
    return Arrays.stream(values()).map(Function::written).toList();
  }

  /**
   * One of two values. The other isn't computed, as what it asks for may not be there; where its
   * kind shows all the same, it has to be that of the first. A zero without a unit is of the kind
   * of the other.
   */
  private static Value branch(Nodes.Call call, boolean first, Evaluation in) {
    Value value = call.arguments().get(first ? 1 : 2).value(in);
    Node untaken = call.arguments().get(first ? 2 : 1);
    String own = value.kind();
    Optional<String> shown = untaken.kind(Kinds.WRITTEN);
    if (value instanceof Quantity zero && zero.dimension() == ZERO) {
      Optional<Dimension> like = shown.or(() -> untaken.kind(in.kinds())).flatMap(Dimension::of);
      if (like.isPresent()) {
        return new Quantity(0, like.get());
      }
    }
    boolean zero = untaken.bare().unsigned().bare().isZero() && value.quantity().isEmpty();
    String other = zero ? PLAIN.word() : shown.orElse(own);
    boolean numbers = Evaluation.isNumber(own) && Evaluation.isNumber(other);
    if (!own.equals(other) && !numbers) {
      throw in.fault(
          MeasureCode.FORMULA_UNLIKE_BRANCHES,
          call,
          "first",
          first ? own : other,
          "second",
          first ? other : own,
          "units",
          own.equals(PLAIN.word()) || other.equals(PLAIN.word()) ? "yes" : "no");
    }
    return value;
  }

  /** The one that comes first in an order; a pair stays a pair, and of equal ones the first. */
  private static Value extreme(Nodes.Call call, int sought, Evaluation in) {
    Value best = null;
    Node bestNode = null;
    boolean count = false;
    for (Node node : call.arguments()) {
      Value next = node.value(in);
      count |= in.quantity(next, node).dimension() == COUNT;
      if (best == null || order(node, next, bestNode, best, in) == sought) {
        best = zeroLike(best, next);
        bestNode = node;
      } else {
        best = zeroLike(next, best);
      }
    }
    return count ? new Quantity(((Quantity) best).amount(), COUNT) : best;
  }

  /** A value; where it is a zero without a unit, that of the dimension of another. */
  private static Value zeroLike(Value other, Value value) {
    return other != null && value instanceof Quantity zero && zero.dimension() == ZERO
        ? other.quantity().map(like -> new Quantity(0, like.dimension())).orElse(zero)
        : value;
  }

  private static int order(Node node, Value value, Node other, Value held, Evaluation in) {
    return Integer.signum(Comparison.order(Operands.of(node, other, node), value, held, in));
  }

  private static Quantity root(Nodes.Call call, Evaluation in) {
    Node node = call.first();
    Quantity of = in.quantity(node);
    if (of.dimension() != AREA && !of.dimension().isNumber()) {
      throw in.wrongKind(node, of.kind(), AREA.word());
    }
    if (of.amount() < 0) {
      throw in.fault(MeasureCode.FORMULA_NO_VALUE, node, "function", call.function().written);
    }
    return new Quantity(Math.sqrt(of.amount()), of.dimension() == AREA ? LENGTH : PLAIN);
  }

  private static Quantity rounded(Nodes.Call call, DoubleBinaryOperator rounding, Evaluation in) {
    Node first = call.first();
    Quantity of = in.quantity(first);
    double step = 1;
    Dimension dimension = of.dimension();
    if (call.arguments().size() > 1) {
      Node second = call.arguments().get(1);
      Quantity by = in.quantity(second);
      // Rounding compares: a step must be like what is rounded.
      Dimension common = in.common(Operands.of(first, second, second), of, by, "compare");
      dimension = dimension == ZERO ? common : dimension;
      step = by.amount();
      if (!(step > 0)) {
        throw in.fault(MeasureCode.FORMULA_STEP, second, "function", call.function().written);
      }
    } else if (!of.dimension().isNumber()) {
      throw in.fault(
          MeasureCode.FORMULA_ARGUMENT_COUNT,
          call,
          "function",
          call.function().written,
          "fewest",
          2,
          "most",
          2,
          "range",
          "one");
    }
    double result = rounding.applyAsDouble(of.amount(), step);
    if (!Double.isFinite(result)) {
      throw in.fault(MeasureCode.FORMULA_TOO_LARGE, call);
    }
    return new Quantity(result, dimension);
  }

  private static Quantity tangent(Nodes.Call call, Evaluation in) {
    double angle = in.amount(call.first(), ANGLE);
    double across = Degrees.cos(angle);
    if (across == 0) {
      throw in.fault(
          MeasureCode.FORMULA_NO_VALUE, call.first(), "function", call.function().written);
    }
    return Quantity.plain(Degrees.sin(angle) / across);
  }

  /** The angle that has a value, which goes from minus to plus a greatest. */
  private static Quantity angle(
      Nodes.Call call, DoubleUnaryOperator radians, double greatest, Evaluation in) {
    double of = in.amount(call.first(), PLAIN);
    if (Math.abs(of) > greatest + Comparison.TOLERANCE) {
      throw in.fault(
          MeasureCode.FORMULA_NO_VALUE, call.first(), "function", call.function().written);
    }
    double within = Math.max(-greatest, Math.min(greatest, of));
    return new Quantity(StrictMath.toDegrees(radians.applyAsDouble(within)), ANGLE);
  }

  private static NominalPair longest(Nodes.Call call, Evaluation in) {
    Value stock = call.first().value(in);
    if (!(stock instanceof StockSizes sizes)) {
      throw in.wrongKind(call.first(), stock.kind(), Evaluation.STOCK);
    }
    double limit = in.amount(call.arguments().get(1), LENGTH);
    NominalPair longest = null;
    NominalPair shortest = null;
    for (NominalPair size : sizes.sizes()) {
      if (shortest == null || size.metric() < shortest.metric()) {
        shortest = size;
      }
      if (Comparison.order(size.metric(), limit) <= 0
          && (longest == null || size.metric() > longest.metric())) {
        longest = size;
      }
    }
    if (longest == null) {
      throw in.fault(
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
}
