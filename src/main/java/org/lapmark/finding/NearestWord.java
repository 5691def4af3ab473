package org.lapmark.finding;

import java.util.Collection;
import java.util.Optional;

/** Finds the known word that a mistyped one was probably meant to be. */
public final class NearestWord {
  private static final int LONGEST = 80;

  private NearestWord() {}

  /**
   * The known word nearest to a mistyped one, by the number of letters left out, added, changed or
   * swapped with their neighbour; capitals count for nothing if that is all. A word further away
   * than a third of its length (but always one letter) is no help and not offered.
   *
   * @param word the word as written
   * @param known the words it could have been; of equally near ones the first is taken
   * @return the nearest, or nothing
   */
  public static Optional<String> of(String word, Collection<String> known) {
    if (word.isEmpty() || word.length() > LONGEST) {
      return Optional.empty();
    }
    String nearest = null;
    int least = Math.max(1, word.length() / 3) + 1;
    for (String candidate : known) {
      if (candidate.equalsIgnoreCase(word)) {
        return Optional.of(candidate);
      }
      if (candidate.length() <= LONGEST && Math.abs(candidate.length() - word.length()) < least) {
        int distance = distance(word, candidate);
        // A word of which every letter differs isn't near, however short it is.
        if (distance < least && distance < Math.max(word.length(), candidate.length())) {
          least = distance;
          nearest = candidate;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  /**
   * How many letters must be left out, added, changed or swapped with their neighbour to get from
   * one word to the other, no stretch being edited twice.
   *
   * @param a one word
   * @param b the other
   * @return the number of edits
   */
  static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] now = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        now[j] = Math.min(Math.min(last[j] + 1, now[j - 1] + 1), last[j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          now[j] = Math.min(now[j], beforeLast[j - 2] + 1);
        }
      }
      int[] spare = beforeLast;
      beforeLast = last;
      last = now;
      now = spare;
    }
    return last[b.length()];
  }

  /** A question behind a word that isn't known, or nothing where none is near. */
  public static String asked(String word, Collection<String> known) {
    return of(word, known).map(near -> "; did you mean ‘" + near + "’?").orElse("");
  }
}
