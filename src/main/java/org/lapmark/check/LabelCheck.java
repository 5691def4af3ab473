package org.lapmark.check;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.source.PatternSource;
import org.lapmark.source.Translation;

/** Every character of the words and dates that documents add to the author's can be printed. */
record LabelCheck(
    Function<Locale, Map<String, String>> labels,
    BiFunction<LocalDate, Locale, String> dates,
    Function<String, List<String>> missing,
    Findings findings) {
  void run(PatternSource source) {
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
    String date = dates.apply(source.masthead().date(), language);
    List<String> unprinted = missing.apply(date);
    if (!unprinted.isEmpty()) {
      report(datePlace, "date", date, "", 0, unprinted);
    }
    Set<String> signs = new LinkedHashSet<>();
    String first = null;
    int others = -1;
    for (Map.Entry<String, String> label : labels.apply(language).entrySet()) {
      List<String> own = missing.apply(label.getValue());
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
