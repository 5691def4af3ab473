package org.lapmark.cli.console;

import java.util.List;

/** Tables for people. */
public final class Columns {
  private Columns() {}

  /** Columns as wide as their widest cell, numbers to the right. */
  public static void append(
      StringBuilder text, String indent, List<List<String>> rows, List<Boolean> right) {
    List<List<String>> shown =
        rows.stream().map(row -> row.stream().map(Visible::text).toList()).toList();
    for (List<String> row : shown) {
      StringBuilder line = new StringBuilder(indent);
      for (int column = 0; column < row.size(); column++) {
        int at = column;
        int width = shown.stream().mapToInt(other -> Visible.width(other.get(at))).max().orElse(0);
        if (width == 0) {
          continue;
        }
        String cell = row.get(column);
        String space = " ".repeat(width - Visible.width(cell));
        line.append(right.get(column) ? space + cell : cell + space).append("  ");
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
  }
}
