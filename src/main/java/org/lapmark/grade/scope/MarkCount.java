package org.lapmark.grade.scope;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;

/** How many marks stand in a row. */
final class MarkCount {
  /** No row needs more. */
  private static final int MOST = 200;

  private MarkCount() {}

  public static int of(Formula formula, PatternScope scope) {
    Value value = formula.evaluate(scope);
    boolean number = value instanceof Value.Quantity quantity && quantity.dimension().isNumber();
    double amount = number ? ((Value.Quantity) value).amount() : 0;
    long whole = Math.round(amount);
    if (Math.abs(amount - whole) > 1e-9 || whole < 1 || whole > MOST) {
      throw new FindingException(
          Finding.of(
              GradeCode.MARK_COUNT,
              formula.text().position(),
              "value",
              number ? Rounded.hundredth(amount) : PatternScope.kind(value),
              "limit",
              MOST,
              "size",
              scope.size()));
    }
    return (int) whole;
  }
}
