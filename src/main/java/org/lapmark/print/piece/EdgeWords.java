package org.lapmark.print.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.wording.Wording;

/**
 * Edges as readers call them: those of shapes that are stated by numbers by words of the language,
 * since the program gave them their names; those that an author named by that name.
 */
public final class EdgeWords {
  private static final String START = "start";
  private static final String END = "end";

  /** Both ends of a band together. */
  private static final String BOTH = "start_end";

  private EdgeWords() {}

  /**
   * The words for edges of one panel that have something in common.
   *
   * @param edges their names
   * @param wording the language
   * @return the words in the order of the edges; both ends of a band are named together
   */
  public static List<String> of(List<String> edges, Wording wording) {
    List<String> names = new ArrayList<>(edges);
    if (names.contains(START) && names.contains(END)) {
      names.set(Math.min(names.indexOf(START), names.indexOf(END)), BOTH);
      names.removeAll(List.of(START, END));
    }
    return names.stream()
        .map(
            name -> wording.text("edge.name", Map.of("edge", name, "name", name.replace('_', ' '))))
        .toList();
  }
}
