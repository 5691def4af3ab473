package org.lapmark.figure.workpiece;

import org.lapmark.figure.ink.Beside;
import org.lapmark.geometry.Box;

/** A dimension of a piece, in its coordinates. */
public interface Measure {
  /**
   * Draws it.
   *
   * @param laid the piece
   * @param shape the box that it stands beside
   */
  void draw(PlacedBody laid, Box shape, FlatInk ink);

  /** The side of the piece on which it stands. */
  Beside beside();

  /** Its lettering. */
  String words();
}
