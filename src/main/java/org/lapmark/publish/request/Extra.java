package org.lapmark.publish.request;

/** What is made beside the documents of each size, or put into them, when it is asked for. */
public enum Extra {
  /** The instructions in large print. */
  LARGE_PRINT,
  /** The grade report, where every size is made. */
  GRADE_REPORT,
  /** Tiles of all sizes stacked. */
  NESTED,
  /** The walk of every seam at the end of the documents of one size. */
  WALK,
  /** Tiles, nothing of which is missed, are left out: those that no line runs over. */
  WITHOUT_BLANK_PAGES
}
