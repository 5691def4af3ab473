package org.lapmark.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What names in formulas look like: lower-case letters a to z, digits and underscores, beginning
 * with a letter; names may be joined by dots to say whose property is meant ({@code zip.width}). A
 * hyphen is always a minus sign.
 */
public final class Names {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*+(\\.[a-z][a-z0-9_]*+)*+");
  private static final List<String> WORDS = List.of("and", "or", "not", "if", "pi", "as");

  /** Every variant has it: no measure or option can take its name. */
  private static final String SIZE = "size";

  private Names() {}

  /**
   * Whether a word has the form of a name, dotted or not.
   *
   * @param word the word
   * @return true also for words with a meaning of their own
   */
  public static boolean isWellFormed(String word) {
    return NAME.matcher(word).matches();
  }

  /**
   * Whether a measure or panel may bear a name: it has the form of one, no dot, and no meaning of
   * its own. Names of functions are free, for a function is known by its bracket.
   *
   * @param word the word
   * @return whether it is free
   */
  public static boolean isFree(String word) {
    return isWellFormed(word)
        && word.indexOf('.') < 0
        && !reserved().contains(word)
        && !word.equals(SIZE);
  }

  /**
   * The words with a meaning of their own: {@code and}, {@code or}, {@code not}, {@code if}, {@code
   * pi}, {@code as}, and the units.
   *
   * @return the words
   */
  public static List<String> reserved() {
    List<String> all = new ArrayList<>(WORDS);
    all.addAll(Unit.symbols());
    return Collections.unmodifiableList(all);
  }

  static boolean isWord(String name) {
    return WORDS.contains(name);
  }
}
