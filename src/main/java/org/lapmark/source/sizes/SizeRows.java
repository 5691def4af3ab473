package org.lapmark.source.sizes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Value;
import org.lapmark.source.SizeTable;

/**
 * Looks for slips in the rows of a size table. A row goes one way from size to size, or stays; a
 * length of another order than its neighbours' is a slip of the decimal point or of a unit, and a
 * step far beyond all others is suspicious. Charts whose steps differ, as where larger sizes are
 * further apart, are in order. A row with zeros or values below is only held to go one way.
 */
final class SizeRows {
  /** Between two neighbours, and at the ends, where charts may begin small. */
  private static final double ASTRAY = 3;

  private static final double ASTRAY_AT_END = 8;

  /** How much larger than every other step a jump is, and by what it multiplies the value. */
  private static final double JUMP = 5;

  private static final double JUMP_GROWTH = 1.5;

  /** What an ease, an overlap or a shift may be, which have either sign. */
  private static final double SHORT = 30;

  /** What lengths that were converted and rounded differ by. */
  private static final double ROUNDING = 0.05;

  private final List<SourceText> sizes;
  private final Findings findings;
  private final List<Row> rows = new ArrayList<>();

  SizeRows(List<SourceText> sizes, Findings findings) {
    this.sizes = sizes;
    this.findings = findings;
  }

  /** A row that can be checked: every cell of it could be read. */
  private record Row(SizeTable.Row row, List<SourceText> cells, List<Double> amounts) {
    double nothing() {
      return row.values().values().stream().allMatch(value -> value.dimension() == Dimension.LENGTH)
          ? ROUNDING
          : ValueOrder.NOTHING;
    }
  }

  /**
   * Reports a length below zero among others above, of about their amount: a slip of the sign.
   *
   * @return the row without it, so that nothing is computed from it
   */
  static SizeTable.Row withoutStraySign(
      SizeTable.Row row, Map<String, SourceText> cells, Findings findings) {
    List<String> below = new ArrayList<>();
    List<String> above = new ArrayList<>();
    for (Map.Entry<String, Value.Quantity> value : row.values().entrySet()) {
      double amount = value.getValue().amount();
      if (value.getValue().dimension() != Dimension.LENGTH || amount == 0) {
        return row;
      }
      (amount < 0 ? below : above).add(value.getKey());
    }
    if (below.size() != 1 || above.isEmpty()) {
      return row;
    }
    String size = below.get(0);
    double amount = -row.values().get(size).amount();
    boolean alike =
        amount > SHORT
            && above.stream()
                .mapToDouble(other -> row.values().get(other).amount())
                .allMatch(other -> other < ASTRAY * amount && amount < ASTRAY * other);
    if (!alike) {
      return row;
    }
    findings.add(
        SizesCode.SIZE_ROW_ASTRAY,
        cells.get(size).position(),
        "measure",
        row.name(),
        "value",
        cells.get(size).text(),
        "size",
        size,
        "beside",
        String.join(
            " and ", above.stream().limit(2).map(other -> cells.get(other).text()).toList()));
    Map<String, Value.Quantity> values = new LinkedHashMap<>(row.values());
    values.remove(size);
    return new SizeTable.Row(row.name(), row.position(), values);
  }

  /** Adds a row whose values ought to have an order. */
  void add(SizeTable.Row row, Map<String, SourceText> cells) {
    if (row.values().size() == sizes.size() && sizes.size() > 1) {
      rows.add(
          new Row(
              row,
              List.copyOf(cells.values()),
              row.values().values().stream().map(Value.Quantity::amount).toList()));
    }
  }

