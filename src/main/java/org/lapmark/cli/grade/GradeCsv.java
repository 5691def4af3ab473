package org.lapmark.cli.grade;

import java.util.List;
import org.lapmark.cli.console.Csv;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.grade.GradeReport;
import org.lapmark.grade.GradeReport.PanelGrades;
import org.lapmark.grade.GradeReport.Row;

/**
 * A grade report as one table of comma-separated values (RFC 4180, lines ended by CR LF), a row for
 * each measurement and size. The column {@code row} is {@code edge}, {@code chain}, {@code width},
 * {@code height}, {@code perimeter} or {@code area}. Lengths are millimetres, areas square
 * centimetres, with a decimal point and two decimals; {@code allowance} has all that pieces give
 * the edge, by blanks.
 */
public final class GradeCsv {
  private static final List<String> HEAD =
      List.of(
          "pattern", "choices", "panel", "row", "name", "size", "value", "increment", "allowance");

  private GradeCsv() {}

  public static String of(List<FolderReport> all, List<List<GradeReport>> reports) {
    StringBuilder text = new StringBuilder();
    Csv.append(text, HEAD);
    for (int i = 0; i < reports.size(); i++) {
      for (GradeReport report : reports.get(i)) {
        for (PanelGrades panel : report.panels()) {
          for (Row row : panel.rows()) {
            for (int size = 0; size < report.sizes().size(); size++) {
              Csv.append(
                  text,
                  List.of(
                      all.get(i).pattern(),
                      GradeWords.choices(report),
                      panel.name(),
                      GradeWords.kind(row),
                      row.name(),
                      report.sizes().get(size),
                      GradeWords.value(row, size),
                      GradeWords.increment(row, size),
                      GradeWords.allowances(row)));
            }
          }
        }
      }
    }
    return text.toString();
  }
}
