package org.lapmark.figure;

import org.lapmark.drawing.Drawing;

/**
 * A figure in one variant.
 *
 * @param drawing what is drawn, 165 or 80 mm wide
 * @param alternative what it says in words
 * @param caption what is printed under it; empty for none
 */
public record Figure(Drawing drawing, String alternative, String caption) {}
