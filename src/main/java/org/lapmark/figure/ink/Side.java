package org.lapmark.figure.ink;

/** Which side of cloth, or of a zip, faces the reader. */
public enum Side {
  /** The right side. */
  RIGHT,
  /** The wrong side. */
  WRONG;

  /** The side that is seen when it is turned over. */
  public Side other() {
    return this == RIGHT ? WRONG : RIGHT;
  }
}
