package org.lapmark.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Writes the sizes' names along their cutting lines, in gaps of the lines, never upside down, and
 * never across the line on which tiles meet. Where lines run too close for that, a hairline across
 * them ends in their names, in the order in which it crosses them. Used for one sheet.
 */
final class NestNames {
  /** A line of a page is named about once in so many millimetres. */
  private static final double OFTEN = 55;

  private static final double OFTEN_PROJECTED = 250;

  /** The line is interrupted so far before and after a name, in millimetres. */
  private static final double PAD = 0.7;

  /** The least paper between a name and any other line, in millimetres. */
  private static final double LEAST = 0.4;

  /** More paper than this around a name is no better. */
  private static final double AMPLE = 2.5;

  private static final double FROM_JOIN = 1.2;
  private static final double STEP = 1;

  /** Half the height of capitals and figures, in ems. */
  private static final double HALF_CAPITAL = 0.33;

  private static final double DESCENDER = 0.2;

  /** How far a line may curve away under a name, in ems. */
  private static final double SAG = 0.14;

  /** A hairline looks so far for neighbours, and takes those that lie so close to each other. */
  private static final double REACH = 9;

  private static final double CLOSE = 2.6;
  private static final double HAIR_INSIDE = 0.8;
  private static final double HAIR_OUTSIDE = 1.6;
  private static final double HAIR_GAP = 0.6;

  /** A hairline speaks for its lines so far to both sides. */
  private static final double HAIR_SPEAKS = 30;

  private static final List<String> ROLES = List.of("nest-name", "nest-name-7", "nest-name-6");
  private static final String HAIR = "nest-hair";

  private final SheetPlanner planner;
  private final SheetLayout layout;
  private final String prefix;
  private final double often;
  private final int sizes;
  private final Function<List<Integer>, String> phrase;
  private final BiFunction<List<Integer>, String, Layering> layering;
  private final LineObstacles obstacles = new LineObstacles();
  private final Map<Cutting, List<double[]>> gaps = new IdentityHashMap<>();
  private final Map<Cutting, List<Point>> flat = new IdentityHashMap<>();
  private final List<SheetSubject.LineName> items = new ArrayList<>();
  private int nameless;

  /**
   * A stretch of cutting line.
   *
   * @param owners the sizes it belongs to
   * @param path where it runs on the sheet
   */
  record Cutting(List<Integer> owners, Path path) {}

  /**
   * A mark that isn't the same in all sizes.
   *
   * @param owners the sizes it belongs to
   * @param path where it runs on the sheet
   * @param role its role
   */
  record Mark(List<Integer> owners, Path path, String role) {}

  /**
   * What is drawn of a nested piece.
   *
   * @param others all but cutting lines
   * @param marks those of them that need a name
   * @param cutting the cutting lines
   */
  record Nested(List<PieceArt.Stroke> others, List<Mark> marks, List<Cutting> cutting) {}

  private record Window(Cutting line, int number, Cell cell, double from, double to) {}

  NestNames(
      SheetPlanner planner,
      List<String> names,
      SheetLayout layout,
      boolean projected,
      Function<List<Integer>, String> phrase,
      BiFunction<List<Integer>, String, Layering> layering) {
    this.planner = planner;
    this.layout = layout;
    this.prefix = projected ? "projector-" : "";
    this.often = projected ? OFTEN_PROJECTED : OFTEN;
    this.sizes = names.size();
    this.phrase = phrase;
    this.layering = layering;
  }

  List<SheetSubject.LineName> items() {
    return List.copyOf(items);
  }

  /** How many stretches were left without any name. */
  int nameless() {
    return nameless;
  }

  void place(List<Nested> pieces) {
    int number = 0;
    obstacles.add(Path.rectangle(layout.square()), LineObstacles.NOTHING);
    layout.endSquare().ifPresent(box -> obstacles.add(Path.rectangle(box), LineObstacles.NOTHING));
    List<List<Window>> windows = new ArrayList<>();
    for (Nested piece : pieces) {
      for (PieceArt.Stroke stroke : piece.others()) {
        if (stroke.layering().within().isEmpty()) {
          obstacles.add(stroke.path(), LineObstacles.NOTHING);
        }
      }
      List<Window> own = new ArrayList<>();
      for (Cutting line : piece.cutting()) {
        obstacles.add(line.path(), number);
        flat.put(line, line.path().flattened(0.02));
        gaps.put(line, new ArrayList<>());
        if (line.owners().size() < sizes) {
          own.addAll(windows(line, number));
        }
        number++;
      }
      windows.add(own);
    }
    for (int i = 0; i < pieces.size(); i++) {
      List<Window> left = new ArrayList<>();
      for (Window window : windows.get(i)) {
        if (!written(window)) {
          left.add(window);
        }
      }
      hairlines(left, pieces.get(i));
      marks(pieces.get(i).marks());
    }
  }

