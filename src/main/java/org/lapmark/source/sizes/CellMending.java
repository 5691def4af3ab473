package org.lapmark.source.sizes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.MeasureCode;

/**
 * Puts cells of a row right that stand in each other's columns, or that a decimal comma took apart,
 * and reports it, so that the rest of the row is still checked.
 *
 * @param file the table
 * @param measure the column of names
 * @param unit the column of units; null if there is none
 * @param sizes the columns of sizes
 * @param units all units by their words
 * @param findings where problems go
 */
record CellMending(
    SourceFile file,
    Column measure,
    Column unit,
    List<Column> sizes,
    Map<String, CellUnit> units,
    Findings findings) {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");

  /** Whether every row has its name and its unit in each other's columns, which is reported. */
  boolean swapped(List<List<SourceText>> rows) {
    if (unit == null || rows.size() < 2) {
      return false;
    }
    for (List<SourceText> row : rows.subList(1, rows.size())) {
      if (!isSwapped(row)) {
        return false;
      }
    }
    findings.add(
        SizesCode.CELLS_SWAPPED,
        Column.trimmed(rows.get(1).get(measure.index())).position(),
        "first",
        measure.text(rows.get(1)),
        "second",
        unit.text(rows.get(1)),
        "kind",
        "name",
        "rows",
        rows.size() - 1);
    return true;
  }

  private boolean isSwapped(List<SourceText> row) {
    String name = measure.text(row);
    String second = unit.text(row);
    return !name.isEmpty()
        && units.containsKey(name)
        && !units.containsKey(second)
        && NAME.matcher(second).matches();
  }

  /** A row with its cells in their own columns. */
  List<SourceText> unswapped(List<SourceText> row, boolean reported) {
    if (unit == null) {
      return row;
    }
    int first = -1;
    int second = unit.index();
    boolean name = isSwapped(row);
    if (name) {
      first = measure.index();
    } else if (CellNumber.parse(unit.text(row), true).kind() == CellNumber.Kind.NUMBER) {
      for (Column size : sizes) {
        String text = size.text(row);
        if (first < 0 && !text.isEmpty() && units.containsKey(text) && !text.equals("-")) {
          first = size.index();
        }
      }
    }
    if (first < 0) {
      return row;
    }
    List<SourceText> cells = new ArrayList<>(row);
    Collections.swap(cells, first, second);
    if (reported || !name) {
      int left = Math.min(first, second);
      findings.add(
          SizesCode.CELLS_SWAPPED,
          Column.trimmed(row.get(left)).position(),
          "first",
          row.get(left).text().strip(),
          "second",
          row.get(Math.max(first, second)).text().strip(),
          "kind",
          name ? "name" : "unit",
          "rows",
          1);
    }
    return cells;
  }

  /**
   * A row with a number that a decimal comma took apart put together again: where a row of a table
   * with commas has one cell too many, and the row is in order with two of its cells as one.
   */
  List<SourceText> joined(List<SourceText> row, List<SourceText> head, char separator) {
    if (separator != ',' || row.size() != head.size() + 1 || sizes.size() < 2) {
      return row;
    }
    List<SourceText> only = null;
    int comma = 0;
    for (Column size : sizes) {
      int at = size.index();
      SourceText whole = row.get(at);
      SourceText decimals = row.get(at + 1);
      if (!whole.text().matches("[0-9]+") || !decimals.text().matches("[0-9]+")) {
        continue;
      }
      List<SourceText> cells = new ArrayList<>(row);
      cells.remove(at);
      cells.set(at, joined(whole, decimals));
      if (isOrdered(cells)) {
        if (only != null) {
          return row;
        }
        only = cells;
        comma = whole.offset(whole.text().length());
      }
    }
    if (only == null) {
      return row;
    }
    findings.add(MeasureCode.FORMULA_DECIMAL_COMMA, file.position(comma, comma + 1));
    return only;
  }

  private SourceText joined(SourceText whole, SourceText decimals) {
    String text = whole.text() + "." + decimals.text();
    int[] offsets = new int[text.length() + 1];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = whole.offset(0) + i;
    }
    return SourceText.mapped(file, text, offsets);
  }

  private boolean isOrdered(List<SourceText> cells) {
    List<Double> numbers = new ArrayList<>();
    for (Column size : sizes) {
      CellNumber number =
          CellNumber.parse(
              size.index() < cells.size() ? cells.get(size.index()).text() : "", false);
      if (number.kind() != CellNumber.Kind.NUMBER) {
        return false;
      }
      numbers.add(number.number());
    }
    return ValueOrder.turn(numbers) < 0;
  }
}
