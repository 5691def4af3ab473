package org.lapmark.check.text;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PatternSource;
import org.lapmark.text.PlainText;

/** Every character of the author's texts can be printed. */
public final class GlyphCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(GlyphCheck::run, CheckCode.TEXT_GLYPH_MISSING);

  /**
   * Characters written in another way: by a name or number in Markdown, or a number in a figure.
   */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "&(?:#[0-9]{1,7}|#[xX][0-9a-fA-F]{1,6}|[A-Za-z][A-Za-z0-9]{1,31});"
              + "|\\\\u[0-9a-fA-F]{4}|\\\\U[0-9a-fA-F]{8}");

  private GlyphCheck() {}

  static void run(Evaluated evaluated, Findings findings) {
    PatternSource source = evaluated.source();
    DocumentLimits reach = evaluated.reach();
    for (SourceText text : PrintedTexts.all(source)) {
      List<String> missing = reach.missing().apply(text.text());
      if (!missing.isEmpty()) {
        report(text, missing, findings);
      }
    }
    for (SourceText body : PrintedTexts.markdown(source)) {
      Matcher matcher = WRITTEN.matcher(body.text());
      while (matcher.find()) {
        List<String> missing = reach.missing().apply(meant(matcher.group()));
        if (!missing.isEmpty()) {
          report(
              body.part(matcher.start(), matcher.end()),
              matcher.group().length(),
              missing,
              findings);
        }
      }
    }
  }

  private static String meant(String written) {
    if (written.startsWith("&")) {
      return PlainText.ofEntity(written);
    }
    int point = (int) Long.parseLong(written.substring(2), 16);
    return Character.isValidCodePoint(point) ? Character.toString(point) : "";
  }

  private static void report(SourceText text, List<String> missing, Findings findings) {
    int at = text.text().length();
    int length = 0;
    for (String character : missing) {
      int first = text.text().indexOf(character);
      if (first >= 0 && first < at) {
        at = first;
        length = character.length();
      }
    }
    report(text.part(at, text.text().length()), length, missing, findings);
  }

  private static void report(SourceText from, int length, List<String> missing, Findings findings) {
    findings.add(
        CheckCode.TEXT_GLYPH_MISSING,
        from.position(0, length),
        "count",
        missing.size(),
        "characters",
        String.join(" ", missing));
  }
}
