package org.lapmark.print.arrange;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.packing.Island;
import org.lapmark.packing.Placement;

/**
 * Where everything lay on a sheet, so that a later edition can leave it there.
 *
 * @param islands the islands in the order of their codes
 * @param square where the test square lies
 * @param side its side in millimetres
 * @param pieces where each piece lies, by its number
 */
public record Arranged(
    List<Island> islands, Placement square, double side, Map<Integer, Placement> pieces) {
  /** Copies list and map; the map is sorted by number. */
  public Arranged {
    islands = List.copyOf(islands);
    pieces = Collections.unmodifiableMap(new TreeMap<>(pieces));
  }
}
