package org.lapmark.finding;

import java.util.Locale;
import java.util.Optional;

/**
 * Characters that nobody sees and that change what is read, found or printed. Those are left alone
 * that scripts need: joiners and non-joiners, soft hyphens, the marks of direction that belong to a
 * single place, and the selectors of a letter's form.
 */
public enum InvisibleCharacters {
  /** A control character, a separator of lines, or no character at all. */
  CONTROL,
  /** Changes the direction of the text behind it, so that it is read in another order. */
  DIRECTION,
  /** Takes no room, and keeps a word from being found. */
  INVISIBLE;

  /**
   * What a character is, if it is one of these.
   *
   * @param point the code point; tabs and line ends (LF) are none of these
   * @return its kind, or nothing
   */
  public static Optional<InvisibleCharacters> of(int point) {
    if (isControl(point)) {
      return Optional.of(CONTROL);
    }
    if (isIn(point, 0x202a, 0x202e) || isIn(point, 0x2066, 0x2069)) {
      return Optional.of(DIRECTION);
    }
    return isInvisible(point) ? Optional.of(INVISIBLE) : Optional.empty();
  }

  private static boolean isControl(int point) {
    return point < ' ' && point != '\t' && point != '\n'
        || isIn(point, 0x7f, 0x9f)
        || point == 0x2028
        || point == 0x2029
        || isIn(point, Character.MIN_SURROGATE, Character.MAX_SURROGATE)
        || isIn(point, 0xfdd0, 0xfdef)
        || (point & 0xfffe) == 0xfffe;
  }

  private static boolean isInvisible(int point) {
    return point == 0x200b // zero width space
        || isIn(point, 0x2060, 0x2065) // word joiner, invisible operators
        || isIn(point, 0x206a, 0x206f) // deprecated format characters
        || point == 0x180e // vowel separator
        || point == 0x115f // fillers
        || point == 0x1160
        || point == 0x3164
        || point == 0xffa0
        || point == 0xfeff // byte order mark, no-break space without width
        || isIn(point, 0xfff0, 0xfffb) // annotations
        || isIn(point, 0x1bca0, 0x1bca3) // controls of shorthand and of music
        || isIn(point, 0x1d173, 0x1d17a)
        || isIn(point, 0xe0000, 0xe00ff); // tags
  }

  /**
   * Whether a character takes no room, be it one of these or one that scripts need. In a word that
   * the program has to know, such as a key, it is always a mistake.
   *
   * @param point the code point
   * @return whether nothing of it is seen
   */
  public static boolean takesNoRoom(int point) {
    return of(point).isPresent()
        || point == 0xad
        || point == 0x34f
        || point == 0x61c
        || isIn(point, 0x180b, 0x180f)
        || isIn(point, 0x200c, 0x200f)
        || isIn(point, 0xfe00, 0xfe0f)
        || isIn(point, 0xe0100, 0xe01ef);
  }

  /**
   * A character's name for people.
   *
   * @param point the code point
   * @return such as {@code U+202E RIGHT-TO-LEFT OVERRIDE}
   */
  public static String named(int point) {
    String name = Character.getName(point);
    return String.format(Locale.ROOT, "U+%04X", point) + (name == null ? "" : " " + name);
  }

  /**
   * The kind's name in messages.
   *
   * @return a word in lower case
   */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  private static boolean isIn(int point, int first, int last) {
    return point >= first && point <= last;
  }
}
