package org.lapmark.text;

import java.util.List;
import org.lapmark.source.PatternSource;

/**
 * What cross-references can lead to.
 *
 * @param steps the steps' ids
 * @param pieces the pieces' numbers
 * @param pages the names of the document's pages
 */
public record Targets(List<String> steps, List<String> pieces, List<String> pages) {
  /** Nothing. */
  public static final Targets NONE = new Targets(List.of(), List.of(), List.of());

  /** The names of the pages that every pattern's documents can have. */
  public static final List<String> PAGES =
      List.of(
          "printing",
          "before",
          "finished",
          "fitting",
          "materials",
          "cutting",
          "layouts",
          "map",
          "steps",
          "cautions",
          "labels",
          "colophon");

  /** Copies the lists. */
  public Targets {
    steps = List.copyOf(steps);
    pieces = List.copyOf(pieces);
    pages = List.copyOf(pages);
  }

  /**
   * The pieces of a pattern, and the pages.
   *
   * @param source the pattern
   * @return what its texts can refer to, steps left out
   */
  public static Targets of(PatternSource source) {
    List<String> pieces =
        source.pieces().stream().map(piece -> String.valueOf(piece.number())).toList();
    return new Targets(List.of(), pieces, PAGES);
  }

  /**
   * The same with other steps.
   *
   * @param ids the steps' ids
   * @return the targets
   */
  public Targets withSteps(List<String> ids) {
    return new Targets(ids, pieces, pages);
  }

  /**
   * What a kind of reference can lead to.
   *
   * @param kind the kind
   * @return ids, numbers or names
   */
  public List<String> of(Inline.Reference.Kind kind) {
    return switch (kind) {
      case STEP -> steps;
      case PIECE -> pieces;
      case PAGE -> pages;
    };
  }
}
