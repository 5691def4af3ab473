package org.lapmark.document.manual;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.art.ArtDrawer;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureDrawer;
import org.lapmark.figure.FigureSource;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.lay.ClothPlan;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.memory.Memory;
import org.lapmark.packing.Effort;
import org.lapmark.source.NoteSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.outside.Outside;
import org.lapmark.text.Block;
import org.lapmark.text.Inline;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Printing;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;
import org.lapmark.text.markdown.ManuscriptReader;
import org.lapmark.text.markdown.StepsReader;
import org.lapmark.wording.Wording;

/** Makes a manual: everything about instructions that doesn't depend on the paper. */
public final class ManualMaker {
  private final EvaluatedPattern pattern;
  private final Findings findings;
  private final PrintForm form;
  private final FigureDrawer drawer;
  private final FigureDrawer coverDrawer;
  private final ArtDrawer artDrawer;
  private final ArtDrawer coverArt;

  public ManualMaker(
      EvaluatedPattern pattern,
      Wording wording,
      StyleSheet styles,
      LetteringMeasure lettering,
      Memory memory,
      Effort effort,
      Findings findings) {
    this.pattern = pattern;
    this.findings = findings;
    this.form = pattern.source().masthead().form().with(NumberWords.of(wording));
    this.drawer =
        new FigureDrawer(wording, styles, lettering, FigureDrawer.HIGHEST_IN_STEPS, memory, effort);
    this.coverDrawer =
        new FigureDrawer(wording, styles, lettering, FigureDrawer.HIGHEST_ON_COVER, memory, effort);
    this.artDrawer =
        new ArtDrawer(
            FigureDrawer.FULL,
            FigureDrawer.HIGHEST_IN_STEPS,
            ArtDrawer.FOR_PAPER,
            lettering,
            memory);
    this.coverArt =
        new ArtDrawer(
            FigureDrawer.FULL,
            FigureDrawer.HIGHEST_ON_COVER,
            ArtDrawer.FOR_PAPER,
            lettering,
            memory);
  }

  /**
   * Makes the manual.
   *
   * @param look the sizes of type
   * @param cloths the materials
   * @param pages the names of the pages that texts may lead to
   */
  public Manual make(Look look, List<ClothPlan> cloths, List<String> pages) {
    PatternSource source = pattern.source();
    Targets targets = Targets.of(source, pages);
    Steps steps = StepsReader.read(source.steps(), targets, findings);
    Targets all = targets.withSteps(steps.all().stream().map(Steps.Step::id).toList());
    Map<String, Manuscript> notes = new LinkedHashMap<>();
    for (NoteSource note : source.notes()) {
      notes.put(note.name(), ManuscriptReader.read(note.body(), all, findings));
    }
    List<Inline.Value> values = new ArrayList<>(steps.values());
    List<Manuscript> texts = new ArrayList<>(notes.values());
    steps.all().forEach(step -> texts.add(step.body()));
    notes.values().forEach(note -> values.addAll(note.values()));
    List<Block.Figure> blocks = texts.stream().flatMap(text -> text.figures().stream()).toList();
    Map<Block.Art, Drawing> art = new LinkedHashMap<>();
    for (Manuscript text : texts) {
      for (Block.Art block : text.art()) {
        artDrawer
            .draw(block.path(), pattern, form, findings)
            .ifPresent(drawn -> art.put(block, drawn));
      }
    }
    Printing printing = Printing.of(values, List.of(pattern), form, findings);

    Map<Block.Figure, Figure> figures = new LinkedHashMap<>();
    Optional<Figure> finished = Optional.empty();
    Optional<Figure> cover = Optional.empty();
    for (Block.Figure block : blocks) {
      Optional<FigureSource> stated = FigureSource.parse(block.content(), findings);
      Optional<Figure> figure = stated.flatMap(one -> drawer.draw(one, pattern, form, findings));
      figure.ifPresent(drawn -> figures.put(block, drawn));
      if (finished.isEmpty() && figure.isPresent() && stated.orElseThrow().showsFinishedArticle()) {
        finished = drawer.draw(stated.get().wide(), pattern, form, findings);
        cover = coverDrawer.draw(stated.get().unlettered(), pattern, form, findings);
      }
    }
    Optional<Figure> made = cover;
    Optional<Drawing> key = figures.isEmpty() ? Optional.empty() : Optional.of(drawer.key(pattern));
    return new Manual(
        pattern,
        look,
        form,
        steps,
        notes,
        printing,
        cloths,
        figures,
        finished,
        brought().or(() -> made),
        key,
        art);
  }

  /** The picture that the pattern brings for its cover. */
  private Optional<Figure> brought() {
    Outside.CoverSource stated = pattern.source().outside().cover();
    if (stated == null) {
      return Optional.empty();
    }
    Optional<Drawing> drawn = coverArt.draw(stated.path(), pattern, form, findings);
    Optional<PrintedText> words = PrintedText.of(stated.alternative(), pattern, form, findings);
    return drawn.isPresent() && words.isPresent()
        ? Optional.of(new Figure(drawn.get(), words.get().text(), ""))
        : Optional.empty();
  }
}
