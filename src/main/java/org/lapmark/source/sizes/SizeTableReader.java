package org.lapmark.source.sizes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.MeasureCode;
import org.lapmark.measure.Value;
import org.lapmark.source.SizeTable;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;

/**
 * Reads the size table: a row a base measure, with its unit; a column a size; a column {@code note}
 * is the author's own, and one {@code any_order} says in which rows the order of the values isn't
 * checked.
 */
public final class SizeTableReader {
  private static final Pattern SIZE =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._+-]{0,18}[\\p{L}\\p{N}+])?");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");
  private static final String ANY_ORDER = "any_order";
  private static final double INCH = 25.4;
  // 1 January 2000 to 31 December 2099, as spreadsheets count days.
  private static final double FIRST_DAY = 36_526;
  private static final double LAST_DAY = 73_050;

  private final Reading reading;
  private final Findings findings;
  private final SourceFile file;
  private final Map<String, Unit> units = units();

  public SizeTableReader(Reading reading, SourceFile file) {
    this.reading = reading;
    this.findings = reading.findings();
    this.file = file;
  }

  private record Unit(double factor, Dimension dimension) {}

  private record Column(int index, SourceText head) {
    String name() {
      return head.text().strip();
    }
  }

  private static Map<String, Unit> units() {
    Map<String, Unit> units = new LinkedHashMap<>();
    units.put("mm", new Unit(1, Dimension.LENGTH));
    units.put("cm", new Unit(10, Dimension.LENGTH));
    units.put("m", new Unit(1000, Dimension.LENGTH));
    units.put("in", new Unit(INCH, Dimension.LENGTH));
    units.put("ft", new Unit(12 * INCH, Dimension.LENGTH));
    units.put("yd", new Unit(36 * INCH, Dimension.LENGTH));
    units.put("deg", new Unit(1, Dimension.ANGLE));
    units.put("count", new Unit(1, Dimension.COUNT));
    units.put("-", new Unit(1, Dimension.PLAIN));
    units.put("", new Unit(1, Dimension.PLAIN));
    return units;
  }

  /** Reads the table; null if it can't be taken apart, which is then reported. */
  public SizeTable read() {
    char separator = CsvCells.separator(file);
    List<List<SourceText>> rows;
    try {
      // One more than is allowed, and the head.
      rows = CsvCells.read(file, separator, reading.limits().rows() + 2);
    } catch (FindingException e) {
      findings.add(e.finding());
      return null;
    }
    List<SourceText> head = rows.isEmpty() ? List.of() : rows.get(0);
    if (rows.size() < 2 && head.stream().allMatch(cell -> cell.text().isBlank())) {
      reading.saysNothing(file, "sizes", List.of());
      return null;
    }
    Column measure = column(head, "measure");
    Column unit = column(head, "unit");
    if (measure == null) {
      return null;
    }
    Column anyOrder = ownColumn(head, ANY_ORDER);
    List<Column> sizes = sizes(head);
    boolean swapped = swapped(rows, measure, unit);
    boolean commas = false;
    for (List<SourceText> row : rows.subList(1, rows.size())) {
      commas |= row.stream().anyMatch(cell -> CellNumber.hasDecimalComma(cell.text()));
    }
    List<String> names = sizes.stream().map(Column::name).toList();
    List<SourceText> heads = sizes.stream().map(size -> trimmedText(size.head())).toList();
    SizeRows order = new SizeRows(heads, findings);
    RowUnits rowUnits = new RowUnits(findings);
    List<SizeTable.Row> measures = new ArrayList<>();
    Map<String, Position> seen = new LinkedHashMap<>();
    int count = 0;
    for (List<SourceText> row : rows.subList(1, rows.size())) {
      if (++count > reading.limits().rows()) {
        tooMany("measures", row.get(0).position(), reading.limits().rows());
        break;
      }
      List<SourceText> mended = mended(row, head, sizes, separator);
      mended = unswapped(mended, measure, unit, sizes, !swapped);
      SizeTable.Row read = row(mended, head, measure, unit, sizes, commas, seen);
      if (read != null) {
        if (!says(mended, anyOrder)) {
          read = SizeRows.withoutStraySign(read, cells(mended, sizes), findings);
          order.add(read, cells(mended, sizes));
          Unit known = unit == null ? null : units.get(text(mended, unit));
          if (known != null && unit.index() < mended.size()) {
            rowUnits.add(read, trimmedText(mended.get(unit.index())), known.factor());
          }
        }
        measures.add(read);
      }
    }
    rowUnits.check();
    return new SizeTable(names, order.checked(measures), heads);
  }

  /** Whether every row has its name and its unit in each other's columns, which is reported. */
  private boolean swapped(List<List<SourceText>> rows, Column measure, Column unit) {
    if (unit == null || rows.size() < 2) {
      return false;
    }
    for (List<SourceText> row : rows.subList(1, rows.size())) {
      if (!isSwapped(row, measure, unit)) {
        return false;
      }
    }
    findings.add(
        SizesCode.CELLS_SWAPPED,
        trimmed(rows.get(1).get(measure.index())),
        "first",
        text(rows.get(1), measure),
        "second",
        text(rows.get(1), unit),
        "kind",
        "name",
        "rows",
        rows.size() - 1);
    return true;
  }

  private boolean isSwapped(List<SourceText> row, Column measure, Column unit) {
    String name = text(row, measure);
    String second = text(row, unit);
    return !name.isEmpty()
        && units.containsKey(name)
        && !units.containsKey(second)
        && NAME.matcher(second).matches();
  }

  /** A row with its cells in their own columns. */
  private List<SourceText> unswapped(
      List<SourceText> row, Column measure, Column unit, List<Column> sizes, boolean reported) {
    if (unit == null) {
      return row;
    }
    int first = -1;
    int second = unit.index();
    boolean name = isSwapped(row, measure, unit);
    if (name) {
      first = measure.index();
    } else if (CellNumber.parse(text(row, unit), true).kind() == CellNumber.Kind.NUMBER) {
      for (Column size : sizes) {
        String text = text(row, size);
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
          trimmed(row.get(left)),
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
  private List<SourceText> mended(
      List<SourceText> row, List<SourceText> head, List<Column> sizes, char separator) {
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
      if (isOrdered(cells, sizes)) {
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

  private static boolean isOrdered(List<SourceText> cells, List<Column> sizes) {
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
    return SizeRows.turn(numbers) < 0;
  }

  private static String text(List<SourceText> row, Column column) {
    return column.index() < row.size() ? row.get(column.index()).text().strip() : "";
  }

  private boolean says(List<SourceText> row, Column column) {
    String word = column == null ? "" : text(row, column).toLowerCase(Locale.ROOT);
    if (!word.isEmpty() && !word.equals("yes") && !word.equals("no")) {
      reading.unknown(
          KeyCode.MARK_WORD_UNKNOWN, trimmed(row.get(column.index())), word, List.of("yes", "no"));
    }
    return word.equals("yes");
  }

  private static Map<String, SourceText> cells(List<SourceText> row, List<Column> sizes) {
    Map<String, SourceText> cells = new LinkedHashMap<>();
    for (Column size : sizes) {
      if (size.index() < row.size()) {
        cells.put(size.name(), trimmedText(row.get(size.index())));
      }
    }
    return cells;
  }

  private void tooMany(String what, Position position, int limit) {
    findings.add(
        KeyCode.TOO_MANY_ENTRIES, position, "what", what, "limit", Integer.toString(limit));
  }

  private Column column(List<SourceText> head, String name) {
    Column column = ownColumn(head, name);
    if (column == null) {
      findings.add(SizesCode.SIZES_COLUMN_MISSING, line(head), "name", name);
    }
    return column;
  }

  /** A column that may be missing. */
  private static Column ownColumn(List<SourceText> head, String name) {
    for (int i = 0; i < head.size(); i++) {
      if (head.get(i).text().strip().equalsIgnoreCase(name)) {
        return new Column(i, head.get(i));
      }
    }
    return null;
  }

  /** The whole first line. */
  private Position line(List<SourceText> head) {
    int start = head.isEmpty() ? 0 : head.get(0).offset(0);
    return file.position(start, file.content().length());
  }

  private List<Column> sizes(List<SourceText> head) {
    List<Column> sizes = new ArrayList<>();
    Map<String, Column> seen = new LinkedHashMap<>();
    for (int i = 0; i < head.size(); i++) {
      Column column = new Column(i, head.get(i));
      String name = column.name();
      String folded = name.toLowerCase(Locale.ROOT);
      if (name.isEmpty() || folded.equals("note")) {
        continue;
      }
      boolean own = folded.equals("measure") || folded.equals("unit") || folded.equals(ANY_ORDER);
      if (seen.putIfAbsent(folded, column) != null) {
        findings.add(SizesCode.SIZE_DUPLICATE, trimmed(column.head()), "name", name);
      } else if (!own && !SIZE.matcher(name).matches()) {
        findings.add(SizesCode.SIZE_NAME_WRONG, trimmed(column.head()), "name", name);
      } else if (!own && sizes.size() >= reading.limits().sizes()) {
        tooMany("sizes", trimmed(column.head()), reading.limits().sizes());
        break;
      } else if (!own) {
        sizes.add(column);
      }
    }
    if (sizes.isEmpty()) {
      findings.add(SizesCode.SIZES_NONE, line(head));
    }
    return sizes;
  }

  private SizeTable.Row row(
      List<SourceText> row,
      List<SourceText> head,
      Column measure,
      Column unit,
      List<Column> sizes,
      boolean commas,
      Map<String, Position> seen) {
    SourceText nameCell = row.size() > measure.index() ? row.get(measure.index()) : row.get(0);
    SourceText name = trimmedText(nameCell);
    boolean known = reading.checkName(name, true);
    if (known) {
      Position first = seen.putIfAbsent(name.text(), name.position());
      if (first != null) {
        findings.add(
            SizesCode.MEASURE_DUPLICATE,
            name.position(),
            "name",
            name.text(),
            "line",
            Integer.toString(first.line()));
        known = false;
      }
    }
    Unit factor = unit(row, unit);
    Map<String, Value.Quantity> values = new LinkedHashMap<>();
    // Without a column for units nobody knows which column is which.
    for (Column size : unit == null ? List.<Column>of() : sizes) {
      Value.Quantity value = value(row, size, factor, commas, name);
      if (value != null) {
        values.put(size.name(), value);
      }
    }
    if (unit != null) {
      withoutSize(row, head);
    }
    return known ? new SizeTable.Row(name.text(), name.position(), values) : null;
  }

  /** The unit of a row; null if it isn't known, which is then reported. */
  private Unit unit(List<SourceText> row, Column column) {
    if (column == null) {
      return null;
    }
    SourceText cell = column.index() < row.size() ? trimmedText(row.get(column.index())) : null;
    Unit unit = units.get(cell == null ? "" : cell.text());
    if (unit == null) {
      List<String> known = units.keySet().stream().filter(word -> !word.isEmpty()).toList();
      reading.unknown(SizesCode.UNIT_UNKNOWN, cell.position(), cell.text(), known);
    }
    return unit;
  }

  private Value.Quantity value(
      List<SourceText> row, Column size, Unit unit, boolean commas, SourceText name) {
    SourceText cell = size.index() < row.size() ? trimmedText(row.get(size.index())) : null;
    CellNumber read = CellNumber.parse(cell == null ? "" : cell.text(), commas);
    if (read.kind() == CellNumber.Kind.EMPTY) {
      Position position = cell == null ? row.get(row.size() - 1).position() : cell.position();
      findings.add(SizesCode.CELL_MISSING, position, "measure", name.text(), "size", size.name());
      return null;
    }
    FindingCode code =
        switch (read.kind()) {
          case DATE -> SizesCode.CELL_DATE;
          case AMBIGUOUS -> SizesCode.CELL_AMBIGUOUS;
          case FORMULA -> SizesCode.CELL_FORMULA;
          case OTHER -> SizesCode.CELL_NOT_NUMBER;
          default -> null;
        };
    double number = read.number();
    boolean day =
        number >= FIRST_DAY && number <= LAST_DAY && unit != null && unit.factor() >= INCH;
    if (code == null && day && number == Math.rint(number) && unit.factor() < 1000) {
      code = SizesCode.CELL_DATE;
    }
    if (code == null
        && unit != null
        && !(Math.abs(number * unit.factor()) <= reading.limits().largest())) {
      code = KeyCode.NUMBER_TOO_LARGE;
    }
    if (code == null
        && unit != null
        && unit.dimension() == Dimension.COUNT
        && (number != Math.rint(number) || number < 0)) {
      code = SizesCode.CELL_NOT_WHOLE;
    }
    if (code != null) {
      findings.add(code, cell.position(), "text", cell.text());
      return null;
    }
    return unit == null ? null : new Value.Quantity(number * unit.factor(), unit.dimension());
  }

  /** Reports the first cell in a column without a head, or behind the last one. */
  private void withoutSize(List<SourceText> row, List<SourceText> head) {
    for (int i = 0; i < row.size(); i++) {
      SourceText cell = row.get(i);
      if (!cell.text().isBlank() && (i >= head.size() || head.get(i).text().isBlank())) {
        findings.add(SizesCode.CELL_WITHOUT_SIZE, trimmed(cell), "text", cell.text().strip());
        return;
      }
    }
  }

  private static Position trimmed(SourceText cell) {
    return trimmedText(cell).position();
  }

  private static SourceText trimmedText(SourceText cell) {
    String text = cell.text();
    String trimmed = text.strip();
    int start = text.indexOf(trimmed);
    return cell.part(start, start + trimmed.length());
  }
}
