package org.lapmark.geometry.offset;

/**
 * Thrown when an outline has so many tight turns that a line beside it can't be worked out: it
 * crosses itself too often, or its curves don't come together.
 */
public final class IntricateOutlineException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  IntricateOutlineException() {
    super("an outline whose parallel crosses itself too often");
  }

  IntricateOutlineException(double gap) {
    super("a line beside an outline that stays open by " + gap + " mm");
  }
}
