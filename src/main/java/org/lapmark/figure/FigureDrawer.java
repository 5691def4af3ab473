package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.TemplateText;
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

  /** The usual greatest height of a figure in millimetres. */
  public static final double HIGHEST = 112;

  private static final double EDGE = 1.5;
  private static final double TITLE = 7;
  private static final double LARGEST_FLAT = 1.2;
  private static final double LARGEST_SECTION = 3;
  private static final double GOOD_ENOUGH = 17;
  private static final double SMALLER = 30;
  private static final double[] SHRINK = {1, 0.92, 0.85, 0.78, 0.71, 0.64, 0.57, 0.5, 0.43};
  private static final double[] MARGIN = {3, 8, 13, 18, 25, 32};

  private final Wording wording;
  private final StyleSheet styles;
  private final LetteringMeasure lettering;
  private final double highest;

  /**
   * A drawer for one language and look, of figures up to {@link #HIGHEST}.
   *
   * @param wording the words of {@code figure.…}
   * @param styles the roles of {@code figure-…}
   * @param lettering the font in which the figures will be lettered
   */
  public FigureDrawer(Wording wording, StyleSheet styles, LetteringMeasure lettering) {
    this(wording, styles, lettering, HIGHEST);
  }

  /**
   * A drawer for one language and look.
   *
   * @param wording the words of {@code figure.…}
   * @param styles the roles of {@code figure-…}
   * @param lettering the font in which the figures will be lettered
   * @param highest the greatest height of a figure in millimetres
   */
  public FigureDrawer(
      Wording wording, StyleSheet styles, LetteringMeasure lettering, double highest) {
    this.highest = highest;
    this.wording = wording;
    this.styles = styles;
    this.lettering = lettering;
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
      FigureSource figure, GradedPattern pattern, PrintForm form, Findings findings) {
    Evaluation evaluation = new Evaluation(pattern, pattern.printing(form), wording);
    String caption = text(figure.caption(), evaluation);
    String stated = text(figure.alternative(), evaluation);
    Optional<Figure> drawn =
        evaluation.attempt(
            () -> {
              Drawing drawing = drawing(figure, evaluation);
              evaluation.lengths().compare(evaluation);
              String alternative =
                  figure.alternative() == null ? new Alternative(evaluation).of(figure) : stated;
              return new Figure(drawing, alternative, caption);
            });
    evaluation.notices().forEach(findings::add);
    evaluation.faults().forEach(findings::add);
    return evaluation.faults().isEmpty() ? drawn : Optional.empty();
  }

  private static String text(TemplateText text, Evaluation evaluation) {
    return text == null ? "" : evaluation.attempt(() -> evaluation.text(text)).orElse("");
  }

  /**
   * The key of sides and materials: what each texture in the figures stands for.
   *
   * @param pattern the pattern in any variant
   * @return a drawing as wide as a wide figure
   */
  public Drawing key(GradedPattern pattern) {
    return ClothKey.draw(
        new Evaluation(pattern, pattern.source().masthead().form(), wording), styles, lettering);
  }

  /** A figure whose labels have their places. */
  private record Attempt(Canvas canvas, List<LabelPlacer.Placed> labels, Box frame, double cost) {}

  private Drawing drawing(FigureSource figure, Evaluation evaluation) {
    double width = figure.half() ? HALF : FULL;
    double scale = fitting(figure, evaluation, width);
    Attempt best = null;
    for (double shrink : SHRINK) {
      if (best != null && SMALLER * (1 - shrink) > best.cost) {
        break;
      }
      Optional<Attempt> attempt = attempt(figure, evaluation, width, scale * shrink);
      if (attempt.isPresent()) {
        // A smaller scale must be worth it.
        double price = attempt.get().cost + SMALLER * (1 - shrink);
        if (best == null || price < best.cost) {
          best =
              new Attempt(attempt.get().canvas, attempt.get().labels, attempt.get().frame, price);
        }
        if (attempt.get().cost <= GOOD_ENOUGH) {
          break;
        }
      }
    }
    if (best == null) {
      throw Evaluation.fault(
          figure.position(),
          FigureCode.FIGURE_CROWDED,
          "count",
          canvas(figure, evaluation, width, scale).wishes().size(),
          "size",
          evaluation.size());
    }
    return finished(best, width);
  }

  /** The largest scale at which the pictures fit beside each other, labels left out. */
  private double fitting(FigureSource figure, Evaluation evaluation, double width) {
    double most =
        figure.frames().stream().allMatch(frame -> frame instanceof FigureSource.Section)
            ? LARGEST_SECTION
            : LARGEST_FLAT;
    double scale = most;
    // What keeps its size on paper makes each step fall a little short of the next.
    for (int i = 0; i < 20; i++) {
      Box box = canvas(figure, evaluation, width, scale).bounds();
      double room = Math.min((width - 2 * EDGE) / box.width(), (highest - 2 * EDGE) / box.height());
      if (room >= 1) {
        return scale;
      }
      scale *= Math.min(room, 0.997);
    }
    return scale;
  }

  /** All pictures side by side; the first one's top left corner is anywhere. */
  private Canvas canvas(FigureSource figure, Evaluation evaluation, double width, double scale) {
    List<Canvas> frames = new ArrayList<>();
    double wide = 0;
    for (FigureSource.Frame frame : figure.frames()) {
      Canvas canvas =
          evaluation
              .attempt(() -> frame(frame, evaluation, scale))
              .orElseGet(() -> new Canvas(styles, lettering));
      frames.add(canvas);
      wide += canvas.bounds().width();
      if (frame.title() != null) {
        evaluation.run(() -> evaluation.text(frame.title()));
      }
    }
    // What wasn’t drawn may change how the rest lies: nothing more is said of that.
    if (!evaluation.faults().isEmpty()) {
      throw new FindingException(evaluation.faults().iterator().next());
    }
    if (frames.size() == 1 && figure.frames().get(0).title() == null) {
      return frames.get(0);
    }
    double gap = Math.max(6, (width - wide) / frames.size());
    double highest = frames.stream().mapToDouble(c -> c.bounds().height()).max().orElse(0);
    Canvas all = new Canvas(styles, lettering);
    double x = 0;
    for (int i = 0; i < frames.size(); i++) {
      Box box = frames.get(i).bounds();
      Point by = new Point(x - box.minX(), (highest - box.height()) / 2 - box.minY());
      all.add(frames.get(i), by);
      if (figure.frames().get(i).title() != null) {
        all.fixed(
            evaluation.text(figure.frames().get(i).title()),
            new Point(x + box.width() / 2, highest + TITLE));
      }
      x += box.width() + gap;
    }
    return all;
  }

  private Canvas frame(FigureSource.Frame frame, Evaluation evaluation, double scale) {
    if (frame instanceof FigureSource.Pieces pieces) {
      return new PieceArtist(evaluation, styles, lettering, scale).draw(pieces);
    }
    if (frame instanceof FigureSource.Layers layers) {
      return new PieceArtist(evaluation, styles, lettering, scale).draw(layers);
    }
    if (frame instanceof FigureSource.Section section) {
      return new SectionArtist(evaluation, styles, lettering, scale).draw(section);
    }
    if (frame instanceof FigureSource.Rings rings) {
      return new RingsArtist(evaluation, styles, lettering, scale).draw(rings);
    }
    return new ArticleArtist(evaluation, styles, lettering, scale)
        .draw((FigureSource.Article) frame);
  }

  private Optional<Attempt> attempt(
      FigureSource figure, Evaluation evaluation, double width, double scale) {
    Canvas canvas = canvas(figure, evaluation, width, scale);
    Box box = canvas.bounds();
    List<List<Point>> anchors = canvas.wishes().stream().map(wish -> wish.anchors().get()).toList();
    Attempt best = null;
    for (double margin : MARGIN) {
      if (box.height() + 2 * margin > highest + 0.01) {
        break;
      }
      Box frame =
          Box.at(
              box.centre().x() - width / 2, box.minY() - margin, width, box.height() + 2 * margin);
      Optional<List<LabelPlacer.Placed>> labels = new LabelPlacer(canvas, frame).place(anchors);
      if (labels.isPresent()) {
        double cost =
            labels.get().stream().mapToDouble(LabelPlacer.Placed::cost).average().orElse(0)
                + 0.15 * margin;
        if (best == null || cost < best.cost) {
          best = new Attempt(canvas, labels.get(), frame, cost);
        }
        if (cost <= GOOD_ENOUGH) {
          break;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private Drawing finished(Attempt attempt, double width) {
    List<Item> items = new ArrayList<>(attempt.canvas.items());
    Box used = attempt.canvas.bounds();
    for (LabelPlacer.Placed label : attempt.labels) {
      used = used.union(label.box());
      items.addAll(lettered(attempt.canvas, label));
    }
    double top = used.minY() - EDGE;
    double height = used.height() + 2 * EDGE;
    Affine move = Affine.translation(-attempt.frame.minX(), -top);
    return new Drawing(width, height, List.of(new Item.Group(null, move, null, items)));
  }

  private static List<Item> lettered(Canvas canvas, LabelPlacer.Placed label) {
    List<Item> items = new ArrayList<>();
    if (label.start() != null) {
      items.add(
          new Item.Shape(
              List.of(Path.polyline(List.of(label.start(), label.anchor()))), "figure-leader"));
      items.add(new Item.Shape(List.of(Path.circle(label.anchor(), 0.5)), "figure-leader-dot"));
    }
    Box box = label.box();
    if (label.wish().ring()) {
      items.add(
          new Item.Shape(List.of(Path.circle(box.centre(), LabelPlacer.RING / 2)), "figure-ring"));
      double top = box.centre().y() - canvas.lineHeight() / 2;
      items.add(
          new Item.Lettering(
              label.wish().text(),
              new Point(box.centre().x(), canvas.baseline(top)),
              Item.Alignment.MIDDLE,
              0,
              Canvas.TEXT));
      return items;
    }
    // Lines are set against the leader, centred without one.
    Item.Alignment alignment = Item.Alignment.MIDDLE;
    double x = box.centre().x();
    if (label.start() != null && label.start().x() < box.minX()) {
      alignment = Item.Alignment.START;
      x = box.minX();
    } else if (label.start() != null && label.start().x() > box.maxX()) {
      alignment = Item.Alignment.END;
      x = box.maxX();
    }
    for (int i = 0; i < label.lines().size(); i++) {
      double top = box.minY() + i * canvas.leading();
      items.add(
          new Item.Lettering(
              label.lines().get(i), new Point(x, canvas.baseline(top)), alignment, 0, Canvas.TEXT));
    }
    return items;
  }
}
