package org.lapmark.figure.scene;

/**
 * A dimension as a reader sees it.
 *
 * @param number which of the figure's dimensions it is, from 0
 * @param text how it is printed
 */
public record PrintedLength(int number, String text) {}
