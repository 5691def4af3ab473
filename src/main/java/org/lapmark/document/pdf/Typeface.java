package org.lapmark.document.pdf;

import java.util.List;

/** The faces that documents are set in: three of the family of all text, and two for code. */
public enum Typeface {
  /** Large titles. */
  LIGHT("fonts/ttf/SourceSansPro/SourceSansPro-Light", 300),
  /** Running text. */
  REGULAR("fonts/ttf/SourceSansPro/SourceSansPro-Regular", 400),
  /** Headings and whatever is to stand out. */
  BOLD("fonts/ttf/SourceSansPro/SourceSansPro-SemiBold", 700),
  /**
   * What an author marks as code: a key or a setting of a machine, lines that keep their columns.
   */
  CODE("liberation/LiberationMono-Regular", 400),
  /** Code that is to stand out; a renderer would smear the other one. */
  BOLD_CODE("liberation/LiberationMono-Bold", 700);

  /** The name of the family of all text in style sheets. */
  static final String FAMILY = "Source Sans Pro";

  /** That of the faces for code. */
  static final String CODE_FAMILY = "Liberation Mono";

  /** The faces of the family of all text. */
  public static final List<Typeface> TEXT = List.of(LIGHT, REGULAR, BOLD);

  private final String file;
  private final int weight;

  Typeface(String file, int weight) {
    this.file = file;
    this.weight = weight;
  }

  /** Where the font's file is among the program's resources. */
  String resource() {
    return file + ".ttf";
  }

  /** The weight by which style sheets ask for it. */
  int weight() {
    return weight;
  }

  /**
   * The names by which style sheets may ask for it: its family's own, and the general ones that the
   * renderer's own style sheet uses for some elements.
   */
  List<String> families() {
    return !TEXT.contains(this)
        ? List.of(CODE_FAMILY, "monospace")
        : List.of(FAMILY, "sans-serif", "serif");
  }

  static Typeface of(boolean bold) {
    return bold ? BOLD : REGULAR;
  }
}
