package org.lapmark.source.drawing;

/** How what stands for something is drawn. */
enum DrawnForm {
  /** Closed lines, of which there is one. */
  OUTLINE,
  /** One line. */
  LINE,
  /** A point. */
  POINT,
  /** Two lines that meet in a point. */
  LEGS,
  /** A point on the outline, or a line that crosses it. */
  NOTCH
}
