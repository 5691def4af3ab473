package org.lapmark.measure;

import java.util.Optional;
import java.util.function.IntPredicate;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.Truth;

/**
 * A comparison of two values.
 *
 * @param holds whether it is true of the order of its sides: negative, 0 when equal, or positive
 * @param ofEquality whether it asks for no more than whether its sides are equal
 */
record Comparison(IntPredicate holds, boolean ofEquality) implements Operation {
  /** Numbers that differ by less than this part of the larger of them and 1 are equal. */
  static final double TOLERANCE = 1e-9;

  /** One that asks which side is more. */
  Comparison(IntPredicate holds) {
    this(holds, false);
  }

  @Override
  public Value value(Operands sides, Evaluation in) {
    Value left = sides.left().value(in);
    return new Truth(
        left instanceof Value.Choice choice
            ? chosen(sides, choice, in)
            : compare(sides, left, sides.right().value(in), in));
  }

  @Override
  public Optional<String> kind(Operands sides, Kinds kinds) {
    return Optional.of(Evaluation.TRUTH);
  }

  /** A choice is compared with a name as written, which stands for nothing else there. */
  private boolean chosen(Operands sides, Value.Choice choice, Evaluation in) {
    if (!choice.ordered() && !ofEquality) {
      throw in.wrongKind(sides.left(), choice.kind(), "number");
    }
    String word = sides.right().choice(in.formula());
    int other = choice.ids().indexOf(word);
    if (other < 0) {
      Optional<String> nearest = NearestWord.of(word, choice.ids());
      throw in.fault(
          MeasureCode.FORMULA_CHOICE_UNKNOWN,
          sides.right(),
          "choice",
          in.written(sides.right()),
          "option",
          in.written(sides.left()),
          "nearest",
          nearest.orElse(""),
          "hasNearest",
          nearest.isPresent() ? "yes" : "no",
          "known",
          Known.listed(choice.ids()));
    }
    return holds.test(Integer.compare(choice.ids().indexOf(choice.id()), other));
  }

  private boolean compare(Operands sides, Value left, Value right, Evaluation in) {
    if (ofEquality && left instanceof Truth a && right instanceof Truth b) {
      return holds.test(Boolean.compare(a.holds(), b.holds()));
    }
    return holds.test(order(sides, left, right, in));
  }

  /** The order of two like values; negative when the first is less, 0 when they are equal. */
  static int order(Operands sides, Value left, Value right, Evaluation in) {
    if (left instanceof NominalPair a && right instanceof NominalPair b) {
      // Nominals are the same size only when both their names are.
      int byMetric = order(a.metric(), b.metric());
      return byMetric != 0 ? byMetric : order(a.inches(), b.inches());
    }
    Quantity a = in.quantity(left, sides.left());
    Quantity b = in.quantity(right, sides.right());
    in.common(sides, a, b, "compare");
    return order(a.amount(), b.amount());
  }

  /** The order of two amounts, of which those are equal that differ by no more than noise. */
  static int order(double a, double b) {
    double margin = TOLERANCE * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
    return Math.abs(a - b) <= margin ? 0 : Double.compare(a, b);
  }
}
