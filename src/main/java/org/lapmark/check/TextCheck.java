package org.lapmark.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Printed;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.text.Printing;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;

/** Every placeholder of the author's texts can be printed in every variant. */
final class TextCheck {
  private TextCheck() {}

  static void run(GradedPattern pattern, Findings findings) {
    for (TemplateText text : texts(pattern.source())) {
      Printed.of(text, pattern, findings);
    }
    // Steps are Markdown, where braces in code and in figures are no placeholders.
    Steps steps = Steps.read(pattern.source().steps(), Targets.of(pattern.source()), findings);
    Printing.of(steps.values(), List.of(pattern), pattern.source().masthead().form(), findings);
  }

  private static List<TemplateText> texts(PatternSource source) {
    Masthead masthead = source.masthead();
    List<TemplateText> texts = new ArrayList<>();
    texts.add(masthead.summary());
    texts.add(masthead.copyright());
    texts.add(masthead.note());
    source.hardware().forEach(thing -> texts.add(thing.name()));
    source
        .finished()
        .forEach(
            row -> {
              texts.add(row.label());
              texts.add(row.value());
            });
    texts.removeIf(Objects::isNull);
    return texts;
  }
}
