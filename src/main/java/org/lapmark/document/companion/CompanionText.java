package org.lapmark.document.companion;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.SizeList;
import org.lapmark.text.Block;
import org.lapmark.text.HtmlText;
import org.lapmark.text.Inline;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Markup;
import org.lapmark.text.Printing;
import org.lapmark.text.Steps;
import org.lapmark.wording.Wording;

/** Writes the author's Markdown for a companion. */
final class CompanionText {
  private static final String NO_BREAK = "\u00a0";

  private final CompanionSizes sizes;
  private final CompanionFigures figures;
  private final Steps steps;
  private final List<String> sections;

  /**
   * A writer for one page.
   *
   * @param sizes the page's sizes
   * @param figures draws figures
   * @param steps the steps that references may lead to
   * @param sections the names of the pages that the companion has as sections
   */
  CompanionText(
      CompanionSizes sizes, CompanionFigures figures, Steps steps, List<String> sections) {
    this.sizes = sizes;
    this.figures = figures;
    this.steps = steps;
    this.sections = sections;
  }

  /** A whole text below a heading. */
  String text(Manuscript manuscript, int level, String prefix) {
    return writer(manuscript.values(), level, prefix).text(manuscript);
  }

  /** Words on one line. */
  String line(List<Inline> line) {
    return writer(Manuscript.values(line), 1, "line").line(line);
  }

  /** Words on one line, for a label that is no markup. */
  String plain(List<Inline> line) {
    Map<CompanionUnits, Printing> printings = sizes.printings(Manuscript.values(line));
    CompanionUnits units = CompanionUnits.chosen(sizes.source().masthead().form());
    return new Hooks(printings).plain(printings.get(units)).inlines(line);
  }

  private HtmlText writer(List<Inline.Value> values, int level, String prefix) {
    Map<CompanionUnits, Printing> printings = sizes.printings(values);
    return new HtmlText(
        printings.get(CompanionUnits.chosen(sizes.source().masthead().form())),
        new HtmlText.Frame(level, prefix, 0),
        new Hooks(printings));
  }

  /** What the page decides for itself. */
  private final class Hooks implements HtmlText.Hooks {
    private final Map<CompanionUnits, Printing> printings;
    private final Wording wording = sizes.wording();

    Hooks(Map<CompanionUnits, Printing> printings) {
      this.printings = printings;
    }

    @Override
    public String value(Inline.Value value, List<PrintedValue> values) {
      return SizeList.text(
          values,
          variant -> SizeWords.lead(variant.size(), wording),
          NO_BREAK,
          wording.text("list.between"));
    }

    @Override
    public void value(Inline.Value value, List<PrintedValue> values, Markup out) {
      sizes.value(sizes.sized(value, printings), out);
    }

    @Override
    public HtmlText.Link reference(Inline.Reference reference) {
      String target = reference.target();
      return switch (reference.kind()) {
        case STEP -> {
          Optional<Steps.Step> step = steps.step(target);
          yield new HtmlText.Link(
              wording.text(
                  "companion.reference.step",
                  Map.of("number", step.map(Steps.Step::number).orElse(0))),
              step.isPresent() ? "#step-" + target : null);
        }
        case PIECE ->
            new HtmlText.Link(
                wording.text(
                    "companion.reference.piece", Map.of("number", target, "name", name(target))),
                "#piece-" + target);
        case PAGE ->
            new HtmlText.Link(
                wording.text("companion.page." + target),
                sections.contains(target) ? "#" + target : null);
      };
    }

    private String name(String number) {
      return sizes.patterns().get(sizes.typical()).pieces().stream()
          .filter(piece -> String.valueOf(piece.number()).equals(number))
          .map(Piece::name)
          .findFirst()
          .orElse("");
    }

    @Override
    public void figure(Block.Figure figure, Markup out) {
      figures.write(figure, out);
    }

    @Override
    public void art(Block.Art art, String alternative, String caption, Markup out) {
      figures.art(art, alternative, caption, out);
    }

    @Override
    public String boxLabel(Block.Box.Kind kind) {
      return wording.text("companion.box." + kind.word());
    }

    @Override
    public String noteLabel(int number) {
      return wording.text("companion.note", Map.of("number", number));
    }
  }
}
