package org.lapmark.finding;

/** What a message quotes, cut to a length at which it is still read. */
final class ShortQuote {
  private static final int MOST = 240;
  private static final int HEAD = 180;
  private static final int TAIL = 40;
  private static final int MOST_OF_LIST = 600;
  private static final String BETWEEN = ", ";
  private static final String CUT = "…";

  private ShortQuote() {}

  /**
   * A text whole, or its beginning and its end; a list whole, or its beginning and how much more.
   */
  static String text(String text) {
    if (text.length() <= MOST) {
      return text;
    }
    return text.contains(BETWEEN) ? list(text) : cut(text);
  }

  private static String list(String text) {
    if (text.length() <= MOST_OF_LIST) {
      return text;
    }
    int end = text.lastIndexOf(BETWEEN, MOST_OF_LIST);
    if (end <= 0) {
      return cut(text);
    }
    int more = 0;
    for (int at = end; at >= 0; at = text.indexOf(BETWEEN, at + BETWEEN.length())) {
      more++;
    }
    return text.substring(0, end) + BETWEEN + "and " + more + " more";
  }

  private static String cut(String text) {
    int head = text.offsetByCodePoints(0, Math.min(HEAD, text.codePointCount(0, text.length())));
    int tail = text.length() - TAIL;
    if (Character.isLowSurrogate(text.charAt(tail))) {
      tail++;
    }
    return head >= tail ? text : text.substring(0, head) + CUT + text.substring(tail);
  }
}
