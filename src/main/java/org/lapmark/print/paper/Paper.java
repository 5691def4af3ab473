package org.lapmark.print.paper;

import java.util.List;
import org.lapmark.geometry.Box;

/**
 * A paper size with the part of it that printers reach, and all that is particular about it.
 *
 * @param id the name in commands and file names
 * @param width millimetres
 * @param height millimetres
 * @param window what may carry ink, in millimetres from the top left corner
 * @param filling how it is filled with pieces
 * @param usual whether documents are made for it when no paper is asked for
 * @param readable whether instructions are set on it; others have pieces alone
 * @param correction what the printer does to lengths, for which everything is corrected
 */
public record Paper(
    String id,
    double width,
    double height,
    Box window,
    Filling filling,
    boolean usual,
    boolean readable,
    Correction correction) {
  /**
   * Pages that are read and joined, for printers that keep the scale.
   *
   * @param id the name in commands and file names
   * @param width millimetres
   * @param height millimetres
   * @param window what may carry ink, in millimetres from the top left corner
   */
  public Paper(String id, double width, double height, Box window) {
    this(id, width, height, window, Filling.PAGES, true, true, Correction.NONE);
  }

  /** A large one with pieces alone, made when asked for, with margins of 10 mm. */
  private static Paper large(String id, double width, double height, Filling filling) {
    Box window = Box.at(10, 10, width - 20, height - 20);
    return new Paper(id, width, height, window, filling, false, false, Correction.NONE);
  }

  /** ISO 216 A4. */
  public static final Paper A4 = new Paper("a4", 210, 297, Box.at(10, 10, 190, 277));

  /** US Letter, 8½ x 11 in. */
  public static final Paper LETTER =
      new Paper("letter", 215.9, 279.4, Box.at(12.95, 12.7, 190, 254));

  /** The page that prints unscaled on both: as wide as A4 and as high as Letter. */
  public static final Paper SHARED = new Paper("shared", 210, 279.4, Box.at(10, 12.7, 190, 254));

  /** ISO 216 A0, for a copy shop. */
  public static final Paper A0 = large("a0", 841, 1189, Filling.SHEETS);

  /**
   * A roll 36 in wide, for a copy shop: as long as the pieces need, and no longer than 200 in,
   * which is as large as a page can be.
   */
  public static final Paper ROLL36 = large("roll36", 914.4, 5080, Filling.ROLL);

  /** For a projector above the table. */
  public static final Paper PROJECTOR = large("projector", 1220, 5080, Filling.PICTURE);

  /** Every paper, in the order in which they are made. */
  public static final List<Paper> ALL = List.of(A4, LETTER, SHARED, A0, ROLL36, PROJECTOR);

  /** The same paper with another height, its margins kept. */
  public Paper cut(double newHeight) {
    double margins = height - window.height();
    return with(
        width,
        newHeight,
        Box.at(window.minX(), window.minY(), window.width(), newHeight - margins),
        correction);
  }

  /**
   * The same paper for a printer that errs.
   *
   * @param measured what the printer does to lengths
   * @return the paper
   */
  public Paper corrected(Correction measured) {
    return with(width, height, window, measured);
  }

  /**
   * Whether documents on this paper are corrected for a printer.
   *
   * @return true when they are
   */
  public boolean isCorrected() {
    return !correction.equals(Correction.NONE);
  }

  /** As large as the printer makes what it takes for this paper, in true millimetres. */
  public Paper asPrinted() {
    return scaled(correction.scaleX(), correction.scaleY());
  }

  /** The paper that the printer makes as large as this. */
  public Paper beforePrinting() {
    return scaled(1 / correction.scaleX(), 1 / correction.scaleY());
  }

  private Paper scaled(double x, double y) {
    return with(
        width * x,
        height * y,
        new Box(window.minX() * x, window.minY() * y, window.maxX() * x, window.maxY() * y),
        correction);
  }

  private Paper with(double newWidth, double newHeight, Box newWindow, Correction measured) {
    return new Paper(id, newWidth, newHeight, newWindow, filling, usual, readable, measured);
  }
}
