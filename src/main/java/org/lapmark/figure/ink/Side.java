package org.lapmark.figure.ink;

/** Which side of cloth, or of a zip, faces the reader. */
public enum Side {
  /** The right side. */
  RIGHT,
  /** The wrong side. */
  WRONG
}
