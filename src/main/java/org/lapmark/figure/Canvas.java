package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.FigureSource.Side;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * What is drawn of one picture, in millimetres on paper, and what its labels must keep clear of.
 * Labels are wished for here and placed when the whole figure is known.
 */
final class Canvas {
  /** A straight stretch of a drawn line. */
  record Stretch(Point from, Point to) {}

  /**
   * A label that is to be placed.
   *
   * @param text its text
   * @param ring whether it stands in a ring
   * @param anchors finds the points it may name, the best first
   * @param home where it may stand without a leader, or null
   */
  record Wish(String text, boolean ring, Supplier<List<Point>> anchors, Predicate<Point> home) {}

  static final String TEXT = "figure-text";
  private static final double FLATNESS = 0.05;

  /** Room between a shape and the first dimension beside it, and between dimensions. */
  private static final double FIRST = 4.5;

  private static final double NEXT = 5.5;
  private static final double TICK = 0.9;

  private final LetteringMeasure lettering;
  private final Style text;
  private final List<Item> items = new ArrayList<>();
  private final List<Stretch> lines = new ArrayList<>();
  private final List<Box> texts = new ArrayList<>();
  private final List<List<Point>> covered = new ArrayList<>();
  private final List<Wish> wishes = new ArrayList<>();
  private Box bounds;

  Canvas(StyleSheet styles, LetteringMeasure lettering) {
    this.lettering = lettering;
    this.text = styles.style(TEXT);
  }

  List<Item> items() {
    return items;
  }

  List<Stretch> lines() {
    return lines;
  }

  List<Box> texts() {
    return texts;
  }

  List<List<Point>> covered() {
    return covered;
  }

  List<Wish> wishes() {
    return wishes;
  }

  Box bounds() {
    return bounds == null ? Box.at(0, 0, 1, 1) : bounds;
  }

  private void grow(Box box) {
    bounds = bounds == null ? box : bounds.union(box);
  }

  /** Adds what another picture drew, moved. */
  void add(Canvas other, Point by) {
    items.add(
        new Item.Group(null, Affine.translation(by.x(), by.y()), null, List.copyOf(other.items)));
    other.lines.forEach(s -> lines.add(new Stretch(s.from.plus(by), s.to.plus(by))));
    other.texts.forEach(box -> texts.add(box.moved(by)));
    other.covered.forEach(
        polygon -> covered.add(polygon.stream().map(point -> point.plus(by)).toList()));
    other.wishes.forEach(
        wish ->
            wishes.add(
                new Wish(
                    wish.text,
                    wish.ring,
                    () -> wish.anchors.get().stream().map(anchor -> anchor.plus(by)).toList(),
                    wish.home == null ? null : point -> wish.home.test(point.minus(by)))));
    grow(other.bounds().moved(by));
  }

  /** Fills a shape with a material. */
  void cloth(Path outline, Texture texture, Side side, double angle) {
    items.addAll(texture.fill(outline, side, angle));
    covered.add(outline.flattened(FLATNESS));
    grow(outline.bounds());
  }

  /** Fills what of a shape lies within another one that is filled already. */
  void clothWithin(Path clip, Path outline, Texture texture, Side side, double angle) {
    items.add(new Item.Group(clip, Affine.IDENTITY, null, texture.fill(outline, side, angle)));
  }

  /** Draws a line that labels keep clear of. */
  void line(Path path, String role) {
    lines(List.of(path), role);
  }

  void lines(List<Path> paths, String role) {
    if (paths.isEmpty()) {
      return;
    }
    items.add(new Item.Shape(paths, role));
    for (Path path : paths) {
      obstacle(path);
      grow(path.bounds());
    }
  }

  /** Draws a line seen only within a shape. */
  void within(Path clip, List<Path> paths, String role) {
    if (!paths.isEmpty()) {
      items.add(new Item.Group(clip, Affine.IDENTITY, null, List.of(new Item.Shape(paths, role))));
    }
  }

  /** Fills or draws something that labels may stand on. */
  void shape(Path path, String role) {
    items.add(new Item.Shape(List.of(path), role));
    grow(path.bounds());
  }

  void obstacle(Path path) {
    List<Point> points = path.flattened(FLATNESS);
    for (int i = 1; i < points.size(); i++) {
      lines.add(new Stretch(points.get(i - 1), points.get(i)));
    }
  }

  void wish(String words, List<Point> anchors, Predicate<Point> home) {
    List<Point> found = List.copyOf(anchors);
    wish(words, () -> found, home);
  }

  void wish(String words, Supplier<List<Point>> anchors, Predicate<Point> home) {
    wishes.add(new Wish(words, false, anchors, home));
  }

  void ring(int number, Point anchor) {
    wishes.add(new Wish(Integer.toString(number), true, () -> List.of(anchor), null));
  }

