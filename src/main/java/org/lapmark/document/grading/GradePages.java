package org.lapmark.document.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapmark.document.section.Pictures;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.grade.GradeReport;
import org.lapmark.grade.GradeReport.PanelGrades;
import org.lapmark.grade.GradeReport.Row;
import org.lapmark.wording.Wording;

/**
 * What the grade report says: the value {@code grade} of {@code document/grade-report.ftlh}.
 * Lengths are millimetres and areas square centimetres, rounded to hundredths.
 *
 * @param sizes the sizes in words
 * @param choices what is chosen, in words; empty without options
 * @param panels the panels in the order stated
 */
public record GradePages(String sizes, String choices, List<PanelPage> panels) {
  /** So many sizes stand beside each other on a page. */
  private static final int SIZES_ABREAST = 6;

  private static final double NEST_HEIGHT = 105;

  public GradePages {
    panels = List.copyOf(panels);
  }

  /** A panel. */
  record PanelPage(String name, boolean anyOrder, Pictures.Picture nest, List<Table> tables) {}

  /** The measurements of some sizes. */
  record Table(List<String> sizes, List<TableRow> rows) {}

  /** One measurement; {@code most} where allowances differ. */
  record TableRow(
      GradeReport.Kind kind,
      String name,
      List<Double> allowances,
      Optional<String> most,
      List<Cell> cells) {}

  /** A value and how much more it is than in the size before. */
  record Cell(Optional<Double> value, Optional<Double> increment) {}

  /**
   * Gathers what the report says.
   *
   * @param report the sizes compared
   * @param wording the document's words
   * @param pictures takes the drawings in
   * @param width the width of the text in millimetres
   */
  public static GradePages of(
      GradeReport report,
      Wording wording,
      StyleSheet styles,
      LetteringMeasure lettering,
      Pictures pictures,
      double width) {
    String join = wording.text("grade.nest-join");
    String sizes = String.join(join, report.sizes());
    List<PanelPage> panels = new ArrayList<>();
    for (PanelGrades panel : report.panels()) {
      NestDrawing.Nest nest =
          NestDrawing.of(
              panel.outlines(), report.sizes(), join, styles, lettering, width, NEST_HEIGHT);
      String name = plain(panel.name());
      String corner = plain(panel.corner());
      panels.add(
          new PanelPage(
              name,
              panel.anyOrder(),
              pictures.add(
                  "nest",
                  nest.drawing(),
                  wording.text(
                      "grade.nest-alternative",
                      Map.of("panel", name, "sizes", sizes, "corner", corner)),
                  wording.text(
                      "grade.nest-caption", Map.of("corner", corner, "scale", nest.scale() * 100))),
              tables(report.sizes(), panel.rows())));
    }
    return new GradePages(
        sizes,
        report.choices().entrySet().stream()
            .map(
                choice ->
                    wording.text(
                        "grade.choice",
                        Map.of("name", plain(choice.getKey()), "choice", plain(choice.getValue()))))
            .collect(Collectors.joining(wording.text("grade.between"))),
        panels);
  }

  private static List<Table> tables(List<String> sizes, List<Row> rows) {
    List<Table> tables = new ArrayList<>();
    for (int from = 0; from < sizes.size(); from += SIZES_ABREAST) {
      int to = Math.min(sizes.size(), from + SIZES_ABREAST);
      List<TableRow> some = new ArrayList<>();
      for (Row row : rows) {
        List<Cell> cells = new ArrayList<>();
        for (int i = from; i < to; i++) {
          cells.add(
              new Cell(
                  row.values().get(i).map(value -> shown(row, value)),
                  row.increment(i).map(value -> shown(row, value))));
        }
        List<Double> allowances = row.allowances();
        some.add(
            new TableRow(
                row.kind(),
                plain(row.name()),
                allowances,
                allowances.size() < 2
                    ? Optional.empty()
                    : Optional.of(brief(allowances.get(allowances.size() - 1))),
                cells));
      }
      tables.add(new Table(sizes.subList(from, to), some));
    }
    return tables;
  }

  private static String plain(String name) {
    return name.replace('_', ' ');
  }

  private static String brief(double value) {
    double rounded = Math.round(value * 100) / 100.0;
    return rounded == Math.rint(rounded)
        ? Long.toString(Math.round(rounded))
        : Double.toString(rounded);
  }

  /** To hundredths, and never -0. */
  private static double shown(Row row, double value) {
    double scaled = row.kind() == GradeReport.Kind.AREA ? value / 100 : value;
    return Math.round(scaled * 100) / 100.0 + 0.0;
  }
}
