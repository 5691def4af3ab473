package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.memory.Memory;
import org.lapmark.packing.Effort;
import org.lapmark.wording.Wording;

/**
 * Draws figures. The scale is the largest at which everything fits the width and every label finds
 * its place.
 */
public final class FigureDrawer {
  /** The width of a wide figure in millimetres. */
  public static final double FULL = 165;

  /** The width of a narrow figure in millimetres. */
  public static final double HALF = 80;

  /** The share of its width to which a figure may be set down where a page is short of room. */
  public static final double SET_DOWN = 0.85;

  /** So high that two steps with a figure each fit on most pages, in millimetres. */
  public static final double HIGHEST_IN_STEPS = 78;

  /** The greatest height of the figure on a cover, in millimetres. */
  public static final double HIGHEST_ON_COVER = 104;

  /** The usual greatest height of a figure in millimetres. */
  public static final double HIGHEST = 112;

  /** Heights to which figures of the same pictures are drawn elsewhere. */
  private static final List<Double> HEIGHTS = List.of(HIGHEST_IN_STEPS, HIGHEST_ON_COVER);

  /** A figure is remembered with so much weight for each of its items. */
  private static final int WEIGHT = 4;

  private final Words words;
  private final StyleSheet styles;
  private final LetteringMeasure lettering;
  private final double highest;
  private final double share;
  private final Memory memory;
  private final Effort effort;

  /**
   * A drawer for one language and look, of figures up to {@link #HIGHEST}.
   *
   * @param wording the words of {@code figure.…}
   * @param styles the roles of {@code figure-…}
   * @param lettering the font in which the figures will be lettered
   */
  public FigureDrawer(Wording wording, StyleSheet styles, LetteringMeasure lettering) {
    this(wording, styles, lettering, HIGHEST, Memory.none(), Effort.FULL);
  }

  /**
   * A drawer for one language and look.
   *
   * @param wording the words of {@code figure.…}
   * @param styles the roles of {@code figure-…}
   * @param lettering the font in which the figures will be lettered
   * @param highest the greatest height of a figure in millimetres
   * @param memory what remembers figures, of this lettering alone
   * @param effort how good places of labels are searched for
   */
  public FigureDrawer(
      Wording wording,
      StyleSheet styles,
      LetteringMeasure lettering,
      double highest,
      Memory memory,
      Effort effort) {
    this(new Words(wording), styles, lettering, highest, 1, memory, effort);
  }

  private FigureDrawer(
      Words words,
      StyleSheet styles,
      LetteringMeasure lettering,
      double highest,
      double share,
      Memory memory,
      Effort effort) {
    this.memory = memory;
    this.share = share;
    this.effort = effort;
    this.highest = highest;
    this.words = words;
    this.styles = styles;
    this.lettering = lettering;
  }

  /**
   * A drawer of the same figures set down to {@link #SET_DOWN} of their width and height: drawn
   * anew at a smaller scale, so that lettering and lines keep their sizes.
   *
   * @return the drawer
   */
  public FigureDrawer settingDown() {
    return new FigureDrawer(words, styles, lettering, SET_DOWN * highest, SET_DOWN, memory, effort);
  }

  /**
   * Draws a figure in one variant.
   *
   * @param figure the figure
   * @param pattern the pattern in that variant; one without errors
   * @param form how lengths are printed
   * @param findings where problems go
   * @return the figure; nothing when it can't be drawn, which is then reported
   */
  public Optional<Figure> draw(
      FigureSource figure, EvaluatedPattern pattern, PrintForm form, Findings findings) {
    Staging staging = new Staging(pattern, pattern.printing(form), words);
    String caption = text(figure.caption(), staging);
    String stated = text(figure.alternative(), staging);
    Optional<Figure> drawn =
        staging.attempt(
            () -> {
              List<FigureLayout.Picture> pictures = stage(figure, staging);
              FigureLayout.Outcome outcome = outcome(figure, pictures, staging);
              staging.compareLengths();
              String alternative =
                  figure.alternative() == null ? inWords(pictures, outcome.lettered()) : stated;
              return new Figure(outcome.drawing().orElseThrow(), alternative, caption);
            });
    staging.notices().forEach(findings::add);
    staging.faults().forEach(findings::add);
    return staging.faults().isEmpty() ? drawn : Optional.empty();
  }

  private static String text(TemplateText text, Staging staging) {
    return text == null ? "" : staging.attempt(() -> staging.text(text)).orElse("");
  }

