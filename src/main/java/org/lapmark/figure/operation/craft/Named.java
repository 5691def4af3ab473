package org.lapmark.figure.operation.craft;

/** What an operation may be about, which then says its materials and its allowance. */
public enum Named {
  /** A seam. */
  SEAM,
  /** An edge, as {@code panel.edge}. */
  EDGE,
  /** A trim. */
  TRIM,
  /** Nothing: materials and amounts are always stated. */
  NOTHING
}
