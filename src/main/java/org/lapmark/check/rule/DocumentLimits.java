package org.lapmark.check.rule;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * What the documents of a run can do, which rules need to know.
 *
 * @param pages the names of pages that texts can refer to
 * @param hazards the hazards that there are cautions for
 * @param missing gives the characters of a text that can't be printed, each once; called by one
 *     thread at a time
 * @param fusible words by which the names of materials say that they are fusible
 * @param unless words by which they say that they aren't
 * @param width how wide words are in tables, in millimetres; called by several threads at a time
 */
public record DocumentLimits(
    List<String> pages,
    List<String> hazards,
    Function<String, List<String>> missing,
    List<String> fusible,
    List<String> unless,
    ToDoubleFunction<String> width) {
  /** Copies the lists. */
  public DocumentLimits {
    pages = List.copyOf(pages);
    hazards = List.copyOf(hazards);
    fusible = List.copyOf(fusible);
    unless = List.copyOf(unless);
  }

  /**
   * The same where names of materials say nothing and words take no room.
   *
   * @param pages the names of pages that texts can refer to
   * @param hazards the hazards that there are cautions for
   * @param missing gives the characters of a text that can't be printed, each once
   */
  public DocumentLimits(
      List<String> pages, List<String> hazards, Function<String, List<String>> missing) {
    this(pages, hazards, missing, List.of(), List.of(), word -> 0);
  }
}
