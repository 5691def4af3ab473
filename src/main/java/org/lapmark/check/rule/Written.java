package org.lapmark.check.rule;

import org.lapmark.source.PatternSource;

/**
 * A pattern as written, for rules that need no variant.
 *
 * @param source the pattern as read
 * @param added the words that documents add
 * @param sought the words that its texts are searched for
 */
public record Written(PatternSource source, AddedWords added, CareWords sought) {
  /**
   * The same where documents add nothing and nothing is searched for.
   *
   * @param source the pattern as read
   */
  public Written(PatternSource source) {
    this(source, AddedWords.NONE, CareWords.NONE);
  }
}
