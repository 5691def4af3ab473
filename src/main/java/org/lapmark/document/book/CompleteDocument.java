package org.lapmark.document.book;

import java.io.IOException;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.print.sheet.SheetPlan;

/**
 * The complete document: cover, printing page, instructions, tiles. A PDF/A-3a and PDF/UA-1 file.
 *
 * @param manual what the instructions say
 * @param plan the tiles
 * @param plates draws page map and printing page
 */
public record CompleteDocument(Manual manual, SheetPlan plan, Plates plates) implements Document {
  /** After so many settings the number of pages before the tiles is not going to settle. */
  private static final int MOST_SETTINGS = 4;

  @Override
  public byte[] write(DocumentWriter writer, Findings findings) throws IOException {
    int before = writer.frontPages();
    for (int setting = 0; setting < MOST_SETTINGS; setting++) {
      try (Pages pages =
          InstructionsDocument.pages(
              writer, manual, plan, plates, "document.title", "document.subject")) {
        InstructionPages.front(pages, writer, manual, plan, plates, before);
        if (pages.count() != before && !plan.tiles().isEmpty()) {
          before = pages.count();
          continue;
        }
        writer.frontPages(before);
        int textPages = pages.count();
        pages.append(plan);
        return pages.numbered(index -> index < textPages && index != 1);
      }
    }
    throw new IllegalStateException("the number of pages before the tiles doesn't settle");
  }
}
