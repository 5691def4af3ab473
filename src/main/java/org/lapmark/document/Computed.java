package org.lapmark.document;

import java.util.Optional;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Printed;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Value;

/** Values of a pattern that no text of the author's asks for. */
record Computed(GradedPattern pattern, PrintForm form) {
  /** A formula's value as the document prints it; nothing when it can't be computed. */
  Optional<String> text(Formula formula) {
    TemplateText.Placeholder placeholder = new TemplateText.Placeholder(formula, null);
    TemplateText text = new TemplateText(formula.text(), java.util.List.of(placeholder));
    // What is wrong with a formula is reported where all formulas are checked.
    return Printed.of(text, pattern, form, new Findings()).map(Printed::text);
  }

  /** The value of a name. */
  Optional<String> text(String name) {
    SourceText text = SourceText.verbatim(new SourceFile("computed", name), 0, name.length());
    return text(Formula.parse(text));
  }

  /** A length as the document prints it. */
  String length(double millimetres) {
    return form.print(Value.Quantity.length(millimetres));
  }

  /** A formula's amount when it has a dimension. */
  Optional<Double> amount(Formula formula, Dimension... dimensions) {
    if (text(formula).isEmpty()) {
      return Optional.empty();
    }
    Value value = formula.evaluate(pattern.scope());
    if (value instanceof Value.NominalPair pair) {
      return java.util.List.of(dimensions).contains(Dimension.LENGTH)
          ? Optional.of(pair.metric())
          : Optional.empty();
    }
    return value instanceof Value.Quantity quantity
            && java.util.List.of(dimensions).contains(quantity.dimension())
        ? Optional.of(quantity.amount())
        : Optional.empty();
  }
}
