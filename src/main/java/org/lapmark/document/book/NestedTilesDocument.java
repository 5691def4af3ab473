package org.lapmark.document.book;

import java.io.IOException;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.NestedPlan;

/**
 * The tiles of all sizes stacked, each size a layer: all sizes on at first, what the plan hides
 * off. A PDF/A-3a and PDF/UA-1 file.
 *
 * @param pattern the pattern in any of the sizes
 * @param plan the tiles, at least one, and layers
 * @param plates has the words and the look of drawings
 */
public record NestedTilesDocument(EvaluatedPattern pattern, NestedPlan plan, Plates plates)
    implements Document {
  /** Checks that there are tiles. */
  public NestedTilesDocument {
    if (plan.sheet().tiles().isEmpty()) {
      throw new IllegalArgumentException("a plan without tiles");
    }
  }

  @Override
  public byte[] write(DocumentWriter writer, Findings findings) throws IOException {
    Pages.Title title =
        new Pages.Title(
            pattern.source().masthead(),
            plan.sizes(),
            "document.nested-title",
            "document.nested-subject");
    try (Pages pages =
        new Pages(writer, title, plan.sheet().paper(), plates.wording(), plates.styles())) {
      pages.layers(plan);
      pages.append(plan.sheet());
      return pages.numbered(index -> false);
    }
  }
}
