package org.lapmark.source.key;

/**
 * The identity of something that a source states, apart from where it stands: a line more or less
 * above it, or its keys in another order, leave it as it is.
 *
 * @param kind what it is
 * @param owner the name of what it belongs to; empty for what stands by itself
 * @param name its name; of what has none, its place among its like
 */
public record Ref(Kind kind, String owner, String name) {
  /** What can be named. */
  public enum Kind {
    /** A measure. */
    MEASURE,
    /** A material, hardware or a tool; they share their names. */
    THING,
    /** A panel. */
    PANEL,
    /** An edge of a panel. */
    EDGE,
    /** A notch of a panel, or several stated together. */
    NOTCH,
    /** Another mark of a panel. */
    MARK,
    /** A slash of a panel. */
    SLASH,
    /** A piece, by its number. */
    PIECE,
    /** A cut of a piece. */
    CUT,
    /** An edge's allowance of a piece. */
    ALLOWANCE,
    /** A seam. */
    SEAM,
    /** Something sewn along edges. */
    TRIM,
    /** Something attached at a place. */
    ATTACHMENT,
    /** A row of the finished measurements. */
    FINISHED,
    /** A step. */
    STEP,
    /** A passage of a text, by its file. */
    PASSAGE
  }

  /** What stands by itself. */
  public static Ref of(Kind kind, String name) {
    return new Ref(kind, "", name);
  }

  /** What belongs to this. */
  public Ref inside(Kind inner, String innerName) {
    return new Ref(inner, name, innerName);
  }

  /** What belongs to this and has no name. */
  public Ref inside(Kind inner, int nth) {
    return inside(inner, Integer.toString(nth));
  }
}
