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

/** Every placeholder of the author's texts can be printed in every variant. */
final class TextCheck {
  private TextCheck() {}

  static void run(GradedPattern pattern, Findings findings) {
    for (TemplateText text : texts(pattern.source(), findings)) {
      Printed.of(text, pattern, findings);
    }
  }

  private static List<TemplateText> texts(PatternSource source, Findings findings) {
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
    source.steps().forEach(step -> texts.add(TemplateText.parse(step.body(), findings)));
    source.options().options().forEach(option -> texts.add(option.text()));
    texts.removeIf(Objects::isNull);
    return texts;
  }
}
