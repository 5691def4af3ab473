package org.lapmark.grade;

import org.lapmark.finding.Findings;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;

/** Evaluates a pattern in a variant. */
public final class Grader {
  private Grader() {}

  /**
   * Evaluates everything that can be evaluated.
   *
   * @param source the pattern as read
   * @param variant the variant
   * @param findings where problems go
   * @return the pattern; what couldn't be evaluated is missing
   */
  public static GradedPattern grade(PatternSource source, Variant variant, Findings findings) {
    throw new UnsupportedOperationException();
  }
}
