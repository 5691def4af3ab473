package org.lapmark.check.text;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.FinishedSource;
import org.lapmark.source.PatternSource;

/**
 * What is the name of a value stands in braces, or makers read the name. A word of letters alone
 * may be a word, and so only names are found that have an underscore, or a dot as a property has;
 * as a finished measurement anything that can be computed.
 */
public final class BracesCheck {
  public static final Rule<Written> RULE = new Rule<>(BracesCheck::run, CheckCode.VALUE_UNBRACED);

  private static final Pattern NAME =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}_.\\\\/-])([a-z][a-z0-9]*(?:_[a-z0-9]+)+|[a-z][a-z0-9_]*\\.[a-z][a-z0-9_]*)"
              + "(?![\\p{L}\\p{N}_(/]|\\.[\\p{L}\\p{N}])");

  /** What is no running text: placeholders, figures, conditions, code, addresses. */
  private static final Pattern APART =
      Pattern.compile(
          "(?ms)\\{[^{}]*\\}|^ *(`{3,}|~{3,}) *figure.*?^ *\\1|^ *(?:`{3,}|~{3,}).*?$|`[^`\\n]*`"
              + "|\\]\\([^)]*\\)|<[^>]*>");

  private final Findings findings;
  private final Set<String> names = new LinkedHashSet<>();

  private BracesCheck(PatternSource source, Findings findings) {
    this.findings = findings;
    if (source.sizes() != null) {
      source.sizes().rows().forEach(row -> names.add(row.name()));
    }
    source.measures().forEach(measure -> names.add(measure.name().text()));
    PrintedTexts.things(source)
        .forEach(
            thing ->
                thing
                    .properties()
                    .keySet()
                    .forEach(property -> names.add(thing.id().text() + '.' + property)));
  }

  static void run(Written written, Findings findings) {
    PatternSource source = written.source();
    BracesCheck check = new BracesCheck(source, findings);
    Set<SourceText> told = new LinkedHashSet<>();
    for (FinishedSource row : source.finished()) {
      if (check.isFormula(row.value())) {
        told.add(row.value().source());
        check.report(row.value().source());
      }
    }
    for (SourceText text : PrintedTexts.all(source)) {
      if (!told.contains(text)) {
        check.names(text);
      }
    }
  }

  /** Whether a text is a formula as a whole, and asks for something. */
  private boolean isFormula(TemplateText text) {
    if (text.parts().stream().anyMatch(TemplateText.Placeholder.class::isInstance)) {
      return false;
    }
    try {
      Set<String> asked = Formula.parse(text.source()).names();
      return asked.isEmpty()
          ? text.source().text().matches(".*[a-z_]\\(.*")
          : names.containsAll(asked);
    } catch (FindingException e) {
      return false;
    }
  }

  private void names(SourceText text) {
    StringBuilder words = new StringBuilder(text.text());
    Matcher apart = APART.matcher(text.text());
    while (apart.find()) {
      for (int i = apart.start(); i < apart.end(); i++) {
        words.setCharAt(i, ' ');
      }
    }
    Matcher matcher = NAME.matcher(words);
    while (matcher.find()) {
      if (names.contains(matcher.group(1)) && !isAtBrace(words, matcher)) {
        report(text.part(matcher.start(1), matcher.end(1)));
      }
    }
  }

  /** Whether a name stands behind a brace that is never closed, or before one never opened. */
  private static boolean isAtBrace(CharSequence words, Matcher name) {
    int before = name.start(1) - 1;
    while (before >= 0 && words.charAt(before) != '\n' && words.charAt(before) != '{') {
      before--;
    }
    int after = name.end(1);
    while (after < words.length() && words.charAt(after) == ' ') {
      after++;
    }
    boolean opened =
        before >= 0
            && words.charAt(before) == '{'
            && (before == 0 || words.charAt(before - 1) != '\\');
    return opened || after < words.length() && words.charAt(after) == '}';
  }

  private void report(SourceText name) {
    findings.add(CheckCode.VALUE_UNBRACED, name.position(), "text", name.text());
  }
}
