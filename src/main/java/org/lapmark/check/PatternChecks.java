package org.lapmark.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.source.PatternSource;

/** All rules, in order. */
public final class PatternChecks {
  private PatternChecks() {}

  /**
   * Holds a pattern as read against the rules that need no variant.
   *
   * @param source the pattern as read
   * @param lacking the words that the templates don't have in a language
   * @param findings where breaches go
   */
  public static void run(
      PatternSource source, Function<Locale, List<String>> lacking, Findings findings) {
    TranslationCheck.run(source, findings);
    WordsCheck.run(source, lacking, findings);
    ToolCheck.run(source, findings);
    UnusedCheck.run(source, findings);
    BracesCheck.run(source, findings);
  }

  /**
   * Holds the words that documents add of themselves, in every language of the pattern, against the
   * signs that the fonts have.
   *
   * @param source the pattern as read
   * @param labels the labels of a language, by name
   * @param dates how a date is printed in a language
   * @param missing gives the characters of a text that can't be printed, each once
   * @param findings where breaches go
   */
  public static void labels(
      PatternSource source,
      Function<Locale, Map<String, String>> labels,
      BiFunction<LocalDate, Locale, String> dates,
      Function<String, List<String>> missing,
      Findings findings) {
    new LabelCheck(labels, dates, missing, findings).run(source);
  }

  /**
   * Holds a pattern against every rule.
   *
   * @param pattern the pattern in one variant
   * @param reach what the documents can do
   * @param findings where breaches go
   */
  public static void run(GradedPattern pattern, Reach reach, Findings findings) {
    LikenessCheck.run(pattern, TextCheck.run(pattern, reach, findings), findings);
    HazardCheck.run(pattern.source(), reach, findings);
    GlyphCheck.run(pattern.source(), reach, findings);
    PropertyCheck.run(pattern, findings);
    PieceNames.run(pattern, findings);
    IronCheck.run(pattern, reach, findings);
    LayerCheck.run(pattern, findings);
  }

  /**
   * Holds a pattern's sizes against each other, separately for each choice of options: where the
   * measures of the size table have an order, the lengths of edges have one too.
   *
   * @param patterns the pattern in several variants, in any order
   * @param findings where breaches go
   */
  public static void acrossSizes(List<GradedPattern> patterns, Findings findings) {
    if (patterns.isEmpty() || patterns.get(0).source().sizes() == null) {
      return;
    }
    List<String> sizes = patterns.get(0).source().sizes().sizes();
    Map<Map<String, String>, List<GradedPattern>> byChoice = new LinkedHashMap<>();
    for (GradedPattern pattern : patterns) {
      byChoice
          .computeIfAbsent(pattern.variant().choices(), unused -> new ArrayList<>())
          .add(pattern);
    }
    for (List<GradedPattern> row : byChoice.values()) {
      row.sort(Comparator.comparingInt(pattern -> sizes.indexOf(pattern.variant().size())));
      SizeOrder.run(row, findings);
      LikenessCheck.acrossSizes(row, findings);
    }
  }
}
