package org.lapmark.finding;

import java.util.Arrays;
import java.util.Objects;

/**
 * A text file as read, able to turn an offset into a position. Immutable. Line ends are LF (the
 * reader has normalised them); a byte order mark has been removed.
 */
public final class SourceFile {
  private final String name;
  private final String content;
  private final int[] lineStarts;

  /**
   * Wraps a file's text.
   *
   * @param name the relative path used in positions
   * @param content the whole text, lines ended by LF
   */
  public SourceFile(String name, String content) {
    this.name = Objects.requireNonNull(name);
    this.content = Objects.requireNonNull(content);
    int[] starts = new int[16];
    int count = 1;
    for (int i = content.indexOf('\n'); i >= 0; i = content.indexOf('\n', i + 1)) {
      if (count == starts.length) {
        starts = Arrays.copyOf(starts, count * 2);
      }
      starts[count++] = i + 1;
    }
    this.lineStarts = Arrays.copyOf(starts, count);
  }

  /**
   * The relative path.
   *
   * @return the path with forward slashes
   */
  public String name() {
    return name;
  }

  /**
   * The whole text.
   *
   * @return the text with LF line ends
   */
  public String content() {
    return content;
  }

  /**
   * The position of a stretch of the text; a stretch over several lines is cut at the first line's
   * end.
   *
   * @param start 0-based offset in UTF-16 units; clamped into the text
   * @param end offset behind the last unit meant; clamped
   * @return the position, at least one column long
   */
  public Position position(int start, int end) {
    int from = Math.max(0, Math.min(start, content.length()));
    int found = Arrays.binarySearch(lineStarts, from);
    int line = found >= 0 ? found : -found - 2;
    int lineStart = lineStarts[line];
    int lineEnd = line + 1 < lineStarts.length ? lineStarts[line + 1] - 1 : content.length();
    int to = Math.max(from, Math.min(end, lineEnd));
    return new Position(
        name,
        line + 1,
        content.codePointCount(lineStart, from) + 1,
        Math.max(1, content.codePointCount(from, to)),
        content.substring(lineStart, lineEnd));
  }

  /**
   * The offset of a place given by line and column as parsers count them.
   *
   * @param line 0-based line; clamped
   * @param column 0-based column in code points; clamped to the line
   * @return 0-based offset in UTF-16 units
   */
  public int offset(int line, int column) {
    int at = Math.max(0, Math.min(line, lineStarts.length - 1));
    int start = lineStarts[at];
    int end = at + 1 < lineStarts.length ? lineStarts[at + 1] - 1 : content.length();
    int points = Math.max(0, Math.min(column, content.codePointCount(start, end)));
    return content.offsetByCodePoints(start, points);
  }
}
