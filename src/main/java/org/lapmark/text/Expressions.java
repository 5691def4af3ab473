package org.lapmark.text;

import java.util.regex.Pattern;

/** Brings expressions into one form, whatever spaces their authors like. */
final class Expressions {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u202f]+");
  // A space between two words, numbers or a number and its unit separates; any other is taste.
  private static final Pattern IDLE = Pattern.compile("(?<![\\w.]) | (?![\\w.])");

  private Expressions() {}

  static String normalised(String expression) {
    return IDLE.matcher(SPACES.matcher(expression.strip()).replaceAll(" ")).replaceAll("");
  }
}
