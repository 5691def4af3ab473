package org.lapmark.packing;

import java.util.List;
import java.util.Optional;

/** Knows where a guest may lie on one of the shapes, where it has no room between them. */
@FunctionalInterface
public interface GuestPlaces {
  /**
   * Finds a place.
   *
   * @param guest which of the guests it is
   * @param others where the shapes lie
   * @param islands the islands
   * @return a place, if there is one
   */
  Optional<Placement> place(int guest, List<Placement> others, List<Island> islands);
}
