package org.lapmark.figure.operation.craft;

/** What an operation may be about, which then says its materials and its amounts. */
public enum Named {
  /** A seam. */
  SEAM,
  /** A seam whose longer side is gathered. */
  GATHERED_SEAM,
  /** An edge, as {@code panel.edge}. */
  EDGE,
  /** A curved edge, whose radius is looked at. */
  CURVE,
  /** A corner, as {@code panel.corner}. */
  CORNER,
  /** A dart, as {@code panel.dart}. */
  DART,
  /** A trim. */
  TRIM,
  /** An attachment. */
  ATTACHMENT,
  /** Nothing: materials and amounts are always stated. */
  NOTHING
}
