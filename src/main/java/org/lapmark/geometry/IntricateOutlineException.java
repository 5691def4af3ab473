package org.lapmark.geometry;

/** Thrown when an outline has so many tight turns that a line beside it can't be worked out. */
public final class IntricateOutlineException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  IntricateOutlineException() {
    super("an outline whose parallel crosses itself too often");
  }
}
