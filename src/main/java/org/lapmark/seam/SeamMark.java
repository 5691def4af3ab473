package org.lapmark.seam;

/**
 * A place along a side by which it is matched to its partners.
 *
 * @param kind what is there
 * @param at millimetres along the side from the seam's start, as sewn
 * @param count 1 for a single notch, 2 for a double one; for a join or a tab, what a partner should
 *     have there
 * @param name the line that carries the notch, the part that begins at the join, or the tab
 */
public record SeamMark(Kind kind, double at, int count, String name) {
  /** What is there. */
  public enum Kind {
    /** A notch. */
    NOTCH,
    /** The end of one part and the beginning of the next. */
    JOIN,
    /** The middle of something caught in the seam. */
    TAB
  }

  SeamMark movedTo(double place) {
    return new SeamMark(kind, place, count, name);
  }
}
