package org.lapmark.grade;

/**
 * The cut size of a rectangle or strip, which can be ruled onto the cloth without paper.
 *
 * @param width millimetres across, allowances included
 * @param height millimetres along the grain, or along a bias strip's length, allowances included
 * @param bias whether it is cut at 45 degrees to the grain
 */
public record StatedSize(double width, double height, boolean bias) {}
