package org.lapmark.print.piece;

/**
 * The groups of a cut file, in the order in which a machine is to work: what is cut comes after
 * what is drawn, and the cutting line last.
 */
public enum CutGroup {
  /** Lettering. */
  TEXT("text"),
  /** Placement lines, fold lines, drill points and the like. */
  MARKS("marks"),
  /** The grainline with its arrows. */
  GRAINLINE("grain"),
  /** The stitching line, one closed line; absent where it is the cutting line. */
  STITCHING_LINE("stitching-line"),
  /** Notches, each from the cutting line inwards. */
  NOTCHES("notches"),
  /** The cutting line, one closed line. */
  CUTTING_LINE("cutting-line");

  private final String id;

  CutGroup(String id) {
    this.id = id;
  }

  /**
   * The group's name in a file.
   *
   * @return an id
   */
  public String id() {
    return id;
  }

  /** The group of a line by its style role. */
  public static CutGroup of(String role) {
    return switch (role) {
      case "cutting-line" -> CUTTING_LINE;
      case "stitching-line" -> STITCHING_LINE;
      case "notch" -> NOTCHES;
      case "grainline" -> GRAINLINE;
      default -> MARKS;
    };
  }
}
