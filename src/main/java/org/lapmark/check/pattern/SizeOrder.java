package org.lapmark.check.pattern;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Value;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SizeTable;

/**
 * As the rows of the size table, every edge's length rises, falls or stays from its first size to
 * its last, unless its panel may have any order. Where a row turns about, edges may turn too.
 * Changes of up to 0.05 mm count for nothing.
 */
public final class SizeOrder {
  public static final Rule<List<EvaluatedPattern>> RULE =
      new Rule<>(SizeOrder::run, CheckCode.SIZE_ORDER_BROKEN);

  private static final double NOTHING = 0.05;

  private final List<EvaluatedPattern> patterns;
  private final Findings findings;

  private SizeOrder(List<EvaluatedPattern> patterns, Findings findings) {
    this.patterns = patterns;
    this.findings = findings;
  }

  /** A length that isn't between its neighbours'. */
  private record Break(String edge, int middle, double before, double length, double after) {}

  /**
   * Checks one choice of options.
   *
   * @param patterns in the order of the size table
   */
  static void run(List<EvaluatedPattern> patterns, Findings findings) {
    if (patterns.size() > 2) {
      SizeOrder order = new SizeOrder(patterns, findings);
      Set<Integer> turning = order.turnsOfTable();
      for (PanelSource panel : patterns.get(0).source().panels()) {
        order.check(panel, turning);
      }
    }
  }

  /** Where rows of the size table turn about, and the sizes beside. */
  private Set<Integer> turnsOfTable() {
    Set<Integer> turning = new TreeSet<>();
    for (SizeTable.Row row : patterns.get(0).source().sizes().rows()) {
      List<Double> amounts = new ArrayList<>();
      for (EvaluatedPattern pattern : patterns) {
        Value.Quantity value = row.values().get(pattern.variant().size());
        if (value != null) {
          amounts.add(value.amount());
        }
      }
      // A row with a value that couldn't be read has been reported, and nothing depends on it.
      if (amounts.size() == patterns.size()) {
        turns(amounts, 0).forEach(at -> turning.addAll(List.of(at - 1, at, at + 1)));
      }
    }
    return turning;
  }

  /** The places where a row that rose falls, or the other way round. */
  private static List<Integer> turns(List<Double> row, double nothing) {
    List<Integer> turns = new ArrayList<>();
    double direction = 0;
    for (int i = 1; i < row.size(); i++) {
      double step = row.get(i) - row.get(i - 1);
      if (Math.abs(step) > nothing) {
        if (direction * step < 0) {
          turns.add(i - 1);
        }
        direction = step;
      }
    }
    return turns;
  }

  private void check(PanelSource source, Set<Integer> turning) {
    if (source.anyOrder()) {
      return;
    }
    Map<String, List<Double>> lengths = new LinkedHashMap<>();
    for (EvaluatedPattern pattern : patterns) {
      Panel panel = pattern.panels().get(source.name().text());
      if (panel == null) {
        return;
      }
      for (Edge edge : panel.edges()) {
        lengths.computeIfAbsent(edge.name(), unused -> new ArrayList<>()).add(edge.path().length());
      }
    }
    List<Break> breaks = new ArrayList<>();
    lengths.forEach(
        (edge, row) -> {
          List<Integer> turns =
              row.size() == patterns.size() ? new ArrayList<>(turns(row, NOTHING)) : List.of();
          int middle = turns.stream().filter(at -> !turning.contains(at)).findFirst().orElse(0);
          if (middle > 0) {
            breaks.add(
                new Break(edge, middle, row.get(middle - 1), row.get(middle), row.get(middle + 1)));
          }
        });
    if (!breaks.isEmpty()) {
      report(source, breaks.get(0), breaks.size() - 1);
    }
  }

  private void report(PanelSource source, Break found, int others) {
    findings.add(
        CheckCode.SIZE_ORDER_BROKEN,
        source.name().position(),
        "panel",
        source.name().text(),
        "edge",
        found.edge(),
        "before_size",
        size(found.middle() - 1),
        "before",
        shown(found.before()),
        "size",
        size(found.middle()),
        "length",
        shown(found.length()),
        "after_size",
        size(found.middle() + 1),
        "after",
        shown(found.after()),
        "others",
        others);
  }

  private String size(int index) {
    return patterns.get(index).variant().size();
  }

  private static String shown(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
