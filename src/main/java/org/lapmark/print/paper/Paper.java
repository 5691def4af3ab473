package org.lapmark.print.paper;

import org.lapmark.geometry.Box;

/**
 * A paper size with the part of it that printers reach.
 *
 * @param id the name in commands and file names
 * @param width millimetres
 * @param height millimetres
 * @param window what may carry ink, in millimetres from the top left corner
 * @param correction what the printer does to lengths, for which everything is corrected
 */
public record Paper(String id, double width, double height, Box window, Correction correction) {
  /**
   * A paper for printers that keep the scale.
   *
   * @param id the name in commands and file names
   * @param width millimetres
   * @param height millimetres
   * @param window what may carry ink, in millimetres from the top left corner
   */
  public Paper(String id, double width, double height, Box window) {
    this(id, width, height, window, Correction.NONE);
  }

  /** ISO 216 A4. */
  public static final Paper A4 = new Paper("a4", 210, 297, Box.at(10, 10, 190, 277));

  /** US Letter, 8½ x 11 in. */
  public static final Paper LETTER =
      new Paper("letter", 215.9, 279.4, Box.at(12.95, 12.7, 190, 254));

  /** The page that prints unscaled on both: as wide as A4 and as high as Letter. */
  public static final Paper SHARED = new Paper("shared", 210, 279.4, Box.at(10, 12.7, 190, 254));

  /** ISO 216 A0, for a copy shop. */
  public static final Paper A0 = new Paper("a0", 841, 1189, Box.at(10, 10, 821, 1169));

  /**
   * A roll 36 in wide, for a copy shop: as long as the pieces need, and no longer than 200 in,
   * which is as large as a page can be.
   */
  public static final Paper ROLL36 = new Paper("roll36", 914.4, 5080, Box.at(10, 10, 894.4, 5060));

  /** For a projector above the table: no paper at all, and nothing to join. */
  public static final Paper PROJECTOR =
      new Paper("projector", 1220, 5080, Box.at(10, 10, 1200, 5060));

  /** What a paper is. */
  public enum Kind {
    /** Pages for a printer at home, to be joined. */
    PAGE,
    /** A large sheet. */
    SHEET,
    /** A large sheet as long as needed. */
    ROLL,
    /** A picture for a projector. */
    PROJECTOR
  }

  /**
   * What the paper is, by its name.
   *
   * @return the kind; a page unless it is one of the large ones
   */
  public Kind kind() {
    return switch (id) {
      case "a0" -> Kind.SHEET;
      case "roll36" -> Kind.ROLL;
      case "projector" -> Kind.PROJECTOR;
      default -> Kind.PAGE;
    };
  }

  /** The same paper with another height, its margins kept. */
  public Paper cut(double newHeight) {
    double margins = height - window.height();
    return new Paper(
        id,
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
    return new Paper(id, width, height, window, measured);
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
    return new Paper(
        id,
        width * x,
        height * y,
        new Box(window.minX() * x, window.minY() * y, window.maxX() * x, window.maxY() * y),
        correction);
  }
}
