package org.lapmark.packing;

/**
 * Tiles that hang together, apart from all others.
 *
 * @param columns how many tiles lie side by side
 * @param rows how many lie below each other
 */
public record Island(int columns, int rows) {}