  /** A line without its gaps; dashes begin anew at each name. */
  List<Path> parts(Cutting line) {
    List<double[]> cuts = new ArrayList<>(gaps.get(line));
    if (cuts.isEmpty()) {
      return List.of(line.path());
    }
    cuts.sort(Comparator.comparingDouble(cut -> cut[0]));
    List<Path> parts = new ArrayList<>();
    double from = 0;
    for (double[] cut : cuts) {
      if (cut[0] > from + 1e-6) {
        parts.add(line.path().part(from, cut[0]));
      }
      from = cut[1];
    }
    double length = line.path().length();
    if (from < length - 1e-6) {
      Path last = line.path().part(from, length);
      boolean around = line.path().isClosed() && cuts.get(0)[0] > 1e-6;
      if (around) {
        parts.set(0, last.then(parts.get(0)));
      } else {
        parts.add(last);
      }
    }
    return parts;
  }

  /** The stretches of a line, each on one tile, that are to have a name each. */
  private List<Window> windows(Cutting line, int number) {
    List<Window> windows = new ArrayList<>();
    double length = line.path().length();
    int steps = (int) Math.max(1, Math.ceil(length / STEP));
    Cell cell = null;
    double from = 0;
    for (int i = 0; i <= steps + 1; i++) {
      double at = Math.min(length, length * i / steps);
      Cell here = i > steps ? null : cell(line.path().atLength(at));
      if (here != cell) {
        double to = i > steps ? length : length * (i - 1) / steps;
        if (cell != null && to > from) {
          int count = (int) Math.max(1, Math.round((to - from) / often));
          for (int k = 0; k < count; k++) {
            double step = (to - from) / count;
            windows.add(new Window(line, number, cell, from + k * step, from + (k + 1) * step));
          }
        }
        cell = here;
        from = at;
      }
    }
    return windows;
  }

  private Cell cell(Point point) {
    for (Cell cell : layout.cells()) {
      if (cell.core().expanded(-FROM_JOIN).contains(point)) {
        return cell;
      }
    }
    return null;
  }

  private Style style(String role) {
    return planner.styles().style(prefix + role);
  }

  private static double em(Style style) {
    return style.fontSize() * 25.4 / 72;
  }

  private static double halfHeight(String text, Style style) {
    boolean deep = text.chars().anyMatch(c -> "gjpqy()[],;/Q".indexOf(c) >= 0);
    return em(style) * (HALF_CAPITAL + (deep ? DESCENDER : 0.03));
  }

  /** Writes a name into a stretch of line; false where there is no room. */
  private boolean written(Window window) {
    String text = phrase.apply(window.line().owners());
    for (String role : ROLES) {
      Style style = style(role);
      double width = planner.lettering().width(text, style) + 2 * PAD;
      LineObstacles.Slot best = null;
      double bestAt = 0;
      double bestScore = Double.NEGATIVE_INFINITY;
      double middle = (window.from() + window.to()) / 2;
      for (double at = window.from() + width / 2; at <= window.to() - width / 2; at += STEP) {
        double score = AMPLE - 0.02 * Math.abs(at - middle);
        if (score <= bestScore) {
          continue;
        }
        LineObstacles.Slot slot = slot(window, at, width, text, style);
        if (slot == null) {
          continue;
        }
        double clear = clearance(slot, window, at);
        if (clear >= LEAST && clear - AMPLE + score > bestScore) {
          best = slot;
          bestAt = at;
          bestScore = clear - AMPLE + score;
        }
      }
      if (best != null) {
        gaps.get(window.line()).add(new double[] {bestAt - width / 2, bestAt + width / 2});
        put(window.cell(), text, best, role, layering.apply(window.line().owners(), ""));
        return true;
      }
    }
    return false;
  }

  private double clearance(LineObstacles.Slot slot, Window window, double at) {
    Path path = window.line().path();
    return obstacles.clearance(
        slot, AMPLE, window.number(), at, path.isClosed() ? path.length() : 0);
  }

