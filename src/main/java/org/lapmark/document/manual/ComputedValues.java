package org.lapmark.document.manual;

import java.util.Arrays;
import java.util.Optional;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;

/** Values of a pattern that no text of the author's asks for. */
public record ComputedValues(EvaluatedPattern pattern, PrintForm form) {
  /** A formula's value as the document prints it; nothing when it can't be computed. */
  public Optional<String> text(Formula formula) {
    try {
      return Optional.of(printed(formula, pattern, form));
    } catch (FindingException e) {
      // What is wrong with a formula is reported where all formulas are checked.
      return Optional.empty();
    }
  }

  /**
   * A formula's value that stands in no text, where its author could ask for a finer step.
   *
   * @throws FindingException when it can't be computed
   */
  public static String printed(Formula formula, EvaluatedPattern pattern, PrintForm form) {
    Value value = formula.evaluate(pattern.scope());
    return value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.LENGTH
        ? form.print(quantity)
        : new TemplateText.Placeholder(formula, null)
            .print(pattern.scope(), pattern.variant(), form)
            .text();
  }

  /** The value of a name. */
  public Optional<String> text(String name) {
    SourceText text = SourceText.verbatim(new SourceFile("computed", name), 0, name.length());
    return text(Formula.parse(text));
  }

  /** A length as the document prints it. */
  public String length(double millimetres) {
    return form.print(Value.Quantity.length(millimetres));
  }

  /** A formula's amount when it has a dimension. */
  public Optional<Double> amount(Formula formula, Dimension... dimensions) {
    if (text(formula).isEmpty()) {
      return Optional.empty();
    }
    return formula
        .evaluate(pattern.scope())
        .quantity()
        .filter(quantity -> Arrays.stream(dimensions).anyMatch(quantity.dimension()::fits))
        .map(Value.Quantity::amount);
  }
}
