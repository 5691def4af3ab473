package org.lapmark.source.key;

import java.util.Optional;
import java.util.regex.Pattern;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Names;
import org.lapmark.source.folder.UnseenCharacters;

/**
 * Looks at names that authors give.
 *
 * @param findings where problems go
 */
record NameCheck(Findings findings) {
  /** What figures, tables and labels have room for, in characters. */
  private static final int LONG_NAME = 60;

  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");

  /**
   * Reports a word that can't be a name.
   *
   * @param free whether formulas use the name by itself, so that it must not be one of their words
   */
  boolean check(SourceText name, boolean free) {
    String word = name.text();
    boolean formed = NAME.matcher(word).matches();
    if (formed && (!free || Names.isFree(word))) {
      checkBrief(name, word.length(), word.substring(0, Math.min(LONG_NAME, word.length())));
      return true;
    }
    Optional<Finding> unseen = UnseenCharacters.within(name.position());
    if (unseen.isPresent()) {
      findings.add(unseen.get());
    } else {
      findings.add(
          KeyCode.NAME_WRONG, name.position(), "name", word, "reserved", formed ? "yes" : "no");
    }
    return false;
  }

  /** Reports what is longer than the places where it is printed. */
  void checkBrief(SourceText text, int length, String key) {
    if (length > LONG_NAME) {
      findings.add(
          KeyCode.NAME_LONG,
          text.position(),
          "key",
          key,
          "length",
          Integer.toString(length),
          "limit",
          Integer.toString(LONG_NAME));
    }
  }
}
