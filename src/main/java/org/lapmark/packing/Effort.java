package org.lapmark.packing;

/** How hard an arrangement is searched for. Whether there is one at all shows either way. */
public enum Effort {
  /** As what is printed is worth. */
  FULL,
  /** The first arrangement that is found will do. */
  LEAST
}
