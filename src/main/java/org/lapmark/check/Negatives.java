package org.lapmark.check;

import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Printed;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.PrintedValue;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Value;

/** Finds lengths, areas and numbers of things below zero in texts. */
final class Negatives {
  private static final double NOTHING = 1e-9;

  private final GradedPattern pattern;
  private final Findings findings;
  private final Set<Position> finished = new TreeSet<>();

  Negatives(GradedPattern pattern, Findings findings) {
    this.pattern = pattern;
    this.findings = findings;
    pattern
        .source()
        .finished()
        .forEach(
            row -> {
              for (TemplateText.Part part : row.value().parts()) {
                if (part instanceof TemplateText.Placeholder placeholder) {
                  finished.add(placeholder.formula().text().position());
                }
              }
            });
  }

  void text(Printed text) {
    for (Object part : text.parts()) {
      if (part instanceof PrintedValue value) {
        value(value);
      }
    }
  }

  void value(PrintedValue printed) {
    if (printed.exact() instanceof Value.Quantity quantity
        && quantity.amount() < -NOTHING
        && quantity.dimension() != Dimension.ANGLE
        && quantity.dimension() != Dimension.PLAIN) {
      Amount amount = new Amount(quantity.amount(), quantity.dimension());
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
