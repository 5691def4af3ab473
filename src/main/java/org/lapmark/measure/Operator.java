package org.lapmark.measure;

import java.util.Optional;
import org.lapmark.measure.Value.Truth;

/** What stands between two parts of a formula. */
enum Operator {
  OR("or", 1, new Junction(true)),
  AND("and", 2, new Junction(false)),
  LESS("<", 4, new Comparison(order -> order < 0)),
  AT_MOST("<=", 4, new Comparison(order -> order <= 0)),
  MORE(">", 4, new Comparison(order -> order > 0)),
  AT_LEAST(">=", 4, new Comparison(order -> order >= 0)),
  EQUAL("=", 4, new Comparison(order -> order == 0, true)),
  UNEQUAL("!=", 4, new Comparison(order -> order != 0, true)),
  PLUS("+", 5, Arithmetic.SUM),
  MINUS("-", 5, Arithmetic.DIFFERENCE),
  TIMES("*", 6, Arithmetic.PRODUCT),
  OVER("/", 6, Arithmetic.QUOTIENT),
  POWER("^", 8, Arithmetic.POWER);

  /** {@code not} binds less than a comparison, more than {@code and}. */
  static final int NOT_BINDING = 3;

  /** A minus sign before a part binds more than a product, less than a power. */
  static final int NEGATION_BINDING = 7;

  private final String sign;
  private final int binding;
  private final Operation operation;

  Operator(String sign, int binding, Operation operation) {
    this.sign = sign;
    this.binding = binding;
    this.operation = operation;
  }

  /**
   * Two conditions, of which the second is computed only where the first leaves it open.
   *
   * @param enough what the first has to come to for the whole to be the same
   */
  private record Junction(boolean enough) implements Operation {
    @Override
    public Value value(Operands sides, Evaluation in) {
      boolean first = in.truth(sides.left());
      return new Truth(first == enough ? first : in.truth(sides.right()));
    }

    @Override
    public Optional<String> kind(Operands sides, Kinds kinds) {
      return Optional.of(Evaluation.TRUTH);
    }
  }

  Operation operation() {
    return operation;
  }

  int binding() {
    return binding;
  }

  boolean comparison() {
    return binding == LESS.binding;
  }

  /** The operator a token stands for, or null. */
  public static Operator of(Token token) {
    for (Operator operator : values()) {
      if (token.is(operator.sign)) {
        return operator;
      }
    }
    return null;
  }
}
