package org.lapmark.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lapmark.finding.SourceText;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;

/** Every text of the author's that readers see. */
final class PrintedTexts {
  private PrintedTexts() {}

  /** Everything, as written. */
  static List<SourceText> all(PatternSource source) {
    List<SourceText> texts = new ArrayList<>();
    Masthead masthead = source.masthead();
    texts.add(masthead.studio());
    texts.add(masthead.designer());
    texts.add(masthead.edition());
    AuthorTexts.of(source).forEach(text -> texts.add(text.source()));
    source.steps().forEach(step -> texts.addAll(List.of(step.title(), step.stage(), step.body())));
    source.notes().forEach(note -> texts.add(note.body()));
    texts.removeIf(Objects::isNull);
    return texts;
  }

  static List<ThingSource> things(PatternSource source) {
    List<ThingSource> things = new ArrayList<>(source.materials());
    things.addAll(source.hardware());
    return things;
  }
}
