package org.lapmark.source.drawing;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;

/**
 * Counts the path segments of one drawing. A long text counts for more, however little it draws: a
 * drawing that repeats it has to read it again.
 */
final class SegmentBudget {
  private static final int CHARACTERS = 1000;

  private final int limit;
  private int used;

  SegmentBudget(int limit) {
    this.limit = limit;
  }

  /** Whether one more segment may be read; counts it. */
  boolean take() {
    return ++used <= limit;
  }

  /** Counts a text that is about to be read. */
  void read(SourceText text) {
    used += text.text().length() / CHARACTERS;
    if (used > limit) {
      throw fault(text.position(0, 1));
    }
  }

  /** Whether more was read than there was. */
  boolean isSpent() {
    return used > limit;
  }

  FindingException fault(Position position) {
    return new FindingException(
        Finding.of(DrawingCode.PATH_TOO_LONG, position, "limit", Integer.toString(limit)));
  }
}
