package org.lapmark.document.svg;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Point;

/**
 * Lettering as SVG has it: set to the width it has in the embedded font, whatever font is there.
 */
final class SvgLettering {
  private static final double MM_PER_POINT = 25.4 / 72;

  private SvgLettering() {}

  /**
   * The attributes of a {@code text} element, as name, value, name, value; a value may be null.
   *
   * @param line the lettering
   * @param anchor where it stands, in millimetres
   * @param degrees by how much it is turned clockwise
   * @param style its look
   * @param measure how wide it comes out
   * @param numbers how numbers are written
   */
  static List<String> attributes(
      Item.Lettering line,
      Point anchor,
      double degrees,
      Style style,
      LetteringMeasure measure,
      SvgNumbering numbers) {
    String x = numbers.number(anchor.x());
    String y = numbers.number(anchor.y());
    String rotation = numbers.number(degrees);
    return Arrays.asList(
        "x",
        x,
        "y",
        y,
        "font-size",
        numbers.number(style.fontSize() * MM_PER_POINT),
        "font-weight",
        style.bold() ? "600" : null,
        "text-anchor",
        line.alignment() == Item.Alignment.START
            ? null
            : line.alignment().name().toLowerCase(Locale.ROOT),
        "textLength",
        numbers.number(measure.width(line.text(), style)),
        "lengthAdjust",
        "spacingAndGlyphs",
        "transform",
        rotation.equals("0") ? null : "rotate(" + rotation + " " + x + " " + y + ")");
  }
}
