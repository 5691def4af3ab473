package org.lapmark.print;

import org.lapmark.geometry.Box;

/**
 * A paper size with the part of it that printers reach.
 *
 * @param id the name in commands and file names
 * @param width millimetres
 * @param height millimetres
 * @param window what may carry ink, in millimetres from the top left corner
 */
public record Paper(String id, double width, double height, Box window) {
  /** ISO 216 A4. */
  public static final Paper A4 = new Paper("a4", 210, 297, Box.at(10, 10, 190, 277));

  /** US Letter, 8½ x 11 in. */
  public static final Paper LETTER =
      new Paper("letter", 215.9, 279.4, Box.at(12.95, 12.7, 190, 254));

  /** The page that prints unscaled on both: as wide as A4 and as high as Letter. */
  public static final Paper SHARED = new Paper("shared", 210, 279.4, Box.at(10, 12.7, 190, 254));
}
