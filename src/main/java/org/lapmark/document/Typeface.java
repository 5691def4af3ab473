package org.lapmark.document;

/** The faces of the one family that documents are set in. */
enum Typeface {
  /** Large titles. */
  LIGHT("SourceSansPro-Light", 300),
  /** Running text. */
  REGULAR("SourceSansPro-Regular", 400),
  /** Headings and whatever is to stand out. */
  BOLD("SourceSansPro-SemiBold", 700);

  /** The family's name in style sheets. */
  static final String FAMILY = "Source Sans Pro";

  private final String file;
  private final int weight;

  Typeface(String file, int weight) {
    this.file = file;
    this.weight = weight;
  }

  /** Where the font's file is among the program's resources. */
  String resource() {
    return "fonts/ttf/SourceSansPro/" + file + ".ttf";
  }

  /** The weight by which style sheets ask for it. */
  int weight() {
    return weight;
  }

  static Typeface of(boolean bold) {
    return bold ? BOLD : REGULAR;
  }
}
