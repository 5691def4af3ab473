package org.lapmark.document.book;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.Chosen;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.section.CoverArt;
import org.lapmark.document.section.ManualPages;
import org.lapmark.document.section.ManualPagesBuilder;
import org.lapmark.document.section.Pictures;
import org.lapmark.document.section.TextPagesBuilder;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.Figure;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.SheetPlan;
import org.lapmark.wording.Wording;

/** Sets the pages of instructions: all that a document has but its tiles. */
final class InstructionPages {
  private static final String TEMPLATE = "document/pages.ftlh";
  private static final double COVER_ART_HEIGHT = 88;
  private static final double MAP_HEIGHT_SHARE = 0.42;
  private static final double LAYOUT_HEIGHT = 56;
  private static final double LARGE_LAYOUT_HEIGHT = 74;

  private InstructionPages() {}

  /** What is chosen in a document with options. */
  private record Choices(List<Chosen.Line> choices) {}

  /**
   * Sets all pages before the tiles.
   *
   * @param before how many pages stand before the tiles; none before those in a file of their own
   */
  static void front(
      Pages pages, DocumentWriter writer, Manual manual, SheetPlan plan, Plates plates, int before)
      throws IOException {
    double textWidth = plan.paper().width() - 2 * Pages.TEXT_MARGIN;
    Optional<Drawing> map =
        plan.tiles().isEmpty()
            ? Optional.empty()
            : Optional.of(
                plates.pageMap(
                    plan,
                    TextPagesBuilder.tilePages(plan, before + 1),
                    textWidth,
                    plan.paper().height() * MAP_HEIGHT_SHARE));
    set(pages, writer, manual, plan, map, plates.wording(), plates.styles(), before, 1, Map.of());
    pages.insert(plates.printingPage(plan.paper()));
  }

  /**
   * Sets text pages.
   *
   * @param inserted how many pages are going to be put behind the first
   * @param ofSizes what takes the place of values of the model in a document of all sizes
   */
  static void set(
      Pages pages,
      DocumentWriter writer,
      Manual manual,
      SheetPlan plan,
      Optional<Drawing> map,
      Wording wording,
      StyleSheet styles,
      int before,
      int inserted,
      Map<String, Object> ofSizes)
      throws IOException {
    GradedPattern pattern = manual.pattern();
    double textWidth = plan.paper().width() - 2 * Pages.TEXT_MARGIN;
    TextPagesBuilder builder = new TextPagesBuilder(pattern, plan, wording);
    Optional<Drawing> cover =
        manual
            .cover()
            .map(Figure::drawing)
            .or(() -> CoverArt.of(pattern.pieces(), textWidth, COVER_ART_HEIGHT));
    Pictures pictures = new Pictures();
    ManualPages sections =
        new ManualPagesBuilder(manual, wording, pictures)
            .build(
                builder::cutSize,
                builder::marks,
                styles,
                writer.lettering(),
                textWidth,
                manual.look() == Look.STANDARD ? LAYOUT_HEIGHT : LARGE_LAYOUT_HEIGHT,
                map.isPresent());
    Map<String, Drawing> drawings = new LinkedHashMap<>(pictures.drawings());
    cover.ifPresent(drawing -> drawings.put("cover", drawing));
    map.ifPresent(drawing -> drawings.put("map", drawing));
    RecordModel records = new RecordModel(writer.glyphs());
    Map<String, Object> model = records.map(builder.build(cover, map, before + 1, before == 0));
    model.putAll(records.map(sections));
    model.putAll(
        records.map(
            new Choices(
                Chosen.in(manual.sizes(), wording).stream()
                    .map(one -> one.printed(manual.sizes(), wording, manual.form()))
                    .toList())));
    model.putAll(ofSizes);
    model.put("large", manual.look() == Look.LARGE_PRINT);
    String pieces = builder.piecesInWords();
    model.put("piecesInWords", writer.glyphs().printable(pieces));
    model.put(
        "coverInWords",
        writer
            .glyphs()
            .printable(
                manual
                    .cover()
                    .map(Figure::alternative)
                    .orElse(wording.text("cover.alternative", Map.of("pieces", pieces)))));
    pages.set(TEMPLATE, model, drawings, inserted);
  }
}