  /**
   * Reports slips.
   *
   * @param all all rows
   * @return the rows without values that can't be right, so that nothing is computed from them
   */
  List<SizeTable.Row> checked(List<SizeTable.Row> all) {
    List<Double> ranks = SizeNames.ranks(sizes);
    List<Integer> order = ranks == null ? null : orderOfNames(ranks);
    if (order == null) {
      order = orderOfRows();
    }
    Map<SizeTable.Row, SizeTable.Row> changed = new LinkedHashMap<>();
    for (Row row : rows) {
      int astray = sizes.size() == 2 ? astrayOfTwo(row) : astray(row);
      if (astray >= 0) {
        Map<String, Value.Quantity> values = new LinkedHashMap<>(row.row.values());
        values.remove(sizes.get(astray).text());
        changed.put(row.row, new SizeTable.Row(row.row.name(), row.row.position(), values));
      } else if (sizes.size() > 2 && ValueOrder.turn(row.amounts, row.nothing()) < 0) {
        jump(row);
      } else if (sizes.size() > 2
          && (order == null || ValueOrder.turn(ValueOrder.permuted(row.amounts, order)) >= 0)) {
        turned(row);
      }
    }
    return all.stream().map(row -> changed.getOrDefault(row, row)).toList();
  }

  /** The order in which sizes belong, if their columns stand in another, which is reported. */
  private List<Integer> orderOfNames(List<Double> ranks) {
    if (sizes.size() < 3 || ValueOrder.turn(ranks) < 0) {
      return null;
    }
    outOfOrder(ValueOrder.oddName(ranks), "no");
    return IntStream.range(0, sizes.size())
        .boxed()
        .sorted(Comparator.comparingDouble(ranks::get))
        .toList();
  }

  /** Two columns beside each other that put all rows out of order, and are reported. */
  private List<Integer> orderOfRows() {
    if (sizes.size() < 3) {
      return null;
    }
    List<Row> changing =
        rows.stream().filter(row -> row.amounts.stream().distinct().count() > 1).toList();
    if (changing.size() < 2
        || changing.stream().anyMatch(row -> ValueOrder.turn(row.amounts) < 0)) {
      return null;
    }
    for (int i = 0; i + 1 < sizes.size(); i++) {
      List<Integer> order = new ArrayList<>(IntStream.range(0, sizes.size()).boxed().toList());
      Collections.swap(order, i, i + 1);
      if (changing.stream()
          .allMatch(row -> ValueOrder.turn(ValueOrder.permuted(row.amounts, order)) < 0)) {
        outOfOrder(i, "yes");
        return order;
      }
    }
    return null;
  }

  private void outOfOrder(int size, String byRows) {
    findings.add(
        SizesCode.SIZES_OUT_OF_ORDER,
        sizes.get(size).position(),
        "name",
        sizes.get(size).text(),
        "sizes",
        String.join(", ", sizes.stream().map(SourceText::text).toList()),
        "rows",
        byRows);
  }

  private void turned(Row row) {
    int odd = ValueOrder.odd(row.amounts);
    int from = Math.max(0, Math.min(odd - 1, sizes.size() - 3));
    List<String> shown = new ArrayList<>();
    for (int i = from; i < from + 3; i++) {
      shown.add(sizes.get(i).text() + " " + row.cells.get(i).text());
    }
    findings.add(
        SizesCode.SIZE_ROW_TURNS,
        row.cells.get(odd).position(),
        "measure",
        row.row.name(),
        "row",
        String.join(", ", shown));
  }

