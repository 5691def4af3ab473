package org.lapmark.source.sizes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;

/**
 * A column of the size table.
 *
 * @param index its place, from 0
 * @param head what stands above it
 */
record Column(int index, SourceText head) {
  String name() {
    return head.text().strip();
  }

  /** What stands in it in a row, without spaces around; empty where the row ends before. */
  String text(List<SourceText> row) {
    return index < row.size() ? row.get(index).text().strip() : "";
  }

  /** What stands in it in a row, without spaces around; null where the row ends before. */
  SourceText cell(List<SourceText> row) {
    return index < row.size() ? trimmed(row.get(index)) : null;
  }

  /** The column of a name, or null. */
  static Column of(List<SourceText> head, String name) {
    for (int i = 0; i < head.size(); i++) {
      if (head.get(i).text().strip().equalsIgnoreCase(name)) {
        return new Column(i, head.get(i));
      }
    }
    return null;
  }

  /** The cells of some columns by the columns' names. */
  static Map<String, SourceText> cells(List<SourceText> row, List<Column> sizes) {
    Map<String, SourceText> cells = new LinkedHashMap<>();
    for (Column size : sizes) {
      if (size.index() < row.size()) {
        cells.put(size.name(), size.cell(row));
      }
    }
    return cells;
  }

  /** A cell without spaces around. */
  static SourceText trimmed(SourceText cell) {
    String text = cell.text();
    String trimmed = text.strip();
    int start = text.indexOf(trimmed);
    return cell.part(start, start + trimmed.length());
  }
}
