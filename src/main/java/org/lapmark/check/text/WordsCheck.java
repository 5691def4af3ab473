package org.lapmark.check.text;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.source.PatternSource;
import org.lapmark.source.Translation;

/** The words around the author's texts are in the language of the texts. */
public final class WordsCheck {
  public static final Rule<Written> RULE = new Rule<>(WordsCheck::run, CheckCode.WORDS_MISSING);

  private WordsCheck() {}

  static void run(Written written, Findings findings) {
    PatternSource source = written.source();
    Function<Locale, List<String>> lacking = written.added().lacking();
    check(
        source.masthead().language(),
        Position.ofFile(source.masthead().title().position().file()),
        lacking,
        findings);
    for (Translation translation : source.translations()) {
      check(translation.locale(), translation.position(), lacking, findings);
    }
  }

  private static void check(
      Locale language,
      Position position,
      Function<Locale, List<String>> lacking,
      Findings findings) {
    List<String> words = lacking.apply(language);
    if (!words.isEmpty()) {
      findings.add(
          CheckCode.WORDS_MISSING,
          position,
          "language",
          language.toLanguageTag(),
          "tag",
          language.getLanguage(),
          "count",
          words.size(),
          "name",
          words.get(0));
    }
  }
}
