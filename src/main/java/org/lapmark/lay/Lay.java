package org.lapmark.lay;

import java.util.List;
import org.lapmark.measure.Variant;

/**
 * The pieces of one material on one width of it, in a single layer with the right side up.
 *
 * @param cloth the material
 * @param variant the size and choices
 * @param width the width
 * @param length how far the pieces reach along the cloth, in millimetres
 * @param placements the pieces in the order of their numbers
 * @param purchase what to buy
 */
public record Lay(
    Cloth cloth,
    Variant variant,
    ClothWidth width,
    double length,
    List<Placement> placements,
    Purchase purchase) {
  /** Copies the list. */
  public Lay {
    placements = List.copyOf(placements);
  }
}
