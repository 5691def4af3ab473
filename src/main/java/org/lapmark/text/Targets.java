package org.lapmark.text;

import java.util.List;

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

  /** Copies the lists. */
  public Targets {
    steps = List.copyOf(steps);
    pieces = List.copyOf(pieces);
    pages = List.copyOf(pages);
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

  List<String> of(Inline.Reference.Kind kind) {
    return switch (kind) {
      case STEP -> steps;
      case PIECE -> pieces;
      case PAGE -> pages;
    };
  }
}
