package org.lapmark.check;

import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.source.PatternSource;

/** All rules about care: which hazards a pattern has without saying so. */
public final class CareChecks {
  private CareChecks() {}

  /**
   * Holds a pattern as read against the rules that need no variant.
   *
   * @param source the pattern as read
   * @param words the words that its texts are searched for
   * @param findings where breaches go
   */
  public static void run(PatternSource source, CareWords words, Findings findings) {
    KindCheck.run(source, words, findings);
    UseCheck.run(source, words, findings);
  }

  /**
   * Holds a pattern in one variant against the rules.
   *
   * @param pattern the pattern in one variant
   * @param words the words that its texts are searched for
   * @param findings where breaches go
   */
  public static void run(GradedPattern pattern, CareWords words, Findings findings) {
    new ChildCheck(pattern, words, findings).run();
    new TaskCheck(pattern.source(), words, findings).run();
  }
}
