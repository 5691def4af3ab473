package org.lapmark.document.grading;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.book.Pages;
import org.lapmark.document.pdf.Glyphs;
import org.lapmark.document.section.Pictures;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.GradeReport;
import org.lapmark.print.paper.Paper;
import org.lapmark.source.Masthead;
import org.lapmark.wording.Wording;

/**
 * The grade report, for designer and editor: every edge by size with its increments, and the nest
 * of sizes of every panel. A PDF/A-3a and PDF/UA-1 file.
 *
 * @param patterns the pattern in each size, in the order of the size table, with the same choices
 * @param paper the paper
 */
public record GradeReportDocument(List<EvaluatedPattern> patterns, Paper paper)
    implements Document {
  private static final String TEMPLATE = "document/grade-report.ftlh";

  /** Copies the list. */
  public GradeReportDocument {
    patterns = List.copyOf(patterns);
  }

  /** In millimetres. */
  private record PageSize(double width, double height) {}

  @Override
  public byte[] write(DocumentWriter writer, Findings findings) throws IOException {
    GradeReport report = GradeReport.of(patterns);
    Masthead masthead = patterns.get(0).source().masthead();
    Wording wording = writer.wording(masthead.language());
    StyleSheet styles = writer.styles();
    Pictures pictures = new Pictures();
    double textWidth = paper.width() - 2 * Pages.TEXT_MARGIN;
    GradePages grade =
        GradePages.of(report, wording, styles, writer.lettering(), pictures, textWidth);
    Glyphs glyphs = writer.glyphs();
    RecordModel records = new RecordModel(glyphs);
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("grade", records.map(grade));
    model.put("language", masthead.language().toLanguageTag());
    model.put("title", glyphs.printable(masthead.title().text()));
    model.put("studio", glyphs.printable(masthead.studio().text()));
    model.put("edition", glyphs.printable(masthead.edition().text()));
    model.put("page", records.map(new PageSize(paper.width(), paper.height())));
    Pages.Title title =
        new Pages.Title(
            masthead,
            patterns.get(0).variant().size(),
            "grade.document-title",
            "grade.document-subject");
    try (Pages pages = new Pages(writer, title, paper, wording, styles)) {
      pages.set(TEMPLATE, model, pictures.drawings(), 0);
      return pages.numbered(index -> true);
    }
  }
}