  private static LineObstacles.Slot slot(
      Window window, double at, double width, String text, Style style) {
    Path path = window.line().path();
    Point first = path.atLength(at - width / 2);
    Point last = path.atLength(at + width / 2);
    Point middle = path.atLength(at);
    Point chord = first.towards(last, 0.5);
    if (first.distance(last) < 0.9 * width || chord.distance(middle) > SAG * em(style)) {
      return null;
    }
    LineObstacles.Slot slot =
        new LineObstacles.Slot(
            chord.towards(middle, 0.5),
            upright(last.minus(first).unit()),
            width / 2,
            halfHeight(text, style));
    Box core = window.cell().core().expanded(-FROM_JOIN);
    return slot.corners().stream().allMatch(core::contains) ? slot : null;
  }

  /** The direction, or its opposite, in which words aren't upside down; upwards if steep. */
  private static Point upright(Point along) {
    boolean steep = Math.abs(along.x()) < 0.09;
    boolean turn = steep ? along.y() > 0 : along.x() < 0;
    return turn ? along.times(-1) : along;
  }

  private void put(Cell cell, String text, LineObstacles.Slot slot, String role, Layering layers) {
    Point along = slot.along();
    Point anchor = slot.centre().plus(along.quarterTurn().times(em(style(role)) * HALF_CAPITAL));
    double angle = StrictMath.toDegrees(StrictMath.atan2(along.y(), along.x()));
    items.add(
        new SheetSubject.LineName(
            cell,
            new Item.Lettering(text, anchor, Alignment.MIDDLE, angle, role),
            slot.box(),
            layers));
    obstacles.add(slot);
  }

  /** A line crossed by a hairline. */
  private record Crossing(double offset, Cutting line) {}

  private record Told(Point point, List<Cutting> lines) {}

  private void hairlines(List<Window> left, Nested piece) {
    List<Told> told = new ArrayList<>();
    for (Window window : left) {
      double middle = (window.from() + window.to()) / 2;
      Point centre = window.line().path().atLength(middle);
      boolean said =
          told.stream()
              .anyMatch(
                  one ->
                      one.point().distance(centre) < HAIR_SPEAKS
                          && one.lines().stream().anyMatch(line -> line == window.line()));
      if (said) {
        continue;
      }
      Told made = null;
      double half = (window.to() - window.from()) / 2;
      for (double away = 0; away <= half && made == null; away += 1.5) {
        for (double sign : away == 0 ? new double[] {1} : new double[] {1, -1}) {
          for (boolean outside : new boolean[] {true, false}) {
            if (made == null) {
              made = hairline(window, piece, middle + sign * away, outside);
            }
          }
        }
      }
      if (made != null) {
        told.add(made);
      } else {
        nameless++;
      }
    }
  }

  private Told hairline(Window window, Nested piece, double at, boolean outside) {
    Point point = window.line().path().atLength(at);
    Point tangent = window.line().path().tangentAtLength(at);
    // Cutting lines run clockwise, so that their left is the outside.
    Point across = tangent.quarterTurn().times(outside ? -1 : 1);
    List<Crossing> bunch = bunch(crossings(piece, point, across));
    if (bunch.isEmpty()) {
      return null;
    }
    double last = bunch.get(bunch.size() - 1).offset();
    Predicate<Cutting> crossed =
        line -> bunch.stream().anyMatch(crossing -> crossing.line() == line);
    String role = ROLES.get(1);
    Style style = style(role);
    double space = planner.lettering().width("n", style);
    List<Double> widths =
        bunch.stream()
            .map(one -> planner.lettering().width(phrase.apply(one.line().owners()), style))
            .toList();
    double width =
        widths.stream().mapToDouble(Double::doubleValue).sum() + space * (bunch.size() - 1);
    double start = last + HAIR_OUTSIDE + HAIR_GAP;
    String all =
        String.join("", bunch.stream().map(one -> phrase.apply(one.line().owners())).toList());
    Point along = upright(across);
    LineObstacles.Slot words =
        new LineObstacles.Slot(
            point.plus(across.times(start + width / 2)), along, width / 2, halfHeight(all, style));
    LineObstacles.Slot hair =
        new LineObstacles.Slot(
            point.plus(across.times(last + 0.6 + (HAIR_OUTSIDE - 0.6) / 2)),
            along,
            (HAIR_OUTSIDE - 0.6) / 2,
            0.2);
    Box core = window.cell().core().expanded(-FROM_JOIN);
    if (!words.corners().stream().allMatch(core::contains)
        || free(words) < LEAST
        || free(hair) < 0.2) {
      return null;
    }
    Path line =
        new Path(
            List.of(
                new Line(
                    point.plus(across.times(bunch.get(0).offset() - HAIR_INSIDE)),
                    point.plus(across.times(last + HAIR_OUTSIDE)))));
    List<Integer> owners =
        bunch.stream().flatMap(one -> one.line().owners().stream()).distinct().sorted().toList();
    items.add(
        new SheetSubject.LineName(
            window.cell(),
            new Item.Shape(List.of(line), HAIR),
            line.bounds(),
            layering.apply(owners, "")));
    double place = start;
    for (int i = 0; i < bunch.size(); i++) {
      List<Integer> own = bunch.get(i).line().owners();
      put(
          window.cell(),
          phrase.apply(own),
          new LineObstacles.Slot(
              point.plus(across.times(place + widths.get(i) / 2)),
              along,
              widths.get(i) / 2,
              words.halfHeight()),
          role,
          layering.apply(own, ""));
      place += widths.get(i) + space;
    }
    return new Told(point, piece.cutting().stream().filter(crossed).toList());
  }

