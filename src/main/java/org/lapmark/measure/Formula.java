package org.lapmark.measure;

import java.util.Set;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;

/** A parsed formula that remembers where each of its parts stands. Immutable. */
public final class Formula {
  private final SourceText text;

  private Formula(SourceText text) {
    this.text = text;
  }

  /**
   * Parses a formula.
   *
   * @param text the formula as written
   * @return the formula
   * @throws FindingException at the first character that can't be understood, or when a limit is
   *     passed
   */
  public static Formula parse(SourceText text) {
    return new Formula(text);
  }

  /**
   * The formula as written.
   *
   * @return the text with its place
   */
  public SourceText text() {
    return text;
  }

  /**
   * The names it asks for, without those of geometry functions' references.
   *
   * @return names in the order of their first appearance
   */
  public Set<String> names() {
    throw new UnsupportedOperationException();
  }

  /**
   * Computes the formula.
   *
   * @param scope what names and geometry functions stand for
   * @return the value
   * @throws FindingException at the part that can't be computed: unlike dimensions, a division by
   *     zero, whatever the scope throws
   */
  public Value evaluate(Scope scope) {
    throw new UnsupportedOperationException();
  }
}
