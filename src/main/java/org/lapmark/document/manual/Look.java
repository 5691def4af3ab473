package org.lapmark.document.manual;

/** The sizes of type that text pages are set in. */
public enum Look {
  /** 12 pt. */
  STANDARD,
  /** 18 pt and more, for readers who see less. */
  LARGE_PRINT
}
