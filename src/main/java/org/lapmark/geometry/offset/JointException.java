package org.lapmark.geometry.offset;

/** A corner at which the {@link Joint} that is wanted can't be drawn. */
public final class JointException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Why it can't. */
  public enum Reason {
    /** The corner doesn't open: the moved lines cross, or run on into one another. */
    CLOSED,
    /** The side's line meets its neighbour's only far from the corner, or not at all. */
    FAR,
    /** The neighbour is too short to be mirrored over the whole depth. */
    SHORT,
    /** What is to be turned back has different depths at its ends. */
    UNEVEN
  }

  private final int side;
  private final Reason reason;

  JointException(int side, Reason reason) {
    super("joint after side " + side + ": " + reason);
    this.side = side;
    this.reason = reason;
  }

  /**
   * Where it is.
   *
   * @return the index of the side that ends at the corner
   */
  public int side() {
    return side;
  }

  /**
   * Why it can't be drawn.
   *
   * @return the reason
   */
  public Reason reason() {
    return reason;
  }
}
