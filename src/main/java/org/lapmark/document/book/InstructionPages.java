package org.lapmark.document.book;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.section.Sections;
import org.lapmark.document.section.Setting;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.drawing.Drawing;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

/** Sets the pages of instructions: all that a document has but its tiles. */
final class InstructionPages {
  private static final String TEMPLATE = "document/pages.ftlh";
  private static final double MAP_HEIGHT_SHARE = 0.42;

  private InstructionPages() {}

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
                    tilePages(plan, before + 1),
                    textWidth,
                    plan.paper().height() * MAP_HEIGHT_SHARE));
    set(
        pages,
        writer,
        Sections.setting(
            manual,
            Optional.empty(),
            plan,
            map,
            before,
            plates.wording(),
            plates.styles(),
            writer.lettering(),
            writer.memory(),
            textWidth,
            pages.isTriedOut()),
        1);
    pages.insert(plates.printingPage(plan.paper()));
  }

  /** The page number of each tile, by its code. */
  private static Map<String, Integer> tilePages(SheetPlan plan, int firstTilePage) {
    Map<String, Integer> pages = new LinkedHashMap<>();
    for (Tile tile : plan.tiles()) {
      pages.put(tile.code(), firstTilePage + pages.size());
    }
    return pages;
  }

  /**
   * Sets text pages.
   *
   * @param inserted how many pages are going to be put behind the first
   */
  static void set(Pages pages, DocumentWriter writer, Setting setting, int inserted)
      throws IOException {
    Map<String, Object> values = Sections.values(setting, new RecordModel(writer.glyphs()));
    pages.set(TEMPLATE, values, setting.pictures().drawings(), inserted);
  }
}
