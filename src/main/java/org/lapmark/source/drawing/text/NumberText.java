package org.lapmark.source.drawing.text;

/** Numbers as SVG writes them. */
public final class NumberText {
  private NumberText() {}

  /**
   * Where a number ends.
   *
   * @param text the text
   * @param start where it would begin
   * @return the index behind it, or -1 if there is none
   */
  public static int end(String text, int start) {
    int at = start;
    if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
      at++;
    }
    int whole = digits(text, at);
    boolean some = whole > at;
    at = whole;
    if (at < text.length() && text.charAt(at) == '.') {
      int fraction = digits(text, at + 1);
      if (fraction > at + 1 || some) {
        some = some || fraction > at + 1;
        at = fraction;
      }
    }
    if (!some) {
      return -1;
    }
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      int exponent = at + 1;
      if (exponent < text.length()
          && (text.charAt(exponent) == '+' || text.charAt(exponent) == '-')) {
        exponent++;
      }
      int end = digits(text, exponent);
      if (end > exponent) {
        at = end;
      }
    }
    return at;
  }

  private static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at;
  }
}
