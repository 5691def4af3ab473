package org.lapmark.source;

import java.util.Collection;
import org.lapmark.finding.Nearest;

/** Looks for the words that were probably meant, with a bounded amount of work for a folder. */
final class Hints {
  private long left = 100_000_000;

  /** The nearest known word, or the empty text if none is near or enough has been looked for. */
  String nearest(String word, Collection<String> known) {
    for (String candidate : known) {
      left -= (long) word.length() * candidate.length();
    }
    return left < 0 ? "" : Nearest.of(word, known).orElse("");
  }
}
