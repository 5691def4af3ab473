package org.lapmark.packing;

/**
 * A shape at a place.
 *
 * @param shape which one
 * @param turned its cells
 * @param x its place, in cells
 * @param y its place, in rows of cells
 * @param fixed whether it stays there, wherever its cells reach
 */
record PlacedShape(int shape, Turned turned, int x, int y, boolean fixed) {}
