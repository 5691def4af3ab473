package org.lapmark.document.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.wording.Wording;

/** Page numbers as readers write them: runs of three and more as ranges. */
public final class PageRanges {
  private PageRanges() {}

  /**
   * Joins page numbers.
   *
   * @param pages ascending, each once
   * @param wording the words
   * @return such as {@code 7, 9–12}
   */
  public static String text(List<Integer> pages, Wording wording) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    while (from < pages.size()) {
      int to = from;
      while (to + 1 < pages.size() && pages.get(to + 1) == pages.get(to) + 1) {
        to++;
      }
      if (to - from >= 2) {
        parts.add(
            wording.text("map.range", Map.of("first", pages.get(from), "last", pages.get(to))));
      } else {
        for (int i = from; i <= to; i++) {
          parts.add(pages.get(i).toString());
        }
      }
      from = to + 1;
    }
    return String.join(wording.text("list.between"), parts);
  }
}
