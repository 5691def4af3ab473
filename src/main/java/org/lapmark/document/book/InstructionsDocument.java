package org.lapmark.document.book;

import java.io.IOException;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.sheet.SheetPlan;

/**
 * The same as the complete document without its tiles: the page map speaks of the file that has the
 * tiles alone. A PDF/A-3a and PDF/UA-1 file.
 *
 * @param manual what the instructions say
 * @param plan the tiles
 * @param plates draws page map and printing page
 */
public record InstructionsDocument(Manual manual, SheetPlan plan, Plates plates)
    implements Document {
  @Override
  public byte[] write(DocumentWriter writer, Findings findings) throws IOException {
    try (Pages pages =
        pages(
            writer,
            manual,
            plan,
            plates,
            "document.instructions-title",
            "document.instructions-subject")) {
      InstructionPages.front(pages, writer, manual, plan, plates, 0);
      // A complete document has as many pages before its tiles, as a rule.
      writer.frontPages(pages.count());
      return pages.numbered(index -> index != 1);
    }
  }

  static Pages pages(
      DocumentWriter writer,
      Manual manual,
      SheetPlan plan,
      Plates plates,
      String title,
      String subject)
      throws IOException {
    GradedPattern pattern = manual.pattern();
    return new Pages(
        writer,
        new Pages.Title(pattern.source().masthead(), pattern.variant().size(), title, subject),
        plan.paper(),
        plates.wording(),
        plates.styles());
  }
}
