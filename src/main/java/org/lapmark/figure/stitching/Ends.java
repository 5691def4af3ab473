package org.lapmark.figure.stitching;

/** What is done where stitching begins and ends. */
public enum Ends {
  /** Nothing that would have to be shown. */
  PLAIN,
  /** Some stitches back and forth. */
  BACKSTITCHED,
  /** Threads are knotted. */
  KNOTTED
}
