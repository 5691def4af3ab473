package org.lapmark.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.lapmark.document.DocumentCode;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;

/** Warns of characters in the author's texts for which documents would print an empty box. */
final class PrintableTexts {
  private PrintableTexts() {}

  /**
   * Looks through every text that readers see. A text is reported once, at its first such
   * character.
   *
   * @param source the pattern, or null if it couldn't be read
   * @param unprintable the characters of a text that documents lack, each once
   * @param findings where warnings go
   */
  static void check(
      PatternSource source, Function<String, List<String>> unprintable, Findings findings) {
    if (source == null) {
      return;
    }
    for (SourceText text : texts(source)) {
      List<String> missing = unprintable.apply(text.text());
      if (missing.isEmpty()) {
        continue;
      }
      int at = missing.stream().mapToInt(text.text()::indexOf).min().orElseThrow();
      int end = at + Character.charCount(text.text().codePointAt(at));
      findings.add(
          DocumentCode.TEXT_GLYPH_MISSING,
          text.position(at, end),
          "characters",
          String.join(" ", missing.subList(0, Math.min(10, missing.size()))));
    }
  }

  private static List<SourceText> texts(PatternSource source) {
    List<SourceText> texts = new ArrayList<>();
    Masthead masthead = source.masthead();
    texts.add(masthead.title());
    texts.add(masthead.studio());
    texts.add(masthead.designer());
    texts.add(masthead.edition());
    List<TemplateText> templates = new ArrayList<>();
    templates.add(masthead.summary());
    templates.add(masthead.copyright());
    templates.add(masthead.note());
    source.materials().forEach(thing -> templates.add(thing.name()));
    source.hardware().forEach(thing -> templates.add(thing.name()));
    source
        .finished()
        .forEach(
            row -> {
              templates.add(row.label());
              templates.add(row.value());
            });
    source.pieces().forEach(piece -> templates.add(piece.name()));
    templates.stream().filter(Objects::nonNull).map(TemplateText::source).forEach(texts::add);
    source
        .steps()
        .forEach(
            step -> {
              texts.add(step.title());
              texts.add(step.stage());
              texts.add(step.body());
            });
    texts.removeIf(Objects::isNull);
    return texts;
  }
}
