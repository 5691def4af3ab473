package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * One thing in its own coordinates in millimetres. What is held begins at the origin and reaches
 * along y, away from what holds it; what is set into cloth has its middle there.
 */
public interface Symbol {
  /** What it takes up, lines left out. */
  Box size();

  /** Draws it. */
  void draw(Pen pen);

  /** The length by which readers know it: what passes through a ring, how wide a button is. */
  double told();

  /** Where something flat goes through it; nothing where there is no way through. */
  default Optional<Gate> gate() {
    return Optional.empty();
  }

  /** Where a leader may end, the best place first. */
  default List<Point> pointedAt() {
    return List.of(size().centre());
  }

  /** Whether it is sold by the length and follows what it is sewn along. */
  default boolean isByLength() {
    return false;
  }

  /**
   * The way of a strap through something: up beside a bar, over it, and down on its other side,
   * where it ends at y = 0 if it is turned back there.
   *
   * @param width how wide it may be
   * @param up where it comes up; what lies before covers it
   * @param down where it goes down if it isn’t turned back
   */
  record Gate(double width, double up, double down) {}
}
