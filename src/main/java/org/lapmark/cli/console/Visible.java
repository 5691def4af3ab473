package org.lapmark.cli.console;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import java.util.Locale;

/**
 * Text of unknown origin made fit for a terminal: characters that would steer it, or that change
 * the order or the visibility of others, are shown as escapes.
 */
public final class Visible {
  private Visible() {}

  /** A text with its steering characters, line ends included, shown as escapes. */
  public static String text(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(c -> shown.append(character(c)));
    return shown.toString();
  }

  /** Whether a code point stands for itself and steers nothing. */
  public static boolean is(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      // The joiners shape letters of several scripts and steer nothing.
      case Character.FORMAT -> c == 0x200C || c == 0x200D;
      default -> true;
    };
  }

  /** One code point as shown; a tab is an escape too, a report may show it in another form. */
  public static String character(int c) {
    return is(c)
        ? Character.toString(c)
        : String.format(Locale.ROOT, c > 0xFFFF ? "\\u{%x}" : "\\u%04x", c);
  }

  /** How many columns of a terminal a shown text takes. */
  public static int width(String shown) {
    return shown.codePoints().map(Visible::columns).sum();
  }

  private static int columns(int c) {
    switch (Character.getType(c)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT:
        return 0;
      default:
        int width = UCharacter.getIntPropertyValue(c, UProperty.EAST_ASIAN_WIDTH);
        return width == UCharacter.EastAsianWidth.WIDE
                || width == UCharacter.EastAsianWidth.FULLWIDTH
            ? 2
            : 1;
    }
  }
}
