package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Manual;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.grade.Cut;
import org.lapmark.grade.Piece;
import org.lapmark.grade.StatedSize;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.Lay;
import org.lapmark.lay.LayDrawing;
import org.lapmark.lay.LayWords;
import org.lapmark.lay.Placement;
import org.lapmark.wording.Wording;

/** Works out what the text pages say about making the article. */
public final class ManualPagesBuilder {
  private final Manual manual;
  private final Wording wording;
  private final Pictures pictures;

  public ManualPagesBuilder(Manual manual, Wording wording, Pictures pictures) {
    this.manual = manual;
    this.wording = wording;
    this.pictures = pictures;
  }

  /**
   * All that the pages say.
   *
   * @param cutSize how a cut size is printed
   * @param marks what is said of a ruled piece's marks
   * @param styles the look of layouts
   * @param lettering how wide their words come out
   * @param layoutWidth how wide they are drawn, in millimetres
   * @param layoutHeight the height they keep to
   * @param hasMap whether there is a page map
   */
  public ManualPages build(
      BiFunction<Piece, StatedSize, TextPages.CutSize> cutSize,
      Function<Piece, List<List<Object>>> marks,
      StyleSheet styles,
      LetteringMeasure lettering,
      double layoutWidth,
      double layoutHeight,
      boolean hasMap) {
    Hazards hazards = Hazards.of(manual, wording);
    List<ManualPages.Caution> cautions =
        hazards.gathered().stream()
            .map(hazard -> new ManualPages.Caution(hazards.title(hazard), hazards.text(hazard)))
            .toList();
    ManualPages.Begin begin = new BeginPage(manual, wording).build(hazards);
    ManualPages.Shopping shopping = new ShoppingPage(manual, wording).build();
    // What differs by size as a whole is left to the documents of one size.
    boolean ofSizes = manual.isOfSizes();
    List<ManualPages.Label> labels = ofSizes ? List.of() : labels(cutSize, marks);
    LayDrawing drawing = new LayDrawing(wording, styles, lettering, manual.form());
    List<ManualPages.ClothLayouts> layouts = new ArrayList<>();
    for (ClothPlan plan : manual.cloths()) {
      if (!ofSizes && !plan.lays().isEmpty()) {
        layouts.add(layouts(plan, drawing, layoutWidth, layoutHeight));
      }
    }
    List<String> sections = new ArrayList<>();
    when(!ofSizes, "printing", sections);
    sections.add("before");
    when(!manual.pattern().source().finished().isEmpty(), "finished", sections);
    when(manual.notes().containsKey("fitting"), "fitting", sections);
    when(!shopping.materials().isEmpty() || !shopping.parts().isEmpty(), "materials", sections);
    sections.add("cutting");
    when(!layouts.isEmpty(), "layouts", sections);
    when(hasMap, "map", sections);
    when(!manual.steps().all().isEmpty(), "steps", sections);
    when(!cautions.isEmpty() || manual.notes().containsKey("cautions"), "cautions", sections);
    sections.add("colophon");
    when(!labels.isEmpty(), "labels", sections);
    Optional<WalkPages> walk =
        manual.walked() && !ofSizes && !manual.pattern().seams().isEmpty()
            ? Optional.of(WalkPages.of(manual.pattern(), wording))
            : Optional.empty();
    when(walk.isPresent(), "walk", sections);
    StepPages texts = new StepPages(manual, wording, pictures, sections);
    return new ManualPages(
        sections,
        texts.note("introduction"),
        texts.note("fitting"),
        begin,
        manual.finished().map(figure -> pictures.add("finished", figure, "")),
        shopping,
        layouts,
        manual.key().map(this::key),
        texts.stages(hazards),
        hazards.inUse(),
        cautions,
        texts.note("cautions"),
        labels,
        walk);
  }

  private static void when(boolean present, String section, List<String> sections) {
    if (present) {
      sections.add(section);
    }
  }

  private ManualPages.Picture key(Drawing drawing) {
    return pictures.add("key", drawing, wording.text("steps.key.alternative"), "");
  }

  private ManualPages.ClothLayouts layouts(
      ClothPlan plan, LayDrawing drawing, double width, double height) {
    LayWords words = new LayWords(wording, manual.form());
    List<ManualPages.Layout> layouts = new ArrayList<>();
    boolean reversed = false;
    boolean joined = false;
    boolean folded = false;
    for (Lay lay : plan.lays()) {
      reversed |= lay.placements().stream().anyMatch(Placement::reversed);
      folded |= lay.placements().stream().anyMatch(one -> one.piece().isFolded());
      joined |= lay.placements().stream().anyMatch(placement -> placement.parts() > 1);
      layouts.add(
          new ManualPages.Layout(
              words.title(lay),
              words.purchase(lay),
              pictures.add(
                  "layout", drawing.draw(lay, width, height), words.alternative(lay), "")));
    }
    return new ManualPages.ClothLayouts(
        plan.cloth().oneWay(), plan.cloth().hasGrain(), reversed, joined, folded, layouts);
  }

  private List<ManualPages.Label> labels(
      BiFunction<Piece, StatedSize, TextPages.CutSize> cutSize,
      Function<Piece, List<List<Object>>> marks) {
    List<ManualPages.Label> labels = new ArrayList<>();
    for (Piece piece : manual.pattern().pieces()) {
      Optional<StatedSize> size = piece.statedSize();
      if (size.isPresent()) {
        for (Cut cut : piece.cuts()) {
          labels.add(
              new ManualPages.Label(
                  piece.number(),
                  piece.name(),
                  cut.materialName(),
                  cut.count(),
                  cut.reversed(),
                  cut.mirroring(),
                  cutSize.apply(piece, size.get()),
                  marks.apply(piece)));
        }
      }
    }
    return labels;
  }
}
