package org.lapmark.cli.report;

import java.nio.charset.StandardCharsets;
import java.util.function.IntUnaryOperator;
import org.lapmark.cli.console.Visible;

/** Texts cut to a number of bytes, as they take in whatever form writes most for them. */
final class BriefText {
  private static final String CUT = "…";
  private static final int BYTES_OF_CUT = 3;

  /** As a character is written that isn't plainly visible. */
  private static final int ESCAPED = 6;

  /** A URI writes three letters for each byte. */
  private static final int BYTES_OF_PATH_CUT = 9;

  private BriefText() {}

  /** How many bytes a text takes within quotation marks. */
  static int bytes(String text) {
    return text.codePoints().map(BriefText::bytes).sum();
  }

  /** How many bytes a path takes within quotation marks, or as a URI. */
  static int pathBytes(String path) {
    return path.codePoints().map(BriefText::pathBytes).sum();
  }

  private static int bytes(int c) {
    if (!Visible.is(c)) {
      return ESCAPED * Character.charCount(c);
    }
    return c == '"' || c == '\\' ? 2 : utf8(c);
  }

  private static int pathBytes(int c) {
    return Math.max(bytes(c), c > '~' || !PathUri.isPlain((char) c) ? 3 * utf8(c) : 1);
  }

  private static int utf8(int c) {
    return Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
  }

  /** A text, or its beginning with an ellipsis. */
  static String head(String text, int bytes) {
    if (bytes(text) <= bytes) {
      return text;
    }
    int[] points = text.codePoints().toArray();
    int end = 0;
    for (int left = bytes - BYTES_OF_CUT; end < points.length; end++) {
      left -= bytes(points[end]);
      if (left < 0) {
        break;
      }
    }
    return new String(points, 0, end) + CUT;
  }

  /** A path, or its beginning and its end with an ellipsis between them. */
  static String path(String path, int bytes) {
    if (pathBytes(path) <= bytes) {
      return path;
    }
    int[] points = path.codePoints().toArray();
    int half = (bytes - BYTES_OF_PATH_CUT) / 2;
    int head = reach(points, 0, 1, half, BriefText::pathBytes);
    int tail = reach(points, points.length - 1, -1, half, BriefText::pathBytes);
    return new String(points, 0, head) + CUT + new String(points, points.length - tail, tail);
  }

  /**
   * A line, or the part of it around a place, with an ellipsis where something is left out.
   *
   * @param line the line
   * @param from the place's beginning in code points
   * @param bytes how many bytes are left for it
   */
  static String around(String line, int from, int bytes) {
    if (bytes(line) <= bytes) {
      return line;
    }
    int[] points = line.codePoints().toArray();
    int start = Math.max(0, Math.min(from, points.length));
    int left = bytes - 2 * BYTES_OF_CUT;
    int before = reach(points, start - 1, -1, left / 3, BriefText::bytes);
    for (int i = start - before; i < start; i++) {
      left -= bytes(points[i]);
    }
    int after = reach(points, start, 1, left, BriefText::bytes);
    for (int i = start; i < start + after; i++) {
      left -= bytes(points[i]);
    }
    // What isn't needed behind the place is given to what stands before it.
    before += reach(points, start - before - 1, -1, left, BriefText::bytes);
    return (start > before ? CUT : "")
        + new String(points, start - before, before + after)
        + (start + after < points.length ? CUT : "");
  }

  /** How many characters from a place on, in one direction, take no more than some bytes. */
  private static int reach(int[] points, int from, int step, int bytes, IntUnaryOperator cost) {
    int reach = 0;
    int left = bytes;
    for (int i = from; i >= 0 && i < points.length; i += step) {
      left -= cost.applyAsInt(points[i]);
      if (left < 0) {
        break;
      }
      reach++;
    }
    return reach;
  }
}
