package org.lapmark.geometry;

/** Thrown when what is to become a path has no length, or parts that don't meet. */
public final class BrokenPathException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  BrokenPathException(String reason) {
    super(reason);
  }
}
