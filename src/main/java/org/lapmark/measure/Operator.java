package org.lapmark.measure;

import java.util.Locale;

/** What stands between two parts of a formula. */
enum Operator {
  OR("or", 1),
  AND("and", 2),
  LESS("<", 4),
  AT_MOST("<=", 4),
  MORE(">", 4),
  AT_LEAST(">=", 4),
  EQUAL("=", 4),
  UNEQUAL("!=", 4),
  PLUS("+", 5),
  MINUS("-", 5),
  TIMES("*", 6),
  OVER("/", 6),
  POWER("^", 8);

  /** {@code not} binds less than a comparison, more than {@code and}. */
  static final int NOT_BINDING = 3;

  /** A minus sign before a part binds more than a product, less than a power. */
  static final int NEGATION_BINDING = 7;

  private final String sign;
  private final int binding;

  Operator(String sign, int binding) {
    this.sign = sign;
    this.binding = binding;
  }

  int binding() {
    return binding;
  }

  boolean comparison() {
    return binding == LESS.binding;
  }

  /** The operator a token stands for, or null. */
  static Operator of(Token token) {
    for (Operator operator : values()) {
      if (token.is(operator.sign)) {
        return operator;
      }
    }
    return null;
  }

  /** A stable word for messages to choose by. */
  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
