package org.lapmark.document.book;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.section.SizePagesBuilder;
import org.lapmark.document.section.TextPages;
import org.lapmark.document.section.TextPagesBuilder;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.print.Paper;
import org.lapmark.print.SheetPlan;
import org.lapmark.source.Masthead;
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

  /** Texts of the title pages that are printed for all sizes. */
  private record Texts(List<Object> summary, List<Object> copyright, List<Object> note) {}

  @Override
  public byte[] write(DocumentWriter writer, Findings findings) throws IOException {
    Manual typical = manuals.get((manuals.size() - 1) / 2);
    Masthead masthead = typical.pattern().source().masthead();
    Wording wording = writer.wording(masthead.language());
    StyleSheet styles = writer.styles();
    Manual manual = typical.ofSizes(manuals.stream().map(Manual::pattern).toList(), findings);
    SheetPlan plan = new SheetPlan(paper, 0, 0, List.of(), List.of());
    List<TextPages> texts =
        manuals.stream()
            .map(
                one ->
                    new TextPagesBuilder(one.pattern(), plan, wording)
                        .build(Optional.empty(), Optional.empty(), 1, true))
            .toList();
    SizePagesBuilder sizes = new SizePagesBuilder(manuals, texts, wording);
    RecordModel records = new RecordModel(writer.glyphs());
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("begin", records.map(sizes.begin()));
    model.putAll(
        records.map(
            new Texts(
                sizes.runs(TextPages::summary),
                sizes.runs(TextPages::copyright),
                sizes.runs(TextPages::note))));
    model.put("by", records.map(sizes.build(typical.pattern().variant().size())));
    String names =
        manuals.stream()
            .map(one -> one.pattern().variant().size())
            .collect(Collectors.joining(wording.text("list.between")));
    boolean every = manuals.size() == typical.pattern().source().sizes().sizes().size();
    model.put("every", every);
    Pages.Title title =
        new Pages.Title(
            masthead,
            names,
            every ? "document.sizes-title" : "document.some-title",
            every ? "document.sizes-subject" : "document.some-subject");
    try (Pages pages = new Pages(writer, title, paper, wording, styles)) {
      InstructionPages.set(
          pages, writer, manual, plan, Optional.empty(), wording, styles, 0, 0, model);
      return pages.numbered(index -> true);
    }
  }
}
