package org.lapmark.document.book;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.section.Sections;
import org.lapmark.document.section.Setting;
import org.lapmark.document.section.Sizes;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.source.PatternSource;
import org.lapmark.wording.Wording;

/**
 * The instructions of several sizes in one document: what differs by size in a column a size or
 * listed by size, pictures in a size of the middle. Cutting layouts, page maps and labels are left
 * to the documents of one size. A PDF/A-3a and PDF/UA-1 file.
 *
 * @param manuals the manual of each size in the order of the size table, in standard type
 * @param paper the paper
 */
public record SizesDocument(List<Manual> manuals, Paper paper) implements Document {
  /** Checks that there are several sizes. */
  public SizesDocument {
    manuals = List.copyOf(manuals);
    if (manuals.size() < 2) {
      throw new IllegalArgumentException("fewer than two sizes");
    }
  }

  @Override
  public byte[] write(DocumentWriter writer, Findings findings) throws IOException {
    Manual typical = manuals.get((manuals.size() - 1) / 2);
    PatternSource source = typical.pattern().source();
    Wording wording = writer.wording(source.masthead().language());
    StyleSheet styles = writer.styles();
    Sizes sizes = new Sizes(manuals, typical.pattern().variant().size(), wording);
    Setting setting =
        Sections.setting(
            typical.ofSizes(manuals.stream().map(Manual::pattern).toList(), findings),
            Optional.of(sizes),
            new SheetPlan(paper, 0, 0, List.of(), List.of()),
            Optional.empty(),
            0,
            wording,
            styles,
            writer.lettering(),
            writer.memory(),
            paper.width() - 2 * Pages.TEXT_MARGIN,
            false);
    String names =
        manuals.stream()
            .map(one -> one.pattern().variant().size())
            .collect(Collectors.joining(wording.text("list.between")));
    Pages.Title title =
        new Pages.Title(
            source.masthead(),
            names,
            sizes.isEvery() ? "document.sizes-title" : "document.some-title",
            sizes.isEvery() ? "document.sizes-subject" : "document.some-subject");
    try (Pages pages = new Pages(writer, title, paper, wording, styles)) {
      InstructionPages.set(pages, writer, setting, 0);
      return pages.numbered(index -> true);
    }
  }
}
