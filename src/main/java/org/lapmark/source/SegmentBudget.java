package org.lapmark.source;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;

/** Counts the path segments of one drawing. */
final class SegmentBudget {
  private final int limit;
  private int used;

  SegmentBudget(int limit) {
    this.limit = limit;
  }

  /** Whether one more segment may be read; counts it. */
  boolean take() {
    return ++used <= limit;
  }

  FindingException fault(Position position) {
    return new FindingException(
        Finding.of(SourceCode.PATH_TOO_LONG, position, "limit", Integer.toString(limit)));
  }
}
