package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.film.FilmLink;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.drawing.Drawing;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureDrawer;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.text.Block;
import org.lapmark.text.HtmlText;
import org.lapmark.text.Inline;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Markup;
import org.lapmark.text.Steps;
import org.lapmark.wording.Wording;

/** Writes the author's texts as fragments for text pages. */
public final class StepPages implements HtmlText.Hooks {
  /** Steps under one heading. */
  record Stage(String html, List<StepPage> steps) {}

  /**
   * A step.
   *
   * @param number its number
   * @param id its id
   * @param html its title
   * @param plain its title without form
   * @param together whether it is kept on one page
   * @param cautions the short lines of hazards that it is the first to meet
   * @param parts its body, cut where pages may break
   */
  record StepPage(
      int number,
      String id,
      String html,
      String plain,
      boolean together,
      List<String> cautions,
      List<String> parts) {}

  private static final double HALF = (FigureDrawer.HALF + FigureDrawer.FULL) / 2;

  private static final int PRINTING_PAGE = 2;

  /** What a letter of running text adds to the height of a page's text, in millimetres. */
  private static final double HEIGHT_OF_LETTER = 0.085;

  private static final double HEIGHT_OF_LARGE_LETTER = 0.19;

  /** What every page has room for. */
  private static final double PAGE = 225;

  /** Below a section's title, and below a step's. */
  private static final int NOTE_LEVEL = 2;

  private static final int STEP_LEVEL = 4;

  private final Manual manual;
  private final Wording wording;
  private final Pictures pictures;
  private final List<String> sections;

  /**
   * A writer.
   *
   * @param sections the sections that the document has
   */
  public StepPages(Manual manual, Wording wording, Pictures pictures, List<String> sections) {
    this.sections = sections;
    this.manual = manual;
    this.wording = wording;
    this.pictures = pictures;
  }

  List<Stage> stages(Hazards hazards) {
    List<List<String>> cautions = hazards.atFirstSteps();
    List<Stage> stages = new ArrayList<>();
    for (Steps.Stage stage : manual.steps().stages()) {
      List<StepPage> steps =
          stage.steps().stream().map(step -> step(step, cautions.get(step.number() - 1))).toList();
      stages.add(new Stage(text("stage", STEP_LEVEL).line(stage.name()), steps));
    }
    return stages;
  }

  /** A file of the notes folder as a fragment. */
  Optional<String> note(String name) {
    Manuscript note = manual.notes().get(name);
    return note == null || note.blocks().isEmpty()
        ? Optional.empty()
        : Optional.of(text(name, NOTE_LEVEL).text(note));
  }

  private HtmlText text(String prefix, int headingLevel) {
    return new HtmlText(manual.printing(), new HtmlText.Frame(headingLevel, prefix, 0), this);
  }

  private StepPage step(Steps.Step step, List<String> cautions) {
    HtmlText text = text("step-" + step.id(), STEP_LEVEL);
    List<String> parts = new ArrayList<>();
    for (List<Block> part : parts(step.body().blocks())) {
      parts.add(part(part, text));
    }
    Markup notes = new Markup();
    text.notes(step.body(), notes);
    if (!notes.toString().isEmpty()) {
      parts.add(notes.toString());
    }
    film(step.id(), parts);
    return new StepPage(
        step.number(),
        step.id(),
        text.line(step.title()),
        plain(manual.printing()).inlines(step.title()),
        fitsAPage(step.body()),
        cautions,
        parts);
  }

  /** The link to the film of a step, and its code, stand below all else of it. */
  private void film(String step, List<String> parts) {
    FilmLink.of(manual.pattern().source(), step, wording)
        .ifPresent(
            film -> {
              Markup out = new Markup();
              out.open("div", "class", "film");
              object(pictures.add("film", film.code(), film.alternative(), ""), out);
              out.open("p").open("a", "href", film.address()).text(film.words()).close().close();
              out.close();
              int last = parts.size() - 1;
              if (last < 0) {
                parts.add(out.toString());
              } else {
                parts.set(last, parts.get(last) + out);
              }
            });
  }

  /** Whether a body fits on one page, with all its figures. */
  private boolean fitsAPage(Manuscript body) {
    double height = 0;
    for (Block.Figure figure : body.figures()) {
      if (manual.figures().containsKey(figure)) {
        height += manual.figures().get(figure).drawing().height();
      }
    }
    for (Block.Art art : body.art()) {
      if (manual.art().containsKey(art)) {
        height += manual.art().get(art).height();
      }
    }
    int letters = plain(manual.printing()).text(body).length();
    double letter = manual.look() == Look.STANDARD ? HEIGHT_OF_LETTER : HEIGHT_OF_LARGE_LETTER;
    return height + letters * letter < PAGE;
  }

