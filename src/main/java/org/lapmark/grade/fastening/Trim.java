package org.lapmark.grade.fastening;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Something by the length, sewn along edges.
 *
 * @param name its name
 * @param thing the id of the hardware or of the material
 * @param along what it is sewn along, end to end, as {@code panel.edge}
 * @param facing what lies on its other side; empty where nothing does
 * @param edge how long the former is as sewn
 * @param length how long it is itself
 * @param standsIn how far each end stands in from the ends of its edges, what laps and eases
 *     counted off; below zero where it reaches beyond
 * @param visibleWidth how wide it shows; nothing where nobody says so
 */
public record Trim(
    String name,
    String thing,
    List<String> along,
    List<String> facing,
    double edge,
    double length,
    double standsIn,
    OptionalDouble visibleWidth) {
  /** Copies the lists. */
  public Trim {
    along = List.copyOf(along);
    facing = List.copyOf(facing);
  }
}
