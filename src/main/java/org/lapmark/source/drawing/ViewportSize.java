package org.lapmark.source.drawing;

/**
 * The size of the viewport around a shape, of which its percentages are shares.
 *
 * @param width in user units; NaN where the drawing doesn't say
 * @param height in user units; NaN where the drawing doesn't say
 */
public record ViewportSize(double width, double height) {
  /** Where no share is known. */
  static final ViewportSize UNKNOWN = new ViewportSize(Double.NaN, Double.NaN);

  /**
   * What an attribute's percentages are shares of (SVG 2, section 8.9): the width, the height, or
   * for radii the diagonal over the square root of 2.
   */
  double whole(String attribute) {
    return switch (attribute) {
      case "x", "x1", "x2", "cx", "width", "rx" -> width;
      case "y", "y1", "y2", "cy", "height", "ry" -> height;
      default -> Math.sqrt((width * width + height * height) / 2);
    };
  }
}
