package org.lapmark.finding;

import java.util.Comparator;
import java.util.Objects;

/**
 * A stretch of one line of one source file.
 *
 * @param file the file's path relative to the pattern folder's parent, with forward slashes: {@code
 *     <pattern>/pattern.yaml}
 * @param line 1-based line number; 0 when the finding concerns the file as a whole
 * @param column 1-based column in Unicode code points; 0 with line 0
 * @param length how many code points are meant; at least 1 unless line is 0
 * @param lineText the whole line without its line end, empty when line is 0
 */
public record Position(String file, int line, int column, int length, String lineText)
    implements Comparable<Position> {
  private static final Comparator<Position> ORDER =
      Comparator.comparing(Position::file)
          .thenComparingInt(Position::line)
          .thenComparingInt(Position::column)
          .thenComparingInt(Position::length);

  /** Checks the components. */
  public Position {
    Objects.requireNonNull(file);
    Objects.requireNonNull(lineText);
    if (line < 0 || column < 0 || length < 0) {
      throw new IllegalArgumentException("negative position");
    }
  }

  /**
   * The position of a file as a whole.
   *
   * @param file the file's relative path
   * @return a position with line 0
   */
  public static Position ofFile(String file) {
    return new Position(file, 0, 0, 0, "");
  }

  @Override
  public int compareTo(Position other) {
    return ORDER.compare(this, other);
  }
}
