package org.lapmark.seam;

import org.lapmark.geometry.Point;

/**
 * A place where a side turns sharply within one panel.
 *
 * @param at millimetres from the seam's start
 * @param turn by how much, in degrees; above 0 where the panel juts out, below 0 where it is cut in
 * @param name the part that begins there or goes on over it, as written
 */
public record SeamCorner(double at, double turn, String name) {
  /** What turns by less than this, in degrees, goes on as a curve does. */
  public static final double SHARP = 15;

  /** Whether it is one at all. */
  boolean isSharp() {
    return Math.abs(turn) > SHARP;
  }

  static double turn(Point in, Point out, boolean clockwise) {
    double turn = StrictMath.toDegrees(StrictMath.atan2(in.cross(out), in.dot(out)));
    return clockwise ? turn : -turn;
  }
}
