package org.lapmark.check.text;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.lapmark.check.rule.AddedWords;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.source.PatternSource;
import org.lapmark.source.Translation;

/** Every character of the words and dates that documents add to the author's can be printed. */
public record LabelCheck(AddedWords added, Findings findings) {
  public static final Rule<Written> RULE =
      new Rule<>(LabelCheck::run, CheckCode.LABEL_GLYPH_MISSING);

  static void run(Written written, Findings findings) {
    new LabelCheck(written.added(), findings).check(written.source());
  }

  private void check(PatternSource source) {
    check(
        source,
        source.masthead().language(),
        source.masthead().languagePlace(),
        source.masthead().datePlace());
    for (Translation translation : source.translations()) {
      check(source, translation.locale(), translation.position(), translation.position());
    }
  }

  private void check(PatternSource source, Locale language, Position place, Position datePlace) {
    String date = added.dates().apply(source.masthead().date(), language);
    List<String> unprinted = added.missing().apply(date);
    if (!unprinted.isEmpty()) {
      report(datePlace, "date", date, "", 0, unprinted);
    }
    Set<String> signs = new LinkedHashSet<>();
    String first = null;
    int others = -1;
    for (Map.Entry<String, String> label : added.labels().apply(language).entrySet()) {
      List<String> own = added.missing().apply(label.getValue());
      if (!own.isEmpty()) {
        signs.addAll(own);
        others++;
        first = first == null ? label.getKey() : first;
      }
    }
    if (first != null) {
      report(place, "label", "", first, others, signs);
    }
  }

  private void report(
      Position place, String kind, String text, String name, int others, Iterable<String> signs) {
    findings.add(
        CheckCode.LABEL_GLYPH_MISSING,
        place,
        "kind",
        kind,
        "text",
        text,
        "name",
        name,
        "others",
        others,
        "characters",
        String.join(" ", signs));
  }
}
