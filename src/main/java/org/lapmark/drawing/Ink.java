package org.lapmark.drawing;

import java.util.List;

/**
 * How paths look that have a look of their own, from a picture that an author brings, rather than
 * that of a role. Colours are red, green and blue in 24 bits.
 *
 * @param fill the colour of the inside, or {@link #NONE}
 * @param evenOdd whether what two paths enclose is outside
 * @param stroke the line's colour, or {@link #NONE}
 * @param width the line's width in millimetres
 * @param dash lengths of dashes and gaps in turn, in millimetres; empty for a solid line
 * @param cap how lines end
 * @param join how they turn corners
 */
public record Ink(
    int fill, boolean evenOdd, int stroke, double width, List<Double> dash, Cap cap, Join join) {
  /** No colour. */
  public static final int NONE = -1;

  /** Copies the list. */
  public Ink {
    dash = List.copyOf(dash);
  }

  /** Whether it has an inside. */
  public boolean fills() {
    return fill != NONE;
  }

  /** Whether it has a line. */
  public boolean strokes() {
    return stroke != NONE && width > 0;
  }

  /** How a line ends; in the order of PDF’s numbers. */
  public enum Cap {
    /** At its end. */
    BUTT,
    /** With half a circle. */
    ROUND,
    /** With half a square. */
    SQUARE
  }

  /** How a line turns a corner; in the order of PDF’s numbers. */
  public enum Join {
    /** With a point. */
    MITER,
    /** With an arc. */
    ROUND,
    /** With the point cut off. */
    BEVEL
  }
}
