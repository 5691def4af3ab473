package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.DearestFirst;
import org.lapmark.figure.ink.LabelPlacer;
import org.lapmark.figure.ink.PlacedLabel;
import org.lapmark.figure.scene.Scene;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.packing.Effort;

/**
 * Lays out the pictures of one figure beside each other, at the largest scale at which everything
 * fits and every label finds its place. What comes of it depends on the components alone, and on
 * the font.
 *
 * @param pictures what is shown, in order
 * @param width the figure's width in millimetres
 * @param highest its greatest height in millimetres
 * @param largest the scale that is tried first
 * @param styles the roles of {@code figure-…}
 * @param effort how good places are searched for; whether there are any shows either way
 */
record FigureLayout(
    List<Picture> pictures,
    double width,
    double highest,
    double largest,
    StyleSheet styles,
    Effort effort) {
  private static final double EDGE = 1.5;
  private static final double TITLE = 7;
  private static final double NOTE = 4.5;
  private static final double BETWEEN_TITLES = 3;

  /** From a picture to the middle of its title, and on to the next, where they are stacked. */
  private static final double UNDER = 5;

  private static final double[] BELOW = {2, 7};

  /** Narrower figures may have their pictures below each other. */
  private static final double STACKED = 100;

  /** So much larger pictures are drawn then. */
  private static final double LARGER = 1.15;

  private static final double GOOD_ENOUGH = 17;
  private static final double SMALLER = 30;
  private static final double[] SHRINK = {1, 0.92, 0.85, 0.78, 0.71, 0.64, 0.57, 0.5, 0.43};

  /** What each millimetre of margin costs. */
  private static final double DEARER = 0.15;

  private static final double[] MARGIN = {3, 8, 13, 18, 25, 32};

  /** Copies the list. */
  FigureLayout {
    pictures = List.copyOf(pictures);
  }

  /** A picture in one variant, with what stands under it. */
  record Picture(Optional<String> title, Scene scene) {}

  /**
   * What came of it.
   *
   * @param drawing the figure; nothing where there is no room for its labels, or where something is
   *     flat
   * @param labels how many labels want room
   * @param flat the numbers of dimensions that have no length as seen from where they stand
   * @param isLimited whether it could be another if the figure might be higher
   * @param lettered what is lettered in each picture at the scale that is tried first
   */
  record Outcome(
      Optional<Drawing> drawing,
      int labels,
      Set<Integer> flat,
      boolean isLimited,
      List<SaidFigure.Lettered> lettered) {}

  private boolean isStackable() {
    return pictures.size() > 1 && pictures.stream().allMatch(one -> one.scene.isStackable());
  }

  /** The same with another greatest height. */
  FigureLayout within(double height) {
    return new FigureLayout(pictures, width, height, largest, styles, effort);
  }

  /** The same with another effort. */
  FigureLayout with(Effort other) {
    return new FigureLayout(pictures, width, highest, largest, styles, other);
  }

  private boolean isGoodEnough(double cost) {
    return cost <= GOOD_ENOUGH || effort == Effort.LEAST;
  }

  /** Lays them out. */
  Outcome lay(LetteringMeasure lettering) {
    Laying laying = new Laying(lettering);
    try {
      return laying.lay();
    } catch (Flat e) {
      return new Outcome(Optional.empty(), 0, e.numbers, laying.limited, List.of());
    }
  }

  /** Ends it: what isn’t drawn may change how the rest lies. */
  private static final class Flat extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Set<Integer> numbers;

    Flat(Set<Integer> numbers) {
      super("dimensions without length", null, false, false);
      this.numbers = numbers;
    }
  }

  /** A figure whose labels have their places. */
  private record Attempt(Canvas canvas, List<PlacedLabel> labels, Box frame, double cost) {}

  /** One laying out, which remembers whether the height was in the way. */
  private final class Laying {
    private final LetteringMeasure lettering;
    private final DearestFirst dearest = new DearestFirst();
    private boolean limited;
    private boolean column;
    private double below;

    /** What was drawn last, as the scale that fits is the first at which labels are placed. */
    private Drawn last;

    private List<SaidFigure.Lettered> lettered;

    /** The pictures at one scale, beside or below each other. */
    private record Drawn(double scale, boolean column, double below, Canvas canvas) {}

    Laying(LetteringMeasure lettering) {
      this.lettering = lettering;
    }

    Outcome lay() {
      double scale = fitting();
      Attempt best = width < STACKED && isStackable() ? stacked(scale) : null;
      if (best == null) {
        column = false;
        best = best(scale);
      }
      if (best == null) {
        int labels = canvas(scale).wishes().size();
        return new Outcome(Optional.empty(), labels, Set.of(), limited, lettered);
      }
      return new Outcome(Optional.of(finished(best)), 0, Set.of(), limited, lettered);
    }

    /** The pictures below each other, if that shows them larger. */
    private Attempt stacked(double beside) {
      column = true;
      for (double gap : BELOW) {
        below = gap;
        double scale = fitting();
        Attempt best = scale > LARGER * beside ? best(scale) : null;
        if (best != null) {
          return best;
        }
      }
      return null;
    }

    private Attempt best(double scale) {
      Attempt best = null;
      for (double shrink : SHRINK) {
        if (best != null && SMALLER * (1 - shrink) > best.cost) {
          break;
        }
        Optional<Attempt> attempt = attempt(scale * shrink, best == null, most(best, shrink));
        if (attempt.isPresent()) {
          Attempt one = attempt.get();
          // A smaller scale must be worth it.
          double price = one.cost + SMALLER * (1 - shrink);
          if (best == null || price < best.cost) {
            best = new Attempt(one.canvas, one.labels, one.frame, price);
          }
          if (isGoodEnough(one.cost)) {
            break;
          }
        }
      }
      return best;
    }

    /**
     * Beyond which cost an attempt is neither better than what there is nor the last: that needs no
     * places.
     */
    private double most(Attempt best, double shrink) {
      return best == null
          ? Double.POSITIVE_INFINITY
          : Math.max(GOOD_ENOUGH, best.cost - SMALLER * (1 - shrink));
    }

    /** The largest scale at which the pictures fit beside each other, labels left out. */
    private double fitting() {
      double scale = largest;
      // What keeps its size on paper makes each step fall a little short of the next.
      for (int i = 0; i < 20; i++) {
        Box box = canvas(scale).bounds();
        double across = (width - 2 * EDGE) / box.width();
        double down = (highest - 2 * EDGE) / box.height();
        limited |= down < Math.min(across, 1);
        double room = Math.min(across, down);
        if (room >= 1) {
          return scale;
        }
        scale *= Math.min(room, 0.997);
      }
      return scale;
    }

    private Canvas canvas(double scale) {
      if (last == null || last.scale != scale || last.column != column || last.below != below) {
        last = new Drawn(scale, column, below, drawn(scale));
      }
      return last.canvas;
    }

    /** All pictures side by side; the first one's top left corner is anywhere. */
    private Canvas drawn(double scale) {
      List<Canvas> frames = new ArrayList<>();
      Set<Integer> flat = new TreeSet<>();
      for (Picture picture : pictures) {
        Canvas canvas = new Canvas(styles, lettering);
        picture.scene.draw(canvas, scale);
        flat.addAll(canvas.leftOut());
        frames.add(canvas);
      }
      if (!flat.isEmpty()) {
        throw new Flat(flat);
      }
      if (lettered == null) {
        lettered = frames.stream().map(SaidFigure.Lettered::on).toList();
      }
      if (frames.size() == 1
          && pictures.get(0).title.isEmpty()
          && pictures.get(0).scene.remark().isEmpty()) {
        return frames.get(0);
      }
      Optional<String> note =
          pictures.stream().flatMap(picture -> picture.scene.remark().stream()).findFirst();
      Canvas all = new Canvas(styles, lettering);
      if (column) {
        stack(frames, all, note);
        return all;
      }
      double wide = 0;
      for (int i = 0; i < frames.size(); i++) {
        wide += cell(i, frames.get(i));
      }
      double gap = Math.max(6, (width - wide) / frames.size());
      double tallest = frames.stream().mapToDouble(c -> c.bounds().height()).max().orElse(0);
      double x = 0;
      int titles = 0;
      for (int i = 0; i < frames.size(); i++) {
        Box box = frames.get(i).bounds();
        double cell = cell(i, frames.get(i));
        double left = x + (cell - box.width()) / 2;
        all.add(
            frames.get(i), new Point(left - box.minX(), (tallest - box.height()) / 2 - box.minY()));
        Optional<String> title = pictures.get(i).title;
        if (title.isPresent()) {
          Point under = new Point(x + cell / 2, tallest + TITLE);
          double widest = cell + gap - BETWEEN_TITLES;
          titles = Math.max(titles, all.fixed(title.get(), under, widest));
        }
        x += cell + gap;
      }
      double under = titles == 0 ? TITLE : TITLE + NOTE + (titles - 1) * all.leading();
      Point last = new Point((x - gap) / 2, tallest + under);
      note.ifPresent(words -> note(words, last, all));
      return all;
    }

    /** How wide a picture is with its title, where that may be in the way. */
    private double cell(int number, Canvas frame) {
      double wide = frame.bounds().width();
      return isStackable()
          ? Math.max(wide, pictures.get(number).title.map(frame::width).orElse(0.0))
          : wide;
    }

    /** The pictures below each other, each with its title. */
    private void stack(List<Canvas> frames, Canvas all, Optional<String> note) {
      double y = 0;
      for (int i = 0; i < frames.size(); i++) {
        Box box = frames.get(i).bounds();
        all.add(frames.get(i), new Point(-box.centre().x(), y - box.minY()));
        y += box.height();
        Optional<String> title = pictures.get(i).title;
        if (title.isPresent()) {
          all.fixed(title.get(), new Point(0, y + UNDER));
          y += UNDER + NOTE;
        }
        y += below;
      }
      Point last = new Point(0, y - below + NOTE / 2);
      note.ifPresent(words -> note(words, last, all));
    }

    private void note(String words, Point first, Canvas all) {
      double down = 0;
      for (String line : words.split("\n")) {
        int lines = all.fixed(line, first.plus(new Point(0, down)), width - BETWEEN_TITLES);
        down += NOTE + (lines - 1) * all.leading();
      }
    }

    /** A scale that is too small for a dimension is no scale to try where a larger one did. */
    private Optional<Attempt> attempt(double scale, boolean isNeeded, double most) {
      try {
        return attempt(canvas(scale), most);
      } catch (Flat e) {
        if (isNeeded) {
          throw e;
        }
        return Optional.empty();
      }
    }

    private Optional<Attempt> attempt(Canvas canvas, double most) {
      if (canvas.isCrowded()) {
        return Optional.empty();
      }
      Box box = canvas.bounds();
      // Titles beside each other may need more room than there is.
      if (isStackable() && box.width() > width) {
        return Optional.empty();
      }
      List<List<Point>> anchors =
          canvas.wishes().stream().map(wish -> wish.anchors().get()).toList();
      Attempt best = null;
      for (double margin : MARGIN) {
        if (box.height() + 2 * margin > highest + 0.01) {
          limited = true;
          break;
        }
        Box frame =
            Box.at(
                box.centre().x() - width / 2,
                box.minY() - margin,
                width,
                box.height() + 2 * margin);
        if (!canvas.texts().stream().allMatch(frame::contains)) {
          break;
        }
        double left = (best == null ? most : Math.min(most, best.cost)) - DEARER * margin;
        Optional<List<PlacedLabel>> labels =
            new LabelPlacer(canvas, frame).place(anchors, left, dearest);
        if (labels.isPresent()) {
          double cost =
              labels.get().stream().mapToDouble(PlacedLabel::cost).average().orElse(0)
                  + DEARER * margin;
          if (best == null || cost < best.cost) {
            best = new Attempt(canvas, labels.get(), frame, cost);
          }
          if (isGoodEnough(cost)) {
            break;
          }
        }
      }
      return Optional.ofNullable(best);
    }

    private Drawing finished(Attempt attempt) {
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
}
