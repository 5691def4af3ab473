package org.lapmark.check.text;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.NoteSource;
import org.lapmark.source.OriginalMark;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.Translation;
import org.lapmark.source.key.Passages;
import org.lapmark.text.Targets;
import org.lapmark.text.markdown.ManuscriptReader;

/** A translation says what its original says now, and prints the same values. */
public final class TranslationCheck {
  public static final Rule<Written> RULE =
      new Rule<>(
          TranslationCheck::run,
          CheckCode.TRANSLATION_MISSING,
          CheckCode.TRANSLATION_OUTDATED,
          CheckCode.TRANSLATION_TWICE,
          CheckCode.TRANSLATION_PLACEHOLDERS);

  private final PatternSource source;
  private final Translation translation;
  private final Findings findings;
  private final String language;

  private TranslationCheck(PatternSource source, Translation translation, Findings findings) {
    this.source = source;
    this.translation = translation;
    this.findings = findings;
    this.language = translation.locale().toLanguageTag();
  }

  static void run(Written written, Findings findings) {
    PatternSource source = written.source();
    for (Translation translation : source.translations()) {
      TranslationCheck check = new TranslationCheck(source, translation, findings);
      check.texts();
      check.steps();
      check.notes();
    }
  }

  private void texts() {
    Map<String, TemplateText> originals = new LinkedHashMap<>();
    for (TemplateText text : AuthorTexts.of(source)) {
      if (text.source().text().codePoints().anyMatch(Character::isLetter)) {
        originals.put(text.source().text(), text);
      }
    }
    Map<String, Translation.TranslatedText> translated = new LinkedHashMap<>();
    for (Translation.TranslatedText text : translation.texts()) {
      TemplateText original = originals.get(text.from().text());
      if (original == null) {
        outdated(
            text.from().position(),
            "text",
            NearestWord.of(text.from().text(), originals.keySet()).orElse(""),
            "");
        continue;
      }
      Translation.TranslatedText first = translated.putIfAbsent(text.from().text(), text);
      if (first != null && !first.to().source().text().equals(text.to().source().text())) {
        findings.add(
            CheckCode.TRANSLATION_TWICE,
            text.from().position(),
            "line",
            Integer.toString(first.from().position().line()),
            "first",
            first.to().source().text());
      }
      compare(expressions(original), expressions(text.to()), text.to().source());
    }
    originals.forEach(
        (words, text) -> {
          // What consists of values alone reads the same in every language.
          if (!translated.containsKey(words) && hasWords(text)) {
            missing(text.source().position(), "text", "");
          }
        });
  }

  private static boolean hasWords(TemplateText text) {
    return text.made(words -> words, placeholder -> "").stream()
        .anyMatch(words -> words.codePoints().anyMatch(Character::isLetter));
  }

  private static Set<String> expressions(TemplateText text) {
    Set<String> expressions = new TreeSet<>();
    for (TemplateText.Placeholder placeholder : text.placeholders()) {
      expressions.add(placeholder.formula().text().text().replaceAll("\\s+", " ").strip());
    }
    return expressions;
  }

  private void steps() {
    Map<String, StepSource> originals = new LinkedHashMap<>();
    source.steps().forEach(step -> originals.put(step.id().text(), step));
    for (Translation.TranslatedStep step : translation.steps()) {
      StepSource original = originals.remove(step.step().id().text());
      if (original == null) {
        outdated(step.step().id().position(), "gone", "", "");
      } else {
        compare(original.body(), step.step().body(), step.mark());
      }
    }
    originals.values().forEach(step -> missing(step.body(), "steps/", step.title().position()));
  }

  private void notes() {
    Map<String, NoteSource> originals = new LinkedHashMap<>();
    source.notes().forEach(note -> originals.put(note.name(), note));
    for (Translation.TranslatedNote note : translation.notes()) {
      NoteSource original = originals.remove(note.note().name());
      if (original == null) {
        outdated(note.mark().position(), "gone", "", "");
      } else {
        compare(original.body(), note.note().body(), note.mark());
      }
    }
    originals.values().forEach(note -> missing(note.body(), "notes/", note.body().position(0, 1)));
  }

  private void compare(SourceText original, SourceText there, SourceText mark) {
    String now = OriginalMark.of(original);
    if (!now.equals(mark.text())) {
      outdated(mark.position(), "file", "", now);
    }
    // What is wrong with the texts themselves is found where they are read to be printed.
    Findings ignored = new Findings();
    compare(
        expressions(original, ignored),
        expressions(there, ignored),
        there.part(0, Math.min(1, there.text().length())));
  }

  /** Those of every passage, whichever variants have it. */
  private static Set<String> expressions(SourceText body, Findings ignored) {
    SourceText whole = Passages.select(body, condition -> true);
    return ManuscriptReader.read(whole, Targets.NONE, ignored).expressions();
  }

  private void compare(Set<String> original, Set<String> there, SourceText place) {
    if (!original.equals(there)) {
      findings.add(
          CheckCode.TRANSLATION_PLACEHOLDERS,
          place.position(),
          "here",
          named(original),
          "there",
          named(there));
    }
  }

  private static String named(Set<String> expressions) {
    return expressions.isEmpty() ? "no value" : String.join(", ", expressions);
  }

  private void missing(SourceText body, String folder, Position position) {
    String file = body.file().name();
    missing(position, folder + file.substring(file.lastIndexOf('/') + 1), OriginalMark.of(body));
  }

  private void missing(Position position, String kind, String mark) {
    findings.add(
        CheckCode.TRANSLATION_MISSING, position, "language", language, "kind", kind, "mark", mark);
  }

  private void outdated(Position position, String kind, String nearest, String mark) {
    findings.add(
        CheckCode.TRANSLATION_OUTDATED,
        position,
        "kind",
        kind,
        "near",
        nearest.isEmpty() ? "no" : "yes",
        "nearest",
        nearest,
        "mark",
        mark);
  }
}
