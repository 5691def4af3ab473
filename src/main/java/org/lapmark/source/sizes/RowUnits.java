package org.lapmark.source.sizes;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Value;
import org.lapmark.source.SizeTable;

/**
 * Looks for a row of a size table whose unit is another's: its lengths are beyond those of a body
 * or a bag, and would be among all other rows' if they were in those rows' unit.
 */
final class RowUnits {
  /** No length of a garment or a bag is longer, in millimetres. */
  private static final double LONG = 3000;

  /** How far numbers may be beyond those of other rows and still be like them. */
  private static final double LIKE = 3;

  private final Findings findings;
  private final List<Row> rows = new ArrayList<>();

  RowUnits(Findings findings) {
    this.findings = findings;
  }

  /** A row of lengths, in millimetres. */
  private record Row(String name, SourceText unit, double factor, double least, double most) {}

  /**
   * Adds a row.
   *
   * @param factor how many millimetres its unit is
   */
  void add(SizeTable.Row row, SourceText unit, double factor) {
    List<Value.Quantity> values = List.copyOf(row.values().values());
    if (!values.isEmpty()
        && values.stream().allMatch(value -> value.dimension() == Dimension.LENGTH)) {
      rows.add(
          new Row(
              row.name(),
              unit,
              factor,
              values.stream().mapToDouble(Value.Quantity::amount).min().orElseThrow(),
              values.stream().mapToDouble(Value.Quantity::amount).max().orElseThrow()));
    }
  }

  void check() {
    for (Row row : rows) {
      List<Row> others =
          rows.stream().filter(other -> !other.unit.text().equals(row.unit.text())).toList();
      boolean alone = others.size() > 1 && others.size() == rows.size() - 1;
      boolean alike = others.stream().map(other -> other.unit.text()).distinct().count() == 1;
      if (alone && alike && row.least > LONG && isTheirs(row, others)) {
        findings.add(
            SizesCode.SIZE_ROW_UNIT,
            row.unit.position(),
            "measure",
            row.name,
            "unit",
            row.unit.text(),
            "metres",
            CellNumber.plain(Math.rint(row.least / 10) / 100),
            "other",
            others.get(0).unit.text());
      }
    }
  }

  private static boolean isTheirs(Row row, List<Row> others) {
    double factor = row.factor / others.get(0).factor;
    double least = others.stream().mapToDouble(Row::least).min().orElseThrow() / LIKE;
    double most = others.stream().mapToDouble(Row::most).max().orElseThrow() * LIKE;
    return row.least / factor >= least && row.most / factor <= most;
  }
}
