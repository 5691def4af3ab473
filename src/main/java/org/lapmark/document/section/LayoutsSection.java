package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.Lay;
import org.lapmark.lay.LayDrawing;
import org.lapmark.lay.LayWords;
import org.lapmark.lay.Placement;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.wording.Wording;

/** How the pieces are laid on cloth. */
final class LayoutsSection implements Section {
  private static final double LAYOUT_HEIGHT = 56;
  private static final double LARGE_LAYOUT_HEIGHT = 74;

  /** About how much room the drawing of a piece takes, in hundreds of bytes. */
  private static final int ROOM_OF_A_PIECE = 20;

  /** What a drawing depends on, besides the fonts. */
  private record Drawn(
      Lay lay, double width, double height, Wording wording, StyleSheet styles, PrintForm form) {
    /**
     * Pieces that fit a cloth can be drawn on it; whoever looks at nothing needs the room alone.
     */
    Drawing made(Setting setting) {
      return setting.isTriedOut() ? new Drawing(width, height, List.of()) : remembered(setting);
    }

    private Drawing remembered(Setting setting) {
      return setting
          .memory()
          .of(
              this,
              drawing -> 1 + ROOM_OF_A_PIECE * lay.placements().size(),
              () ->
                  new LayDrawing(wording, styles, setting.lettering(), form)
                      .draw(lay, width, height));
    }
  }

  /** By material. */
  record Values(List<ClothLayouts> layouts) {}

  /** The layouts of one material. */
  record ClothLayouts(
      boolean oneWay,
      boolean grain,
      boolean reversed,
      boolean joined,
      boolean folded,
      List<Layout> layouts) {}

  /** One layout. */
  record Layout(String title, String purchase, Pictures.Picture drawing) {}

  @Override
  public String id() {
    return "layouts";
  }

  @Override
  public boolean isIn(Content content) {
    return content
        .ofOneSize()
        .map(manual -> manual.cloths().stream().anyMatch(plan -> !plan.lays().isEmpty()))
        .orElse(false);
  }

  @Override
  public Record values(Setting setting) {
    Manual manual = setting.manual();
    return new Values(
        manual.isOfSizes()
            ? List.of()
            : manual.cloths().stream()
                .filter(plan -> !plan.lays().isEmpty())
                .map(plan -> layouts(setting, plan))
                .toList());
  }

  private static ClothLayouts layouts(Setting setting, ClothPlan plan) {
    LayWords words = new LayWords(setting.wording(), setting.manual().form());
    double height = setting.manual().look() == Look.STANDARD ? LAYOUT_HEIGHT : LARGE_LAYOUT_HEIGHT;
    List<Layout> layouts = new ArrayList<>();
    boolean reversed = false;
    boolean joined = false;
    boolean folded = false;
    for (Lay lay : plan.lays()) {
      reversed |= lay.placements().stream().anyMatch(Placement::reversed);
      folded |= lay.placements().stream().anyMatch(one -> one.piece().isFolded());
      joined |= lay.placements().stream().anyMatch(placement -> placement.parts() > 1);
      layouts.add(
          new Layout(
              words.title(lay),
              words.purchase(lay),
              setting
                  .pictures()
                  .add(
                      "layout",
                      new Drawn(
                              lay,
                              setting.textWidth(),
                              height,
                              setting.wording(),
                              setting.styles(),
                              setting.manual().form())
                          .made(setting),
                      words.alternative(lay),
                      "")));
    }
    return new ClothLayouts(
        plan.cloth().oneWay(), plan.cloth().hasGrain(), reversed, joined, folded, layouts);
  }
}
