package org.lapmark.cli.grade;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.cli.console.Columns;
import org.lapmark.cli.console.Visible;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.grade.GradeReport;
import org.lapmark.grade.GradeReport.PanelGrades;
import org.lapmark.grade.GradeReport.Row;

/** A grade report as tables for people. */
public final class GradeText {
  private static final String INDENT = "    ";

  private GradeText() {}

  public static String of(List<FolderReport> all, List<List<GradeReport>> reports) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < reports.size(); i++) {
      for (GradeReport report : reports.get(i)) {
        text.append(text.isEmpty() ? "" : "\n");
        String choices = GradeWords.choices(report);
        text.append(
                Visible.text(
                    all.get(i).pattern()
                        + ", sizes "
                        + String.join(", ", report.sizes())
                        + (choices.isEmpty() ? "" : ", " + choices)))
            .append('\n');
        report.panels().forEach(panel -> panel(text, panel, report.sizes()));
      }
    }
    return text.toString();
  }

  private static void panel(StringBuilder text, PanelGrades panel, List<String> sizes) {
    text.append("\n  ")
        .append(Visible.text(panel.name()))
        .append(panel.anyOrder() ? ", in any order" : "")
        .append('\n');
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("", "allowance"));
    List<Boolean> right = new ArrayList<>(List.of(false, true));
    for (int i = 0; i < sizes.size(); i++) {
      head.add(sizes.get(i));
      right.add(true);
      if (i > 0) {
        head.add("");
        right.add(true);
      }
    }
    rows.add(head);
    for (Row row : panel.rows()) {
      List<String> cells = new ArrayList<>(List.of(name(row), GradeWords.allowances(row)));
      for (int i = 0; i < sizes.size(); i++) {
        if (i > 0) {
          cells.add(GradeWords.signed(row, i));
        }
        cells.add(GradeWords.value(row, i));
      }
      rows.add(cells);
    }
    // A size's head stands over its value, behind the increment that leads to it.
    for (int i = 1; i < sizes.size(); i++) {
      head.set(2 * i + 1, "");
      head.set(2 * i + 2, sizes.get(i));
    }
    Columns.append(text, INDENT, rows, right);
  }

  private static String name(Row row) {
    return switch (row.kind()) {
      case EDGE -> row.name();
      case CHAIN -> row.name() + " (chain)";
      case AREA -> "area, cm²";
      default -> GradeWords.kind(row);
    };
  }
}
