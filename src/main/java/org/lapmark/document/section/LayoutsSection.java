package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.Lay;
import org.lapmark.lay.LayDrawing;
import org.lapmark.lay.LayWords;
import org.lapmark.lay.Placement;

/** How the pieces are laid on cloth. */
final class LayoutsSection implements Section {
  private static final double LAYOUT_HEIGHT = 56;
  private static final double LARGE_LAYOUT_HEIGHT = 74;

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
    LayDrawing drawing =
        new LayDrawing(setting.wording(), setting.styles(), setting.lettering(), manual.form());
    return new Values(
        manual.isOfSizes()
            ? List.of()
            : manual.cloths().stream()
                .filter(plan -> !plan.lays().isEmpty())
                .map(plan -> layouts(setting, plan, drawing))
                .toList());
  }

  private static ClothLayouts layouts(Setting setting, ClothPlan plan, LayDrawing drawing) {
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
                      drawing.draw(lay, setting.textWidth(), height),
                      words.alternative(lay),
                      "")));
    }
    return new ClothLayouts(
        plan.cloth().oneWay(), plan.cloth().hasGrain(), reversed, joined, folded, layouts);
  }
}
