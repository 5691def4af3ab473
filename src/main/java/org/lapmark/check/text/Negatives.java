package org.lapmark.check.text;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.ShownAmount;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintedValue;

/** Finds lengths, areas and numbers of things below zero in texts. */
final class Negatives {
  private static final double NOTHING = 1e-9;
  private static final Pattern NOT_NAMES = Pattern.compile("[^a-z0-9_.]+");

  private final EvaluatedPattern pattern;
  private final Findings findings;
  private final Set<Position> finished = new TreeSet<>();

  Negatives(EvaluatedPattern pattern, Findings findings) {
    this.pattern = pattern;
    this.findings = findings;
    pattern
        .source()
        .finished()
        .forEach(
            row ->
                row.value()
                    .placeholders()
                    .forEach(value -> finished.add(value.formula().text().position())));
  }

  void text(PrintedText text) {
    for (Object part : text.parts()) {
      if (part instanceof PrintedValue value) {
        value(value);
      }
    }
  }

  /** Whether an allowance that the expression names has been found to be below zero. */
  private boolean isReported(PrintedValue printed) {
    Set<String> names = new TreeSet<>(List.of(NOT_NAMES.split(printed.expression())));
    return findings.sorted().stream()
        .filter(finding -> finding.code() == GradeCode.ALLOWANCE_NEGATIVE)
        .anyMatch(finding -> names.contains(String.valueOf(finding.arguments().get("cause"))));
  }

  void value(PrintedValue printed) {
    Value.Quantity quantity = printed.exact().quantity().orElse(Value.Quantity.plain(0));
    if (quantity.amount() < -NOTHING
        && quantity.dimension() != Dimension.ANGLE
        && quantity.dimension() != Dimension.PLAIN
        && !isReported(printed)) {
      ShownAmount amount = new ShownAmount(quantity.amount(), quantity.dimension());
      findings.add(
          finished.contains(printed.position())
              ? CheckCode.FINISHED_NEGATIVE
              : CheckCode.PRINTED_NEGATIVE,
          printed.position(),
          "expression",
          printed.expression(),
          "value",
          amount.value(),
          "unit",
          amount.unit(),
          "size",
          pattern.variant().size());
    }
  }
}
