package org.lapmark.figure.flat;

/** What else is drawn of a piece. */
enum Shown {
  STITCHING,
  NOTCHES,
  GRAIN,
  MARKS
}
