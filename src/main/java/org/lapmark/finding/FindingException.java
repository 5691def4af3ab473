package org.lapmark.finding;

import java.util.Objects;

/**
 * Ends a computation that cannot go on because of the author's input; whoever collects findings
 * catches it and goes on with the next value. It never reaches a user as an exception.
 */
public final class FindingException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient Finding finding;

  /**
   * Carries a finding.
   *
   * @param finding what is wrong
   */
  public FindingException(Finding finding) {
    super(finding.code().id(), null, false, false);
    this.finding = Objects.requireNonNull(finding);
  }

  /**
   * What is wrong.
   *
   * @return the finding
   */
  public Finding finding() {
    return finding;
  }
}
