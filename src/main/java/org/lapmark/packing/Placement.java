package org.lapmark.packing;

import org.lapmark.geometry.Affine;

/**
 * Where a shape came to lie.
 *
 * @param island the island's index
 * @param map the turn and then the shift that take the shape to its place, in millimetres from the
 *     top left corner of the island's first window
 */
public record Placement(int island, Affine map) {}