  private double free(LineObstacles.Slot slot) {
    return obstacles.clearance(slot, AMPLE, LineObstacles.NOTHING, 0, 0);
  }

  /** Where a line across meets the piece's cutting lines, from the inside outwards. */
  private List<Crossing> crossings(Nested piece, Point point, Point across) {
    List<Crossing> crossings = new ArrayList<>();
    Box near = new Box(point.x(), point.y(), point.x(), point.y()).expanded(REACH);
    for (Cutting line : piece.cutting()) {
      List<Point> points = flat.get(line);
      for (int i = 1; i < points.size(); i++) {
        Point a = points.get(i - 1).minus(point);
        Point b = points.get(i).minus(point);
        double sideA = across.cross(a);
        double sideB = across.cross(b);
        if ((sideA < 0) == (sideB < 0)) {
          continue;
        }
        Point hit = a.towards(b, sideA / (sideA - sideB));
        double offset = hit.dot(across);
        if (Math.abs(offset) <= REACH && near.contains(hit.plus(point))) {
          crossings.add(new Crossing(offset, line));
        }
      }
    }
    crossings.sort(Comparator.comparingDouble(Crossing::offset));
    return crossings;
  }

  /** The crossings around the middle that lie close to each other; none if there are no two. */
  private static List<Crossing> bunch(List<Crossing> all) {
    int own = -1;
    for (int i = 0; i < all.size(); i++) {
      if (own < 0 || Math.abs(all.get(i).offset()) < Math.abs(all.get(own).offset())) {
        own = i;
      }
    }
    int from = own;
    int to = own;
    while (from > 0 && all.get(from).offset() - all.get(from - 1).offset() <= CLOSE) {
      from--;
    }
    while (to >= 0
        && to + 1 < all.size()
        && all.get(to + 1).offset() - all.get(to).offset() <= CLOSE) {
      to++;
    }
    return own < 0 || to == from ? List.of() : all.subList(from, to + 1);
  }

  /** Names marks that lie elsewhere in other sizes. */
  private void marks(List<Mark> marks) {
    List<Mark> named = new ArrayList<>();
    for (Mark mark : marks) {
      Box bounds = mark.path().bounds();
      Point centre = bounds.centre();
      boolean known =
          named.stream()
              .anyMatch(
                  other ->
                      other.owners().equals(mark.owners())
                          && other.path().bounds().centre().distance(centre) < 2);
      if (known || mark.role().startsWith("notch") || mark.role().startsWith("on-fold")) {
        continue;
      }
      named.add(mark);
      String text = phrase.apply(mark.owners());
      String role = ROLES.get(1);
      double halfLength = planner.lettering().width(text, style(role)) / 2;
      double halfHeight = halfHeight(text, style(role));
      Point path = mark.path().atLength(mark.path().length() / 2);
      Point normal = mark.path().tangentAtLength(mark.path().length() / 2).quarterTurn();
      double off = halfLength * Math.abs(normal.x()) + halfHeight * Math.abs(normal.y()) + 0.9;
      double beside = bounds.width() / 2 + halfLength + 0.9;
      double above = bounds.height() / 2 + halfHeight + 0.9;
      for (Point place :
          List.of(
              path.plus(normal.times(off)),
              path.minus(normal.times(off)),
              centre.plus(new Point(beside, 0)),
              centre.minus(new Point(beside, 0)),
              centre.minus(new Point(0, above)),
              centre.plus(new Point(0, above)))) {
        Cell cell = cell(place);
        LineObstacles.Slot slot =
            new LineObstacles.Slot(place, new Point(1, 0), halfLength, halfHeight);
        if (cell != null
            && slot.corners().stream().allMatch(cell.core().expanded(-FROM_JOIN)::contains)
            && free(slot) >= LEAST) {
          put(cell, text, slot, role, layering.apply(mark.owners(), ""));
          break;
        }
      }
    }
  }
}
