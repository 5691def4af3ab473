package org.lapmark.source.drawing.text;

/**
 * A length as SVG attributes state it.
 *
 * @param number the number
 * @param unit its unit, or the empty text for user units
 */
public record SvgLength(double number, String unit) {
  private static final double MM_PER_INCH = 25.4;

  /** Reads a length; null if it isn't one, or is a share of something. */
  public static SvgLength parse(String text) {
    String trimmed = text.strip();
    int end = NumberText.end(trimmed, 0);
    if (end < 0) {
      return null;
    }
    SvgLength length =
        new SvgLength(Double.parseDouble(trimmed.substring(0, end)), trimmed.substring(end));
    return length.factor() > 0 && Double.isFinite(length.number()) ? length : null;
  }

  /** Millimetres of one unit; a CSS pixel is 1/96 in; 0 for an unknown unit. */
  private double factor() {
    switch (unit) {
      case "mm":
        return 1;
      case "cm":
        return 10;
      case "in":
        return MM_PER_INCH;
      case "Q":
        return 0.25;
      case "pt":
        return MM_PER_INCH / 72;
      case "pc":
        return MM_PER_INCH / 6;
      case "px":
      case "":
        return MM_PER_INCH / 96;
      default:
        return 0;
    }
  }

  /** The length in millimetres; without a unit it counts as pixels. */
  public double millimetres() {
    return number * factor();
  }

  /** Whether it is stated in pixels, with their unit or without one. */
  public boolean isPixels() {
    return unit.isEmpty() || unit.equals("px");
  }

  /** The length in CSS pixels. */
  public double pixels() {
    return isPixels() ? number : millimetres() * 96 / MM_PER_INCH;
  }
}
