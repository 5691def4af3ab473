package org.lapmark.publish;

/** What is made beside the documents of each size when it is asked for. */
public enum Extra {
  /** The instructions in large print. */
  LARGE_PRINT,
  /** The grade report, where every size is made. */
  GRADE_REPORT,
  /** Tiles of all sizes stacked. */
  NESTED
}
