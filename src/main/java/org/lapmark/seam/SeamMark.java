package org.lapmark.seam;

import org.lapmark.panel.NotchSet;

/**
 * A place along a side by which it is matched to its partners.
 *
 * @param kind what is there
 * @param at millimetres along the side from the seam's start, as sewn
 * @param set how many notches, with which gaps in the order of sewing; for a join, a tab or a dart,
 *     what a partner should have there
 * @param name the line that carries the notch, the part that begins at the join, or the tab
 */
public record SeamMark(Kind kind, double at, NotchSet set, String name) {
  /**
   * A mark with equal gaps.
   *
   * @param kind what is there
   * @param at millimetres from the seam's start
   * @param count how many notches
   * @param name what it belongs to
   */
  public SeamMark(Kind kind, double at, int count, String name) {
    this(kind, at, NotchSet.of(count), name);
  }

  /**
   * How many notches stand there, or are wanted there.
   *
   * @return their number
   */
  public int count() {
    return set.count();
  }

  /** What is there. */
  public enum Kind {
    /** A notch. */
    NOTCH,
    /** The end of one part and the beginning of the next. */
    JOIN,
    /** The middle of something caught in the seam. */
    TAB,
    /** Where a dart or a pleat is closed. */
    DART
  }
}
