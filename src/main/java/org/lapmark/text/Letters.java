package org.lapmark.text;

/** Which characters can stand in a document, and how those are hidden that Markdown mustn't see. */
public final class Letters {
  /** Stands for a bar that doesn't end a table's cell. */
  public static final char HIDDEN_BAR = '\ue000';

  /** Stands for the backslash before such a bar. */
  public static final char HIDDEN_BACKSLASH = '\ue001';

  private Letters() {}

  /**
   * Whether a character can be printed and stand in XML; line ends and tabs can.
   *
   * @param point the character's number
   * @return whether it can
   */
  public static boolean isPlain(int point) {
    if (point < 0x20) {
      return point == '\n' || point == '\t';
    }
    return !(point >= 0x7f && point <= 0x9f
        || point >= 0xd800 && point <= 0xf8ff // surrogates that lost their other half; private use
        || point >= 0xf0000 // private use
        || point >= 0xfdd0 && point <= 0xfdef
        || (point & 0xfffe) == 0xfffe
        || point == 0x2028
        || point == 0x2029
        || point == 0xfeff);
  }

  /** Text without characters that can't stand in a document. */
  static String plain(String text) {
    if (text.codePoints().allMatch(Letters::isPlain)) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    text.codePoints().filter(Letters::isPlain).forEach(plain::appendCodePoint);
    return plain.toString();
  }

  /**
   * Text from the Markdown parser as a reader sees it.
   *
   * @param parsed the text, in which characters may be hidden
   * @return the text without those that can't stand in a document
   */
  public static String shown(String parsed) {
    return plain(parsed.replace(HIDDEN_BAR, '|').replace(String.valueOf(HIDDEN_BACKSLASH), ""));
  }

  /**
   * As much of a text as a message quotes.
   *
   * @param text the text
   * @return the text, or its beginning
   */
  public static String brief(String text) {
    int points = text.codePointCount(0, text.length());
    return points <= 60 ? text : text.substring(0, text.offsetByCodePoints(0, 40)) + "…";
  }
}
