package org.lapmark.geometry.offset;

import org.lapmark.geometry.Curve;

/**
 * A curve of the moved outline.
 *
 * @param side the index of the side it belongs to
 * @param curve the curve
 * @param order where it stood on the line before crossings were resolved; only for sorting
 */
public record Part(int side, Curve curve, double order) {}
