package org.lapmark.figure.operation.curves;

/** A curve that bends outward, notched. */
public final class NotchedCurve extends CurvedSeam {
  /** The kind. */
  public NotchedCurve() {
    super("notched_curve", true);
  }
}
