package org.lapmark.cli.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.cli.console.Json;
import org.lapmark.cli.console.Millimetres;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.grade.GradeReport;
import org.lapmark.grade.GradeReport.PanelGrades;
import org.lapmark.grade.GradeReport.Row;

/**
 * A grade report as JSON; lengths are millimetres, areas square centimetres, rounded to hundredths:
 *
 * <pre>{@code
 * format     1; changes when a reader of this form would break
 * program    name, version
 * patterns   one for each folder, in the order given
 *   pattern, folder
 *   failure    why it couldn't be read to the end; only if so
 *   choices, sizes   only if it could be evaluated
 *   panels
 *     panel, corner (on which the sizes are stacked), anyOrder
 *     rows
 *       kind         edge, chain, width, height, perimeter, area
 *       name         of an edge or a chain
 *       values       by size; null where a size lacks it
 *       increments   from the size before; null for the first
 *       allowances   of an edge, each once
 * }</pre>
 */
public final class GradeJson {
  private static final int FORMAT = 1;

  private GradeJson() {}

  public static String of(List<FolderReport> all, List<List<GradeReport>> reports) {
    List<Object> patterns = new ArrayList<>();
    for (int i = 0; i < reports.size(); i++) {
      Optional<GradeReport> report = reports.get(i).stream().findFirst();
      patterns.add(
          Json.object(
              "pattern",
              all.get(i).pattern(),
              "folder",
              all.get(i).folder(),
              "failure",
              all.get(i).failure(),
              "choices",
              report.map(GradeReport::choices).orElse(null),
              "sizes",
              report.map(GradeReport::sizes).orElse(null),
              "panels",
              report
                  .map(one -> one.panels().stream().map(GradeJson::panel).toList())
                  .orElse(null)));
    }
    return Json.report(FORMAT, patterns);
  }

  private static Object panel(PanelGrades panel) {
    return Json.object(
        "panel",
        panel.name(),
        "corner",
        panel.corner(),
        "anyOrder",
        panel.anyOrder(),
        "rows",
        panel.rows().stream().map(GradeJson::row).toList());
  }

  private static Object row(Row row) {
    List<Object> values = new ArrayList<>();
    List<Object> increments = new ArrayList<>();
    for (int i = 0; i < row.values().size(); i++) {
      values.add(shown(row, row.values().get(i)));
      increments.add(shown(row, row.increment(i)));
    }
    boolean edge = row.kind() == GradeReport.Kind.EDGE;
    return Json.object(
        "kind",
        GradeWords.kind(row),
        "name",
        row.name().isEmpty() ? null : row.name(),
        "values",
        values,
        "increments",
        increments,
        "allowances",
        edge ? row.allowances().stream().map(Millimetres::number).toList() : null);
  }

  private static Object shown(Row row, Optional<Double> value) {
    return value.map(number -> Millimetres.number(GradeWords.shown(row, number))).orElse(null);
  }
}
