package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.LabelPlacer;
import org.lapmark.figure.ink.PlacedLabel;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
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
  private static final double GOOD_ENOUGH = 17;
  private static final double SMALLER = 30;
  private static final double[] SHRINK = {1, 0.92, 0.85, 0.78, 0.71, 0.64, 0.57, 0.5, 0.43};
  private static final double[] MARGIN = {3, 8, 13, 18, 25, 32};

  private final Words words;
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
    this.words = new Words(wording);
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
      FigureSource figure, EvaluatedPattern pattern, PrintForm form, Findings findings) {
    Staging staging = new Staging(pattern, pattern.printing(form), words);
    String caption = text(figure.caption(), staging);
    String stated = text(figure.alternative(), staging);
    Optional<Figure> drawn =
        staging.attempt(
            () -> {
              List<Staged> pictures = stage(figure, staging);
              Drawing drawing = drawing(figure, pictures, staging);
              staging.compareLengths();
              String alternative = figure.alternative() == null ? inWords(pictures) : stated;
              return new Figure(drawing, alternative, caption);
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

  /** A picture in one variant, with what stands under it. */
  private record Staged(Optional<String> title, Scene scene) {}

  /** What of the pictures can be shown; the scale is what each is tried at first. */
  private static List<Staged> stage(FigureSource figure, Staging staging) {
    double scale = largest(figure);
    List<Staged> pictures = new ArrayList<>();
    for (FigureSource.Frame frame : figure.frames()) {
      Optional<Scene> scene = staging.attempt(() -> frame.picture().stage(staging, scale));
      Optional<String> title =
          Optional.ofNullable(frame.title())
              .flatMap(text -> staging.attempt(() -> staging.text(text)));
      scene.ifPresent(one -> pictures.add(new Staged(title, one)));
    }
    return pictures;
  }

  private static double largest(FigureSource figure) {
    return figure.frames().stream()
        .mapToDouble(frame -> frame.picture().largest())
        .min()
        .orElseThrow();
  }

  private String inWords(List<Staged> pictures) {
    List<String> sentences = new ArrayList<>();
    for (Staged picture : pictures) {
      picture.title.ifPresent(title -> sentences.add(words.word("alt.titled", "title", title)));
      sentences.addAll(picture.scene.inWords(words));
    }
    return String.join(" ", sentences);
  }

  /** A figure whose labels have their places. */
  private record Attempt(Canvas canvas, List<PlacedLabel> labels, Box frame, double cost) {}

  private Drawing drawing(FigureSource figure, List<Staged> pictures, Staging staging) {
    double width = figure.half() ? HALF : FULL;
    double scale = fitting(pictures, largest(figure), width, staging);
    Attempt best = null;
    for (double shrink : SHRINK) {
      if (best != null && SMALLER * (1 - shrink) > best.cost) {
        break;
      }
      Optional<Attempt> attempt = attempt(canvas(pictures, width, scale * shrink, staging), width);
      if (attempt.isPresent()) {
        Attempt one = attempt.get();
        // A smaller scale must be worth it.
        double price = one.cost + SMALLER * (1 - shrink);
        if (best == null || price < best.cost) {
          best = new Attempt(one.canvas, one.labels, one.frame, price);
        }
        if (one.cost <= GOOD_ENOUGH) {
          break;
        }
      }
    }
    if (best == null) {
      throw Faults.of(
          figure.position(),
          FigureCode.FIGURE_CROWDED,
          "count",
          canvas(pictures, width, scale, staging).wishes().size(),
          "size",
          staging.size());
    }
    return finished(best, width);
  }

  /** The largest scale at which the pictures fit beside each other, labels left out. */
  private double fitting(List<Staged> pictures, double largest, double width, Staging staging) {
    double scale = largest;
    // What keeps its size on paper makes each step fall a little short of the next.
    for (int i = 0; i < 20; i++) {
      Box box = canvas(pictures, width, scale, staging).bounds();
      double room = Math.min((width - 2 * EDGE) / box.width(), (highest - 2 * EDGE) / box.height());
      if (room >= 1) {
        return scale;
      }
      scale *= Math.min(room, 0.997);
    }
    return scale;
  }

  /** All pictures side by side; the first one's top left corner is anywhere. */
  private Canvas canvas(List<Staged> pictures, double width, double scale, Staging staging) {
    List<Canvas> frames = new ArrayList<>();
    for (Staged picture : pictures) {
      Canvas canvas = new Canvas(styles, lettering);
      picture.scene.draw(canvas, scale);
      canvas.leftOut().forEach(staging::flat);
      frames.add(canvas);
    }
    // What isn’t drawn may change how the rest lies: nothing more is said of that.
    if (!staging.faults().isEmpty()) {
      throw new FindingException(staging.faults().iterator().next());
    }
    if (frames.size() == 1 && pictures.get(0).title.isEmpty()) {
      return frames.get(0);
    }
    double wide = 0;
    for (Canvas frame : frames) {
      wide += frame.bounds().width();
    }
    double gap = Math.max(6, (width - wide) / frames.size());
    double tallest = frames.stream().mapToDouble(c -> c.bounds().height()).max().orElse(0);
    Canvas all = new Canvas(styles, lettering);
    double x = 0;
    for (int i = 0; i < frames.size(); i++) {
      Box box = frames.get(i).bounds();
      all.add(frames.get(i), new Point(x - box.minX(), (tallest - box.height()) / 2 - box.minY()));
      Point under = new Point(x + box.width() / 2, tallest + TITLE);
      pictures.get(i).title.ifPresent(title -> all.fixed(title, under));
      x += box.width() + gap;
    }
    return all;
  }

  private Optional<Attempt> attempt(Canvas canvas, double width) {
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
      Optional<List<PlacedLabel>> labels = new LabelPlacer(canvas, frame).place(anchors);
      if (labels.isPresent()) {
        double cost =
            labels.get().stream().mapToDouble(PlacedLabel::cost).average().orElse(0)
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

  private static Drawing finished(Attempt attempt, double width) {
    List<Item> items = new ArrayList<>(attempt.canvas.items());
    Box used = attempt.canvas.bounds();
    for (PlacedLabel label : attempt.labels) {
      used = used.union(label.box());
      items.addAll(label.items(attempt.canvas));
    }
    double top = used.minY() - EDGE;
    double height = used.height() + 2 * EDGE;
    Affine move = Affine.translation(-attempt.frame.minX(), -top);
    return new Drawing(width, height, List.of(new Item.Group(null, move, null, items)));
  }
}
