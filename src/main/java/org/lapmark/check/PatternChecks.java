package org.lapmark.check;

import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;

/** All rules, in order. */
public final class PatternChecks {
  private PatternChecks() {}

  /**
   * Holds a pattern against every rule.
   *
   * @param pattern the pattern in one variant
   * @param findings where breaches go
   */
  public static void run(GradedPattern pattern, Findings findings) {
    TextCheck.run(pattern, findings);
  }
}
