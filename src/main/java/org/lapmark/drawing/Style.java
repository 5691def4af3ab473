package org.lapmark.drawing;

import java.util.List;

/**
 * How a role looks on paper.
 *
 * @param strokeWidth the line's width in millimetres; 0 for no line
 * @param dash lengths of dashes and gaps in turn, in millimetres; empty for a solid line
 * @param strokeGrey 0 for black to 1 for white
 * @param fillGrey 0 for black to 1 for white; negative for no fill
 * @param fontSize the lettering's size in points; 0 where the role has no lettering
 * @param bold whether the lettering is in the heavier weight
 * @param halo the width of paper white left around lettering, in millimetres
 */
public record Style(
    double strokeWidth,
    List<Double> dash,
    double strokeGrey,
    double fillGrey,
    double fontSize,
    boolean bold,
    double halo) {
  /** Copies the list. */
  public Style {
    dash = List.copyOf(dash);
  }
}