  /** Lettering at a fixed place. */
  void fixed(String words, Point middle) {
    double width = lettering.width(words, text);
    Box box = Box.at(middle.x() - width / 2, middle.y() - lineHeight() / 2, width, lineHeight());
    items.add(
        new Item.Lettering(
            words, new Point(middle.x(), baseline(box.minY())), Item.Alignment.MIDDLE, 0, TEXT));
    texts.add(box);
    grow(box);
  }

  /** The height of a line of lettering, from above the capitals to below the descenders. */
  double lineHeight() {
    return 0.92 * text.fontSize() * 25.4 / 72;
  }

  /** From one baseline to the next. */
  double leading() {
    return 1.16 * text.fontSize() * 25.4 / 72;
  }

  /** The baseline of a line whose box begins at a height. */
  double baseline(double top) {
    return top + 0.70 * text.fontSize() * 25.4 / 72;
  }

  double width(String words) {
    return lettering.width(words, text);
  }

  /**
   * A dimension between two points, with witness lines.
   *
   * @param shape the box that it stands beside
   */
  void dimension(Point a, Point b, FigureSource.Beside beside, String words, Box shape) {
    boolean level = beside == FigureSource.Beside.ABOVE || beside == FigureSource.Beside.BELOW;
    double sign =
        beside == FigureSource.Beside.ABOVE || beside == FigureSource.Beside.LEFT ? -1 : 1;
    double width = width(words);
    for (int row = 0; ; row++) {
      double offset = FIRST + row * NEXT;
      double at =
          switch (beside) {
            case ABOVE -> shape.minY() - offset;
            case BELOW -> shape.maxY() + offset;
            case LEFT -> shape.minX() - offset;
            case RIGHT -> shape.maxX() + offset;
          };
      Point from = level ? new Point(a.x(), at) : new Point(at, a.y());
      Point to = level ? new Point(b.x(), at) : new Point(at, b.y());
      Box box;
      if (level) {
        // The words stand on the line, or hang below it on the lower side.
        double middle = (from.x() + to.x()) / 2;
        double top = sign < 0 ? at - 0.7 - lineHeight() : at + 0.7;
        box = Box.at(middle - width / 2, top, width, lineHeight());
      } else {
        double middle = (from.y() + to.y()) / 2;
        double left = sign < 0 ? at - 1.2 - width : at + 1.2;
        box = Box.at(left, middle - lineHeight() / 2, width, lineHeight());
      }
      Box line =
          new Box(
                  Math.min(from.x(), to.x()),
                  Math.min(from.y(), to.y()),
                  Math.max(from.x(), to.x()),
                  Math.max(from.y(), to.y()))
              .expanded(0.6);
      Box span = box.union(line);
      if (row < 4 && (hit(span) || covers(box.expanded(0.5)))) {
        continue;
      }
      Point out = level ? new Point(0, sign) : new Point(sign, 0);
      witness(a, from, out);
      witness(b, to, out);
      lines(List.of(Path.polyline(List.of(from, to))), "figure-dimension");
      tick(from);
      tick(to);
      items.add(
          new Item.Lettering(
              words, new Point(box.minX(), baseline(box.minY())), Item.Alignment.START, 0, TEXT));
      texts.add(box);
      grow(box);
      return;
    }
  }

  private boolean hit(Box box) {
    return texts.stream().anyMatch(other -> other.expanded(0.8).overlaps(box));
  }

  private boolean covers(Box box) {
    return lines.stream().anyMatch(s -> crosses(box, s.from, s.to));
  }

  private void witness(Point point, Point end, Point out) {
    if (point.distance(end) > 1.5) {
      Point start = point.plus(out.times(0.8));
      lines(List.of(Path.polyline(List.of(start, end.plus(out.times(1))))), "figure-dimension");
    }
  }

  private void tick(Point at) {
    items.add(
        new Item.Shape(
            List.of(
                Path.polyline(
                    List.of(
                        new Point(at.x() - TICK, at.y() + TICK),
                        new Point(at.x() + TICK, at.y() - TICK)))),
            "figure-tick"));
  }

  /** Whether a stretch has a point in a box. */
  static boolean crosses(Box box, Point a, Point b) {
    double from = 0;
    double to = 1;
    double[][] sides = {
      {b.x() - a.x(), box.minX() - a.x(), box.maxX() - a.x()},
      {b.y() - a.y(), box.minY() - a.y(), box.maxY() - a.y()}
    };
    for (double[] side : sides) {
      if (side[0] == 0) {
        if (side[1] > 0 || side[2] < 0) {
          return false;
        }
      } else {
        double near = side[1] / side[0];
        double far = side[2] / side[0];
        from = Math.max(from, Math.min(near, far));
        to = Math.min(to, Math.max(near, far));
      }
    }
    return from <= to;
  }
}
