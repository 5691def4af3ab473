package org.lapmark.check.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lapmark.finding.SourceText;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.Translation;

/** Every text of the author's that readers see. */
public final class PrintedTexts {
  private PrintedTexts() {}

  /** Everything, as written. */
  public static List<SourceText> all(PatternSource source) {
    List<SourceText> texts = new ArrayList<>();
    Masthead masthead = source.masthead();
    texts.add(masthead.studio());
    texts.add(masthead.designer());
    texts.add(masthead.edition());
    AuthorTexts.of(source).forEach(text -> texts.add(text.source()));
    if (source.sizes() != null) {
      texts.addAll(source.sizes().heads());
    }
    for (Translation translation : source.translations()) {
      translation.texts().forEach(text -> texts.add(text.to().source()));
    }
    for (StepSource step : steps(source)) {
      texts.add(step.title());
      texts.add(step.stage());
    }
    texts.addAll(markdown(source));
    texts.removeIf(Objects::isNull);
    return texts;
  }

  /** Those that are Markdown, in every language. */
  public static List<SourceText> markdown(PatternSource source) {
    List<SourceText> texts = new ArrayList<>();
    steps(source).forEach(step -> texts.add(step.body()));
    source.notes().forEach(note -> texts.add(note.body()));
    for (Translation translation : source.translations()) {
      translation.notes().forEach(note -> texts.add(note.note().body()));
    }
    return texts;
  }

  private static List<StepSource> steps(PatternSource source) {
    List<StepSource> steps = new ArrayList<>(source.steps());
    for (Translation translation : source.translations()) {
      translation.steps().forEach(step -> steps.add(step.step()));
    }
    return steps;
  }

  public static List<ThingSource> things(PatternSource source) {
    List<ThingSource> things = new ArrayList<>(source.materials());
    things.addAll(source.hardware());
    return things;
  }
}
