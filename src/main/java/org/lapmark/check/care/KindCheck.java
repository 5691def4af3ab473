package org.lapmark.check.care;

import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.Phrases;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.CareSource;
import org.lapmark.source.PatternSource;

/** What sounds like a hazardous kind says what it is. */
public final class KindCheck {
  public static final Rule<Written> RULE = new Rule<>(KindCheck::run, CareCode.KIND_MISSING);

  private KindCheck() {}

  static void run(Written written, Findings findings) {
    PatternSource source = written.source();
    CareWords words = written.sought();
    source.making().tools().forEach(tool -> check(tool.name(), tool.care(), true, words, findings));
    PrintedTexts.things(source)
        .forEach(thing -> check(thing.name(), thing.care(), false, words, findings));
  }

  private static void check(
      TemplateText name, CareSource care, boolean tool, CareWords words, Findings findings) {
    if (care.isSaid()) {
      return;
    }
    String text = spoken(name.source().text());
    words
        .soundsLike(text, tool)
        .ifPresent(
            kind -> {
              Phrases.Span span = words.ofKind(kind).first(text).orElseThrow();
              findings.add(
                  CareCode.KIND_MISSING,
                  name.source().position(span.start(), span.end()),
                  "name",
                  text.substring(span.start(), span.end()),
                  "kind",
                  kind.id());
            });
  }

  /** A name that was made from an id reads like words; every character keeps its place. */
  private static String spoken(String name) {
    return name.replace('_', ' ');
  }
}
