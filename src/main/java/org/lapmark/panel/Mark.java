package org.lapmark.panel;

import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Something marked on a panel besides its outline. */
public sealed interface Mark {
  /**
   * A notch, stated by arc length along the stitching line.
   *
   * @param edge the edge's name
   * @param at millimetres from the edge's start along the stitching line
   * @param count 1 for a single notch, 2 for a double one
   */
  record Notch(String edge, double at, int count) implements Mark {}

  /**
   * The direction of the warp.
   *
   * @param from one end
   * @param to the other end
   */
  record Grainline(Point from, Point to) implements Mark {}

  /**
   * A point to be marked through the cloth.
   *
   * @param name what it is for
   * @param point the point
   */
  record DrillPoint(String name, Point point) implements Mark {}

  /**
   * A line that shows where something is placed.
   *
   * @param name what is placed
   * @param path the line
   */
  record Placement(String name, Path path) implements Mark {}

  /**
   * A line along which cloth is folded, inside the panel.
   *
   * @param name what is folded
   * @param path the line
   */
  record FoldLine(String name, Path path) implements Mark {}

  /**
   * A line along which the panel can be split into others. It isn't drawn.
   *
   * @param name its name
   * @param path the line
   */
  record StyleLine(String name, Path path) implements Mark {}
}
