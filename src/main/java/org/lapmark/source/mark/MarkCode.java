package org.lapmark.source.mark;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with marks as they are stated. */
public enum MarkCode implements FindingCode {
  /** A mark whose place is stated in no way that it can be. */
  MARK_STATEMENT,
  /** A drawn pleat of which nothing is stated. */
  PLEAT_UNSTATED,
  /** A side to which something is laid that lies to both. */
  MARK_TOWARDS_IDLE,
  /** A corner that is neither where an edge begins nor where it ends. */
  MARK_TOWARDS,
  /** A line whose end lies before its beginning. */
  MARK_BACKWARDS,
  /** A mark before its edge's or line's start or past its end. */
  MARK_BEYOND_EDGE,
  /** A line that begins where it ends. */
  MARK_WITHOUT_LENGTH,
  /** A line at a distance from its edge for which the panel has no room. */
  MARK_TOO_DEEP,
  /** A line for a row of marks that the panel doesn't have. */
  MARK_LINE_UNKNOWN;

  @Override
  public Severity severity() {
    return this == MARK_TOWARDS_IDLE ? Severity.WARNING : Severity.ERROR;
  }
}
