package org.lapmark.packing;

/**
 * Shapes at their places, with a guest that takes no tile of its own.
 *
 * @param arrangement the shapes
 * @param guest which of the guests has come
 * @param place where it lies
 */
public record ShapesWithGuest(Arrangement arrangement, int guest, Placement place) {}
