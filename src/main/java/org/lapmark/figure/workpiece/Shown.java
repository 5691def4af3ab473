package org.lapmark.figure.workpiece;

/** What else is drawn of a piece. */
public enum Shown {
  STITCHING,
  NOTCHES,
  GRAIN,
  MARKS
}
