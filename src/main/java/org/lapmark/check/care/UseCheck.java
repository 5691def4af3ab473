package org.lapmark.check.care;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.Phrases;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.UseSource;

/** What the article is for, and for whom, is said where it calls for care. */
public final class UseCheck {
  public static final Rule<Written> RULE =
      new Rule<>(
          UseCheck::run,
          CareCode.USE_HAZARD_MISSING,
          CareCode.LOAD_CAUTION_MISSING,
          CareCode.LOAD_LIMIT_MISSING,
          CareCode.AGES_MISSING);

  private static final String LOAD = "load";

  /** Two whole years or months, the second not far from the first. */
  private static final Pattern RANGE = Pattern.compile("([0-9]{1,2}) ?[-–/] ?([0-9]{1,2})");

  private static final int OLDEST = 16;

  /** Months that clothes for babies are sized by. */
  private static final Set<String> MONTHS =
      new LinkedHashSet<>(
          List.of("0-3", "3-6", "6-9", "6-12", "9-12", "12-18", "12-24", "18-24", "24-36"));

  private UseCheck() {}

  static void run(Written written, Findings findings) {
    PatternSource source = written.source();
    CareWords words = written.sought();
    UseSource use = source.making().use();
    load(use, findings);
    List<SourceText> described = described(source.masthead());
    Set<String> stated = new LinkedHashSet<>();
    use.stated().forEach(hazard -> stated.add(hazard.text()));
    PrintedTexts.things(source).forEach(thing -> stated.addAll(thing.care().nature()));
    if (use.because() == null) {
      words
          .uses()
          .forEach(
              (hazard, phrases) -> {
                if (!stated.contains(hazard)) {
                  useMissing(hazard, phrases, described, findings);
                }
              });
    }
    if (!use.saysAges()) {
      ages(source, words, described, findings);
    }
  }

  private static List<SourceText> described(Masthead masthead) {
    List<SourceText> texts = new ArrayList<>();
    texts.add(masthead.title());
    if (masthead.summary() != null) {
      texts.add(masthead.summary().source());
    }
    return texts;
  }

  private static void load(UseSource use, Findings findings) {
    List<SourceText> loads =
        use.stated().stream().filter(hazard -> hazard.text().equals(LOAD)).toList();
    if (use.loadLimit() != null && loads.isEmpty()) {
      findings.add(CareCode.LOAD_CAUTION_MISSING, use.loadLimit().source().position());
    }
    if (use.loadLimit() == null && !loads.isEmpty()) {
      findings.add(CareCode.LOAD_LIMIT_MISSING, loads.get(0).position());
    }
  }

  private static void useMissing(
      String hazard, Phrases phrases, List<SourceText> texts, Findings findings) {
    for (SourceText text : texts) {
      for (Phrases.Span span : phrases.all(text.text())) {
        findings.add(
            CareCode.USE_HAZARD_MISSING,
            text.position(span.start(), span.end()),
            "word",
            text.text().substring(span.start(), span.end()),
            "hazard",
            hazard);
        return;
      }
    }
  }

  private static void ages(
      PatternSource source, CareWords words, List<SourceText> described, Findings findings) {
    if (source.sizes() != null) {
      for (String size : source.sizes().sizes()) {
        if (isAge(size) || words.list("age.size.sought").in(size)) {
          findings.add(
              CareCode.AGES_MISSING,
              source.masthead().title().position(),
              "by",
              "size",
              "word",
              size);
          return;
        }
      }
    }
    for (SourceText text : described) {
      for (Phrases.Span span : words.list("age.article.sought").all(text.text())) {
        findings.add(
            CareCode.AGES_MISSING,
            text.position(span.start(), span.end()),
            "by",
            "text",
            "word",
            text.text().substring(span.start(), span.end()));
        return;
      }
    }
  }

  /** Such as 3-4, but not 10-12, as clothes for grown-ups are sized, nor 39-40, as socks are. */
  private static boolean isAge(String size) {
    var range = RANGE.matcher(size);
    if (!range.matches()) {
      return false;
    }
    int from = Integer.parseInt(range.group(1));
    int to = Integer.parseInt(range.group(2));
    return MONTHS.contains(from + "-" + to) || to == from + 1 && to <= OLDEST;
  }
}
