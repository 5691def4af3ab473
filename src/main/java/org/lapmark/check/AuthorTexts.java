package org.lapmark.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;

/** Every text of the author's that readers see. */
final class AuthorTexts {
  private AuthorTexts() {}

  /** Texts with placeholders; steps and notes aside. */
  static List<TemplateText> templates(PatternSource source) {
    Masthead masthead = source.masthead();
    List<TemplateText> texts = new ArrayList<>();
    texts.add(masthead.summary());
    texts.add(masthead.copyright());
    texts.add(masthead.note());
    things(source).forEach(thing -> texts.add(thing.name()));
    things(source).forEach(thing -> texts.addAll(thing.texts().values()));
    source.finished().forEach(row -> texts.addAll(List.of(row.label(), row.value())));
    source.pieces().forEach(piece -> texts.add(piece.name()));
    texts.addAll(source.making().texts().values());
    source.making().tools().forEach(tool -> texts.add(tool.name()));
    texts.add(source.making().loadLimit());
    texts.removeIf(Objects::isNull);
    return texts;
  }

  /** Everything, as written. */
  static List<SourceText> all(PatternSource source) {
    List<SourceText> texts = new ArrayList<>();
    Masthead masthead = source.masthead();
    texts.add(masthead.title());
    texts.add(masthead.studio());
    texts.add(masthead.designer());
    texts.add(masthead.edition());
    templates(source).forEach(text -> texts.add(text.source()));
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
