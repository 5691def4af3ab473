package org.lapmark.document.section;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.memory.Memory;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.wording.Wording;

/** The sections of instructions, in their order. */
public final class Sections {
  static final List<Section> ALL =
      List.of(
          new PrintingSection(),
          new BeforeSection(),
          new FinishedSection(),
          new FittingSection(),
          new MaterialsSection(),
          new CuttingSection(),
          new LayoutsSection(),
          new MapSection(),
          new StepsSection(),
          new CautionsSection(),
          new ColophonSection(),
          new LabelsSection(),
          new WalkSection());

  private Sections() {}

  /** The ids of the sections that texts may lead to. */
  public static List<String> pages() {
    return ALL.stream().filter(Section::isReferable).map(Section::id).toList();
  }

  /** The ids of the sections that a document has. */
  public static List<String> ids(Content content) {
    return ALL.stream().filter(section -> section.isIn(content)).map(Section::id).toList();
  }

  /**
   * The setting of a document whose tiles, if any, begin at a page, or have a file of their own.
   */
  public static Setting setting(
      Manual manual,
      Optional<Sizes> sizes,
      SheetPlan plan,
      Optional<Drawing> map,
      int before,
      Wording wording,
      StyleSheet styles,
      LetteringMeasure lettering,
      Memory memory,
      double textWidth,
      boolean isTriedOut) {
    Hazards hazards = Hazards.of(manual, wording);
    Content content =
        new Content(
            manual.pattern().source(),
            manual.steps(),
            hazards,
            Optional.of(manual),
            map.isPresent());
    return new Setting(
        manual,
        sizes,
        plan,
        map,
        before + 1,
        before == 0,
        wording,
        styles,
        lettering,
        memory,
        textWidth,
        ids(content),
        hazards,
        new Pictures(),
        isTriedOut);
  }

  /** What all templates of a document get. */
  public static Map<String, Object> values(Setting setting, RecordModel records) {
    Map<String, Object> values = new LinkedHashMap<>(records.map(TitlePages.of(setting)));
    for (Section section : ALL) {
      values.putAll(records.map(section.values(setting)));
    }
    setting
        .sizes()
        .ifPresent(
            sizes -> {
              values.put("by", bySize(sizes, records));
              values.put("every", sizes.isEvery());
            });
    return values;
  }

  private static Map<String, Object> bySize(Sizes sizes, RecordModel records) {
    Map<String, Object> values = new LinkedHashMap<>(records.map(sizes.columns()));
    for (Section section : ALL) {
      values.putAll(records.map(section.bySize(sizes)));
    }
    return values;
  }
}
