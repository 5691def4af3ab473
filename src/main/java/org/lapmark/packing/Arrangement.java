package org.lapmark.packing;

import java.util.List;

/**
 * Shapes at their places.
 *
 * @param placements one a shape, in the order in which the shapes were given
 * @param islands the islands
 * @param tiles how many tiles carry something, as the search counted them: never fewer than really
 *     do
 * @param joins how many pairs of neighbouring tiles carry the same shape across the line between
 *     them
 */
public record Arrangement(List<Placement> placements, List<Island> islands, int tiles, int joins) {
  /** Copies the lists. */
  public Arrangement {
    placements = List.copyOf(placements);
    islands = List.copyOf(islands);
  }
}
