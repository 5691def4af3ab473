package org.lapmark.figure.operation.plan;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Something that is seen from above. */
interface Part {
  /**
   * Draws it.
   *
   * @param canvas the canvas
   * @param scale millimetres on paper for one of cloth
   * @param above outlines on paper of what lies over it
   */
  void draw(Canvas canvas, double scale, List<List<Point>> above);

  /** Draws what stands beside everything else. */
  default void beside(Canvas canvas, double scale, Box all) {}

  /** A line that it draws, on paper; nothing as a rule. */
  default Optional<Path> drawn(double scale) {
    return Optional.empty();
  }

  /** Whether lines on it can hardly be seen. */
  default boolean isDark() {
    return false;
  }

  /** What it covers, a closed run of points on paper; nothing as a rule. */
  default List<Point> cover(double scale) {
    return List.of();
  }
}
