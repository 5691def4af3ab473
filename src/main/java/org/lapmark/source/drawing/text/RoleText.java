package org.lapmark.source.drawing.text;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.SourceText;

/**
 * An id or a label that may state a role, with what drawing programs do to it undone: characters
 * that they write as {@code _x5F_}, blanks around it, and the number that they add to a copy's.
 *
 * @param text the text without all that
 * @param numbered whether it had a number of a drawing program's
 */
public record RoleText(SourceText text, boolean numbered) {
  private static final int LONGEST = 200;
  private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{2,6})_");
  private static final Pattern NUMBER = Pattern.compile("(-[0-9]+|_[0-9]+_)$");

  /** Undoes what drawing programs do; a text too long for a role is left as it is. */
  public static RoleText of(SourceText written) {
    if (written.text().length() > LONGEST) {
      return new RoleText(written, false);
    }
    SourceText plain = unescaped(written);
    String text = plain.text();
    int from = text.length() - text.stripLeading().length();
    int to = Math.max(from, text.stripTrailing().length());
    Matcher number = NUMBER.matcher(text.substring(from, to));
    boolean numbered = number.find() && number.start() > 0;
    return new RoleText(plain.part(from, numbered ? from + number.start() : to), numbered);
  }

  private static SourceText unescaped(SourceText written) {
    String text = written.text();
    Matcher escape = ESCAPE.matcher(text);
    StringBuilder plain = new StringBuilder();
    int[] offsets = new int[text.length() + 1];
    int at = 0;
    while (escape.find()) {
      int point = Integer.parseInt(escape.group(1), 16);
      if (!Character.isDefined(point)
          || !Character.isBmpCodePoint(point)
          || Character.isISOControl(point)
          || Character.isSurrogate((char) point)) {
        continue;
      }
      copy(written, at, escape.start(), plain, offsets);
      offsets[plain.length()] = written.offset(escape.start());
      plain.append((char) point);
      at = escape.end();
    }
    copy(written, at, text.length(), plain, offsets);
    offsets[plain.length()] = written.offset(text.length());
    return SourceText.mapped(
        written.file(), plain.toString(), Arrays.copyOf(offsets, plain.length() + 1));
  }

  private static void copy(SourceText from, int start, int end, StringBuilder to, int[] offsets) {
    for (int i = start; i < end; i++) {
      offsets[to.length()] = from.offset(i);
      to.append(from.text().charAt(i));
    }
  }
}
