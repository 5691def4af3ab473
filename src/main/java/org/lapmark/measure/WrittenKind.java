package org.lapmark.measure;

import java.util.Optional;

/** What kind a part of a formula comes to, as far as that shows without computing it. */
final class WrittenKind {
  private static final String LENGTH = Evaluator.word(Dimension.LENGTH);
  private static final String AREA = Evaluator.word(Dimension.AREA);
  private static final String ANGLE = Evaluator.word(Dimension.ANGLE);
  private static final String PLAIN = Evaluator.word(Dimension.PLAIN);
  private static final String COUNT = Evaluator.word(Dimension.COUNT);
  private static final String TRUTH = "truth";

  private WrittenKind() {}

  /** The kind's word, or nothing where it depends on what a name stands for. */
  static Optional<String> of(Node node) {
    if (node instanceof Node.Constant constant) {
      return Optional.of(Evaluator.kind(constant.value()));
    } else if (node instanceof Node.Bracketed bracketed) {
      return of(bracketed.inner());
    } else if (node instanceof Node.Negation negation) {
      return of(negation.operand());
    } else if (node instanceof Node.Not) {
      return Optional.of(TRUTH);
    } else if (node instanceof Node.Stock) {
      return Optional.of("stock");
    } else if (node instanceof Node.Call call) {
      return of(call);
    } else if (node instanceof Node.Binary binary) {
      return of(binary);
    }
    return Optional.empty();
  }

  static boolean isNumber(String kind) {
    return kind.equals(PLAIN) || kind.equals(COUNT);
  }

  private static Optional<String> of(Node.Call call) {
    return switch (call.function()) {
      case SIN, COS, TAN -> Optional.of(PLAIN);
      case ASIN, ACOS, ATAN -> Optional.of(ANGLE);
      case LONGEST_UP_TO -> Optional.of(LENGTH);
      case SQRT -> Optional.empty();
      case IF -> of(call.arguments().get(1)).or(() -> of(call.arguments().get(2)));
      default -> of(call.arguments().get(0));
    };
  }

  private static Optional<String> of(Node.Binary binary) {
    Operator operator = binary.operator();
    if (operator.comparison() || operator == Operator.AND || operator == Operator.OR) {
      return Optional.of(TRUTH);
    }
    Optional<String> left = of(binary.left());
    Optional<String> right = of(binary.right());
    if (operator == Operator.PLUS || operator == Operator.MINUS) {
      return left.or(() -> right);
    }
    if (left.isEmpty() || right.isEmpty() || operator == Operator.POWER) {
      return Optional.empty();
    }
    if (isNumber(right.get())) {
      return left;
    }
    if (operator == Operator.TIMES) {
      return isNumber(left.get())
          ? right
          : left.equals(right) && left.get().equals(LENGTH) ? Optional.of(AREA) : Optional.empty();
    }
    return left.equals(right) ? Optional.of(PLAIN) : Optional.empty();
  }
}
