package org.lapmark.check.rule;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.SourceText;

/** The author's sentences in a step or a note, every character in its place. */
public final class Prose {
  /** Figures, and the lines that open and close boxes and passages. */
  private static final Pattern FENCES =
      Pattern.compile(
          "(?ms)^ {0,3}(`{3,}|~{3,}) *figure\\b.*?(?:^ {0,3}\\1[`~]* *$|\\z)"
              + "|^ {0,3}(?:`{3,}|~{3,})[^\\n]*$");

  /** Code, placeholders, and where references lead. */
  private static final Pattern INLINE =
      Pattern.compile("`[^`\\n]*`|\\{[^{}\\n]*\\}|\\]\\([^()\\s]*\\)");

  private Prose() {}

  /**
   * The text with blanks in place of all that isn't a sentence.
   *
   * @param body Markdown
   * @return as long as the body
   */
  public static String of(SourceText body) {
    StringBuilder prose = new StringBuilder(body.text());
    blank(FENCES, prose);
    blank(INLINE, prose);
    return prose.toString();
  }

  private static void blank(Pattern pattern, StringBuilder prose) {
    Matcher matcher = pattern.matcher(prose.toString());
    while (matcher.find()) {
      for (int i = matcher.start(); i < matcher.end(); i++) {
        if (prose.charAt(i) != '\n') {
          prose.setCharAt(i, ' ');
        }
      }
    }
  }
}
