package org.lapmark.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The words that a hint lists because they could have been meant. */
public final class Known {
  /** What stands in place of a list without words; hints then say what to do instead. */
  public static final String NONE = "none";

  private static final int MOST = 40;

  private Known() {}

  /**
   * A list for a hint.
   *
   * @param words the words, in their order
   * @return the words parted by commas, of very many the first and how many there are beside;
   *     {@link #NONE} if there are none
   */
  public static String listed(Collection<String> words) {
    if (words.isEmpty()) {
      return NONE;
    }
    List<String> shown = new ArrayList<>(words);
    if (shown.size() <= MOST) {
      return String.join(", ", shown);
    }
    return String.join(", ", shown.subList(0, MOST)) + " and " + (shown.size() - MOST) + " more";
  }
}
