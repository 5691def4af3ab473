package org.lapmark.packing.strip;

import java.util.List;
import org.lapmark.geometry.Affine;

/**
 * Shapes arranged on a strip.
 *
 * @param length how far they reach along the strip, in millimetres
 * @param maps for each shape, in the order given, the map that takes it to its place: x along the
 *     strip from its beginning, y across it from one side
 */
public record StripArrangement(double length, List<Affine> maps) {
  /** Copies the list. */
  public StripArrangement {
    maps = List.copyOf(maps);
  }
}