  /** Cuts a body behind each figure; what follows the last one is a part by itself. */
  private List<List<Block>> parts(List<Block> blocks) {
    List<List<Block>> parts = new ArrayList<>();
    List<Block> running = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      running.add(blocks.get(i));
      boolean besideNext =
          i + 1 < blocks.size() && isHalf(blocks.get(i)) && isHalf(blocks.get(i + 1));
      boolean picture = blocks.get(i) instanceof Block.Figure || blocks.get(i) instanceof Block.Art;
      if (picture && !besideNext) {
        parts.add(running);
        running = new ArrayList<>();
      }
    }
    if (!running.isEmpty()) {
      parts.add(running);
    }
    return parts;
  }

  private boolean isHalf(Block block) {
    return block instanceof Block.Figure figure
        && manual.figures().containsKey(figure)
        && manual.figures().get(figure).drawing().width() < HALF;
  }

  /** A narrow figure stands beside the words before it, two of them beside each other. */
  private String part(List<Block> blocks, HtmlText text) {
    Markup out = new Markup();
    int figures = (int) blocks.stream().filter(this::isHalf).count();
    int first = blocks.size() - figures;
    if (figures == 0 || first == 0 && figures == 1 || manual.look() == Look.LARGE_PRINT) {
      text.blocks(blocks, out);
    } else {
      int left = figures == 1 ? first - 1 : first;
      text.blocks(blocks.subList(0, left), out);
      out.open("div", "class", figures == 1 ? "half words" : "half");
      text.blocks(blocks.subList(left, left + 1), out);
      out.close().open("div", "class", "half");
      text.blocks(blocks.subList(left + 1, blocks.size()), out);
      out.close();
    }
    return out.toString();
  }

  @Override
  public String value(Inline.Value value, List<PrintedValue> values) {
    return SizeWords.values(values, wording);
  }

  @Override
  public void value(Inline.Value value, List<PrintedValue> values, Markup out) {
    out.text(value(value, values));
  }

  @Override
  public HtmlText.Link reference(Inline.Reference reference) {
    String target = reference.target();
    return switch (reference.kind()) {
      case STEP ->
          new HtmlText.Link(
              wording.text(
                  "reference.step",
                  Map.of("number", manual.steps().step(target).map(Steps.Step::number).orElse(0))),
              "#step-" + target);
      case PIECE ->
          new HtmlText.Link(
              wording.text("reference.piece", Map.of("number", target, "name", name(target))),
              "#piece-" + target);
      case PAGE -> page(target, reference.words().isEmpty());
    };
  }

  /** The page's number follows by style, where the author has no words of her own. */
  private HtmlText.Link page(String target, boolean bare) {
    if (!sections.contains(target)) {
      return new HtmlText.Link(wording.text(target + ".title"), null);
    }
    if (target.equals(PrintingSection.ID)) {
      return new HtmlText.Link(
          wording.text("reference.page-at", Map.of("page", PRINTING_PAGE)), null);
    }
    return new HtmlText.Link(
        wording.text("reference.page"), bare ? "#page-" + target : "#" + target);
  }

  private String name(String number) {
    return manual.pattern().pieces().stream()
        .filter(piece -> Integer.toString(piece.number()).equals(number))
        .map(Piece::name)
        .findFirst()
        .orElse(number);
  }

  @Override
  public void figure(Block.Figure block, Markup out) {
    Figure figure = manual.figures().get(block);
    if (figure != null) {
      String caption = new Markup().text(figure.caption()).toString();
      write(pictures.add("figure", figure, figure.caption()), caption, out);
    }
  }

  private static void write(Pictures.Picture picture, String caption, Markup out) {
    out.open("div", "class", "figure");
    object(picture, out);
    if (!caption.isEmpty()) {
      out.open("p", "class", "caption").raw(caption).close();
    }
    out.close();
  }

  private static void object(Pictures.Picture picture, Markup out) {
    out.open(
            "object",
            "type",
            "lapmark/drawing",
            "data",
            picture.name(),
            "alt",
            picture.alternative(),
            "style",
            "width: " + picture.width() + "mm; height: " + picture.height() + "mm")
        .close();
  }

  @Override
  public void art(Block.Art art, String alternative, String caption, Markup out) {
    Drawing drawing = manual.art().get(art);
    if (drawing != null) {
      write(pictures.add("art", drawing, alternative, ""), caption, out);
    }
  }

  @Override
  public String boxLabel(Block.Box.Kind kind) {
    return wording.text("box." + kind.word());
  }

  @Override
  public String noteLabel(int number) {
    return wording.text("reference.note", Map.of("number", number));
  }
}