  /** A length of another order than those beside it, which is reported; -1 if there is none. */
  private int astray(Row row) {
    boolean lengths =
        row.row.values().values().stream()
            .allMatch(value -> value.dimension() == Dimension.LENGTH && value.amount() > 0);
    if (!lengths) {
      return -1;
    }
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      if (isAstray(row.amounts, i)) {
        found.add(i);
      }
    }
    if (found.size() != 1) {
      return -1;
    }
    int at = found.get(0);
    int first = at == 0 ? 1 : at - 1;
    int second = at == 0 ? 2 : at == sizes.size() - 1 ? at - 2 : at + 1;
    findings.add(
        SizesCode.SIZE_ROW_ASTRAY,
        row.cells.get(at).position(),
        "measure",
        row.row.name(),
        "value",
        row.cells.get(at).text(),
        "size",
        sizes.get(at).text(),
        "beside",
        row.cells.get(Math.min(first, second)).text()
            + " and "
            + row.cells.get(Math.max(first, second)).text());
    return at;
  }

  /** Of two lengths of different order the second, though nothing says which one is the slip. */
  private int astrayOfTwo(Row row) {
    double least = Math.min(row.amounts.get(0), row.amounts.get(1));
    double most = Math.max(row.amounts.get(0), row.amounts.get(1));
    boolean lengths =
        row.row.values().values().stream().allMatch(one -> one.dimension() == Dimension.LENGTH);
    if (!lengths || least <= 0 || most <= SHORT || most <= ASTRAY_AT_END * least) {
      return -1;
    }
    findings.add(
        SizesCode.SIZE_ROW_ASTRAY,
        row.cells.get(1).position(),
        "measure",
        row.row.name(),
        "value",
        row.cells.get(1).text(),
        "size",
        sizes.get(1).text(),
        "beside",
        row.cells.get(0).text());
    return 1;
  }

  private static boolean isAstray(List<Double> amounts, int at) {
    int last = amounts.size() - 1;
    double value = amounts.get(at);
    boolean end = at == 0 || at == last;
    double first = amounts.get(at == 0 ? 1 : at - 1);
    double second = amounts.get(at == 0 ? 2 : at == last ? last - 2 : at + 1);
    double factor = end ? ASTRAY_AT_END : ASTRAY;
    boolean far =
        value > factor * Math.max(first, second) || value < Math.min(first, second) / factor;
    if (!far || !end) {
      return far;
    }
    double most = 0;
    for (int i = 1; i <= last; i++) {
      if (i != (at == 0 ? 1 : last)) {
        most = Math.max(most, Math.abs(amounts.get(i) - amounts.get(i - 1)));
      }
    }
    return Math.abs(value - first) > JUMP * most;
  }

  /** Reports a step far beyond all others. */
  private void jump(Row row) {
    if (row.amounts.stream().anyMatch(amount -> amount <= 0)
        || row.row.values().values().stream()
            .anyMatch(value -> value.dimension() == Dimension.COUNT)) {
      return;
    }
    int largest = 1;
    for (int i = 2; i < sizes.size(); i++) {
      if (step(row, i) > step(row, largest)) {
        largest = i;
      }
    }
    int most = largest == 1 ? 2 : 1;
    for (int i = 1; i < sizes.size(); i++) {
      if (i != largest && step(row, i) > step(row, most)) {
        most = i;
      }
    }
    double before = row.amounts.get(largest - 1);
    double after = row.amounts.get(largest);
    double growth = Math.max(after / before, before / after);
    boolean others = step(row, most) > ValueOrder.NOTHING;
    if (step(row, largest) > JUMP * step(row, most) && growth > (others ? JUMP_GROWTH : JUMP)) {
      findings.add(
          SizesCode.SIZE_ROW_JUMPS,
          row.cells.get(largest).position(),
          "measure",
          row.row.name(),
          "step",
          difference(row, largest),
          "before_size",
          sizes.get(largest - 1).text(),
          "size",
          sizes.get(largest).text(),
          "most",
          difference(row, most));
    }
  }

  private static double step(Row row, int to) {
    return Math.abs(row.amounts.get(to) - row.amounts.get(to - 1));
  }

  /** A step in the row's own unit. */
  private static String difference(Row row, int to) {
    double a = CellNumber.parse(row.cells.get(to - 1).text(), true).number();
    double b = CellNumber.parse(row.cells.get(to).text(), true).number();
    return CellNumber.plain(Math.rint(Math.abs(b - a) * 1e6) / 1e6);
  }
}