  /**
   * The key of sides and materials: what each texture in the figures stands for.
   *
   * @param pattern the pattern in any variant
   * @return a drawing as wide as a wide figure
   */
  public Drawing key(EvaluatedPattern pattern) {
    Staging staging = new Staging(pattern, pattern.source().masthead().form(), words);
    return ClothKey.draw(staging.cloths(), new Canvas(styles, lettering));
  }

  /** What of the pictures can be shown; the scale is what each is tried at first. */
  private static List<FigureLayout.Picture> stage(FigureSource figure, Staging staging) {
    double scale = largest(figure);
    List<FigureLayout.Picture> pictures = new ArrayList<>();
    for (FigureSource.Frame frame : figure.frames()) {
      Optional<Scene> scene = staging.attempt(() -> frame.picture().stage(staging, scale));
      Optional<String> title =
          Optional.ofNullable(frame.title())
              .flatMap(text -> staging.attempt(() -> staging.text(text)));
      scene.ifPresent(one -> one.frames().forEach(part -> pictures.add(picture(title, part))));
    }
    if (pictures.size() > FigureSource.MAX_FRAMES) {
      throw Faults.of(
          figure.position(),
          FigureCode.FIGURE_TOO_MANY,
          "limit",
          FigureSource.MAX_FRAMES,
          "what",
          "frames");
    }
    return pictures;
  }

  /** What an author calls a picture goes before what each of its frames is called. */
  private static FigureLayout.Picture picture(Optional<String> stated, Scene.Titled part) {
    Optional<String> title =
        stated
            .flatMap(one -> part.title().map(own -> one + ": " + own))
            .or(() -> stated)
            .or(part::title);
    return new FigureLayout.Picture(title, part.scene());
  }

  private static double largest(FigureSource figure) {
    return figure.frames().stream()
        .mapToDouble(frame -> frame.picture().largest())
        .min()
        .orElseThrow();
  }

  private String inWords(List<FigureLayout.Picture> pictures, List<SaidFigure.Lettered> lettered) {
    SaidFigure said = new SaidFigure(words);
    for (int i = 0; i < pictures.size(); i++) {
      said.add(pictures.get(i), lettered.get(i));
    }
    return said.inWords();
  }

  /** What has a drawing. */
  private FigureLayout.Outcome outcome(
      FigureSource figure, List<FigureLayout.Picture> pictures, Staging staging) {
    if (pictures.isEmpty()) {
      throw staging.fault();
    }
    FigureLayout layout =
        new FigureLayout(
            pictures,
            share * (figure.half() ? HALF : FULL),
            highest,
            largest(figure),
            styles,
            effort);
    FigureLayout.Outcome outcome = laid(layout);
    outcome.flat().forEach(staging::flat);
    if (staging.isAmiss()) {
      throw staging.fault();
    }
    if (outcome.drawing().isEmpty()) {
      throw Faults.of(
          figure.position(),
          FigureCode.FIGURE_CROWDED,
          "count",
          outcome.labels(),
          "size",
          staging.size());
    }
    return outcome;
  }

  /**
   * Laid out once: also where it would come out the same if it had to be less high. What can be
   * drawn less high can be drawn.
   */
  private FigureLayout.Outcome laid(FigureLayout layout) {
    List<FigureLayout> lower =
        HEIGHTS.stream().filter(less -> less < layout.highest()).map(layout::within).toList();
    FigureLayout.Outcome outcome =
        lower.stream()
            .flatMap(less -> memory.<FigureLayout.Outcome>known(less).stream())
            .filter(known -> !known.isLimited())
            .findFirst()
            .orElseGet(() -> remembered(layout));
    if (outcome.drawing().isPresent()) {
      return outcome;
    }
    return lower.stream()
        .map(this::remembered)
        .filter(less -> less.drawing().isPresent())
        .findFirst()
        .orElse(outcome);
  }

  /** One that has been laid out as well as it can be does for less as well. */
  private FigureLayout.Outcome remembered(FigureLayout layout) {
    if (effort == Effort.LEAST) {
      Optional<FigureLayout.Outcome> best = memory.known(layout.with(Effort.FULL));
      if (best.isPresent()) {
        return best.get();
      }
    }
    return memory.of(layout, FigureDrawer::weight, () -> layout.lay(lettering));
  }

  private static int weight(FigureLayout.Outcome outcome) {
    return outcome.drawing().map(FigureDrawer::items).orElse(1) * WEIGHT;
  }

  private static int items(Drawing drawing) {
    return drawing.items().stream().mapToInt(FigureDrawer::items).sum();
  }

  private static int items(Item item) {
    return item instanceof Item.Group group
        ? group.items().stream().mapToInt(FigureDrawer::items).sum()
        : 1;
  }
}
