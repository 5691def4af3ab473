package org.lapmark.document.book;

import java.io.IOException;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.sheet.SheetPlan;

/**
 * The tiles alone, the test squares on their first page. A PDF/A-3a and PDF/UA-1 file.
 *
 * @param pattern the pattern in one variant
 * @param plan its tiles, at least one
 * @param plates has the words and the look of drawings
 */
public record TilesDocument(GradedPattern pattern, SheetPlan plan, Plates plates)
    implements Document {
  /** Checks that there are tiles. */
  public TilesDocument {
    if (plan.tiles().isEmpty()) {
      throw new IllegalArgumentException("a plan without tiles");
    }
  }

  @Override
  public byte[] write(DocumentWriter writer, Findings findings) throws IOException {
    Pages.Title title =
        new Pages.Title(
            pattern.source().masthead(),
            pattern.variant().size(),
            "document.tiles-title",
            "document.tiles-subject");
    try (Pages pages = new Pages(writer, title, plan.paper(), plates.wording(), plates.styles())) {
      pages.append(plan);
      return pages.numbered(index -> false);
    }
  }
}
