package org.lapmark.source;

/** How a maker joins the pages of a pattern. */
public enum JoinStyle {
  /** One page is trimmed along a line and laid over the next. */
  OVERLAP,
  /** Both pages are trimmed and meet edge to edge. */
  BUTT,
  /** Nothing is trimmed: one page is folded back along a line and laid over the next. */
  NO_TRIM
}
