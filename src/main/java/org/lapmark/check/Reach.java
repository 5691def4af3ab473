package org.lapmark.check;

import java.util.List;
import java.util.function.Function;

/**
 * What the documents of a run can do, which rules need to know.
 *
 * @param pages the names of pages that texts can refer to
 * @param hazards the hazards that there are cautions for
 * @param missing gives the characters of a text that can't be printed, each once; called by one
 *     thread at a time
 */
public record Reach(
    List<String> pages, List<String> hazards, Function<String, List<String>> missing) {
  /** Copies the lists. */
  public Reach {
    pages = List.copyOf(pages);
    hazards = List.copyOf(hazards);
  }
}
