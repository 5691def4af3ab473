package org.lapmark.figure.operation.curves;

/** A curve that bends inward, clipped. */
public final class ClippedCurve extends CurvedSeam {
  /** The kind. */
  public ClippedCurve() {
    super("clipped_curve", false);
  }
}
