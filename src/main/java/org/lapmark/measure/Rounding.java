package org.lapmark.measure;

/** To which side a printed value may lie of the exact one. */
public enum Rounding {
  /** To the nearest step, a half away from zero. */
  NEAREST,
  /** Down: how deep to cut, so that no unit leads into a seam. */
  AT_MOST,
  /** Up: what is to be left, kept clear of or bought. */
  AT_LEAST
}
