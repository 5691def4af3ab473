package org.lapmark.figure.workpiece;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Path;

/** Something flat, in its own coordinates in real millimetres. */
public sealed interface Body permits Cloth, Tape {
  /** What is seen of it. */
  Path outline();

  /** How much there is of it, also where it isn't seen. */
  Path whole();

  /** The line where the rest is left out. */
  Optional<Cut> cut();

  /** Allowances turned to the side that faces the reader. */
  List<Flap> flaps();

  /** Whether it lies under what is joined to it. */
  boolean liesUnder();

  /** How far what is joined to it covers each of its long sides. */
  double covered();

  /** Draws it without anything on it. */
  void draw(PlacedBody laid, FlatInk ink);
}
