package org.lapmark.figure.workpiece;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Something flat, in its own coordinates in real millimetres. */
public sealed interface Body permits Cloth, FoldedCloth, JoinedBody, RolledBody, Tape {
  /** What is seen of it. */
  Path outline();

  /** How much there is of it, also where it isn't seen. */
  Path whole();

  /** Lines beyond which nothing of it is seen. */
  List<Cut> cuts();

  /** What lies on it of itself, so that what is marked beneath isn't seen. */
  default List<List<Point>> covers() {
    return List.of();
  }

  /** Allowances turned to the side that faces the reader. */
  List<Flap> flaps();

  /** Whether it lies under what is joined to it. */
  boolean liesUnder();

  /** How far what is joined to it covers each of its long sides. */
  double covered();

  /** Whether a corner is turned back to show what lies below, which then isn't moved aside. */
  default boolean isPeeled() {
    return false;
  }

  /** Draws it without anything on it. */
  void draw(PlacedBody laid, FlatInk ink);

  /** Draws what of it lies above what lies on it and is marked on it. */
  default void drawFolded(PlacedBody laid, Marks marks, FlatInk ink) {}

  /**
   * The side of it that is seen.
   *
   * @param up the side that faces the reader where it lies flat
   */
  default Side seen(Side up) {
    return up;
  }
}
