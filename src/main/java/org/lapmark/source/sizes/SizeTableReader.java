package org.lapmark.source.sizes;

import java.util.ArrayList;
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
  private static final String ANY_ORDER = "any_order";
  // 1 January 2000 to 31 December 2099, as spreadsheets count days.
  private static final double FIRST_DAY = 36_526;
  private static final double LAST_DAY = 73_050;

  private final Reading reading;
  private final Findings findings;
  private final SourceFile file;
  private final Map<String, CellUnit> units = CellUnit.known();

  public SizeTableReader(Reading reading, SourceFile file) {
    this.reading = reading;
    this.findings = reading.findings();
    this.file = file;
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
    Column anyOrder = Column.of(head, ANY_ORDER);
    List<Column> sizes = sizes(head);
    CellMending mending = new CellMending(file, measure, unit, sizes, units, findings);
    boolean swapped = mending.swapped(rows);
    boolean commas = false;
    for (List<SourceText> row : rows.subList(1, rows.size())) {
      commas |= row.stream().anyMatch(cell -> CellNumber.hasDecimalComma(cell.text()));
    }
    List<String> names = sizes.stream().map(Column::name).toList();
    List<SourceText> heads = sizes.stream().map(size -> Column.trimmed(size.head())).toList();
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
      List<SourceText> mended = mending.unswapped(mending.joined(row, head, separator), !swapped);
      SizeTable.Row read = row(mended, head, measure, unit, sizes, commas, seen);
      if (read != null) {
        if (!says(mended, anyOrder)) {
          read = SizeRows.withoutStraySign(read, Column.cells(mended, sizes), findings);
          order.add(read, Column.cells(mended, sizes));
          CellUnit known = unit == null ? null : units.get(unit.text(mended));
          if (known != null && unit.index() < mended.size()) {
            rowUnits.add(read, unit.cell(mended), known.factor());
          }
        }
        measures.add(read);
      }
    }
    rowUnits.check();
    return new SizeTable(names, order.checked(measures), heads);
  }

  private boolean says(List<SourceText> row, Column column) {
    String word = column == null ? "" : column.text(row).toLowerCase(Locale.ROOT);
    if (!word.isEmpty() && !word.equals("yes") && !word.equals("no")) {
      reading.unknown(
          KeyCode.MARK_WORD_UNKNOWN,
          Column.trimmed(row.get(column.index())).position(),
          word,
          List.of("yes", "no"));
    }
    return word.equals("yes");
  }

  private void tooMany(String what, Position position, int limit) {
    findings.add(
        KeyCode.TOO_MANY_ENTRIES, position, "what", what, "limit", Integer.toString(limit));
  }

  private Column column(List<SourceText> head, String name) {
    Column column = Column.of(head, name);
    if (column == null) {
      findings.add(SizesCode.SIZES_COLUMN_MISSING, line(head), "name", name);
    }
    return column;
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
        findings.add(
            SizesCode.SIZE_DUPLICATE, Column.trimmed(column.head()).position(), "name", name);
      } else if (!own && !SIZE.matcher(name).matches()) {
        findings.add(
            SizesCode.SIZE_NAME_WRONG, Column.trimmed(column.head()).position(), "name", name);
      } else if (!own && sizes.size() >= reading.limits().sizes()) {
        tooMany("sizes", Column.trimmed(column.head()).position(), reading.limits().sizes());
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
    SourceText name = Column.trimmed(nameCell);
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
    CellUnit factor = unit(row, unit);
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
  private CellUnit unit(List<SourceText> row, Column column) {
    if (column == null) {
      return null;
    }
    SourceText cell = column.cell(row);
    CellUnit unit = units.get(cell == null ? "" : cell.text());
    if (unit == null) {
      List<String> known = units.keySet().stream().filter(word -> !word.isEmpty()).toList();
      reading.unknown(SizesCode.UNIT_UNKNOWN, cell.position(), cell.text(), known);
    }
    return unit;
  }

  private Value.Quantity value(
      List<SourceText> row, Column size, CellUnit unit, boolean commas, SourceText name) {
    SourceText cell = size.cell(row);
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
        number >= FIRST_DAY && number <= LAST_DAY && unit != null && unit.factor() >= CellUnit.INCH;
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
        findings.add(
            SizesCode.CELL_WITHOUT_SIZE,
            Column.trimmed(cell).position(),
            "text",
            cell.text().strip());
        return;
      }
    }
  }
}
