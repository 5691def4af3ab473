package org.lapmark.grade.fastening;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Something by the length, sewn along edges.
 *
 * @param name its name
 * @param thing the id of the hardware or of the material
 * @param along what it is sewn along, end to end
 * @param facing what lies on its other side; empty where nothing does
 * @param needed how long what it is sewn along asks it to be, with its ends, laps and ease
 * @param length how long it is
 * @param standsIn how far each end stands in from the ends of its edges, what laps and eases
 *     counted off; below zero where it reaches beyond
 * @param width how wide its thing is; nothing where that doesn't say so
 * @param visibleWidth how wide it shows; nothing where nobody says so
 */
public record Trim(
    String name,
    String thing,
    List<Stretch> along,
    List<Stretch> facing,
    double needed,
    double length,
    double standsIn,
    OptionalDouble width,
    OptionalDouble visibleWidth) {
  /** Copies the lists. */
  public Trim {
    along = List.copyOf(along);
    facing = List.copyOf(facing);
  }

  /**
   * A line, or a part of one, as sewn.
   *
   * @param line {@code panel.edge}
   * @param from millimetres from the line's beginning
   * @param to millimetres from the line's beginning
   */
  public record Stretch(String line, double from, double to) {
    /** The line's panel. */
    public String panel() {
      return line.substring(0, line.indexOf('.'));
    }

    /** How long the same line is taken by both, in millimetres; not above zero where it isn't. */
    public double shared(Stretch other) {
      return line.equals(other.line) ? Math.min(to, other.to) - Math.max(from, other.from) : 0;
    }
  }

  /** How long stretches are end to end. */
  public static double length(List<Stretch> stretches) {
    double sum = 0;
    for (Stretch stretch : stretches) {
      sum += stretch.to() - stretch.from();
    }
    return sum;
  }

  /** How long what it is sewn along is. */
  public double edge() {
    return length(along);
  }
}
