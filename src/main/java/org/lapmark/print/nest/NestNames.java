package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.LineObstacles;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.CheckLine;
import org.lapmark.print.sheet.SheetSubject;

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

  /** How far words keep from the lines on which tiles meet, in millimetres. */
  private static final double FROM_JOIN = 1.2;

  /** How far they may stand out where nothing is joined: pieces lie close to the edge there. */
  private static final double BEYOND = 0.5;

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

  /** How far names keep from corners and from the ends of a stretch, in millimetres. */
  private static final double FROM_CORNER = 3;

  private static final double FROM_END = 1;

  /** The cosine of the least bend that is a corner. */
  private static final double BEND = 0.985;

  /** Shorter stretches, in millimetres, are left to the names around them. */
  private static final double SHORT = 8;

  /** The reach of the marks across joins, which names avoid where they can. */
  private static final double JOIN_MARKS = 8;

  /** How near another size's line makes a notch need a name, in millimetres. */
  private static final double NOTCH_NEAR = 2.5;

  private static final double NOTCH_PAIR = 8;

  private static final List<String> ROLES = List.of("size-name", "size-name-7", "size-name-6");
  private static final String HAIR = "size-hair";

  private final Typesetting setting;
  private final SheetLayout layout;
  private final String prefix;
  private final double often;
  private final int sizes;
  private final Function<List<Integer>, String> phrase;
  private final BiFunction<List<Integer>, String, Layering> layering;
  private final LineObstacles obstacles = new LineObstacles();
  private final Map<Cell, Box> rooms = new LinkedHashMap<>();
  private final Map<Integer, List<double[]>> gaps = new LinkedHashMap<>();
  private final Map<Integer, List<Point>> flat = new LinkedHashMap<>();
  private final Map<Integer, List<Double>> corners = new LinkedHashMap<>();
  private final List<SheetSubject.LineName> items = new ArrayList<>();

  /**
   * A stretch of cutting line.
   *
   * @param number what tells it from all others on the sheet, counted from 0
   * @param owners the sizes it belongs to
   * @param path where it runs on the sheet
   */
  record Cutting(int number, List<Integer> owners, Path path) {}

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

  private record Window(Cutting line, Cell cell, double from, double to) {}

  NestNames(
      Typesetting setting,
      List<String> names,
      SheetLayout layout,
      boolean projected,
      Function<List<Integer>, String> phrase,
      BiFunction<List<Integer>, String, Layering> layering) {
    this.setting = setting;
    this.layout = layout;
    this.prefix = projected ? "projector-" : "";
    this.often = projected ? OFTEN_PROJECTED : OFTEN;
    this.sizes = names.size();
    this.phrase = phrase;
    this.layering = layering;
    layout.cells().forEach(cell -> rooms.put(cell, room(cell, layout.joins())));
  }

  List<SheetSubject.LineName> items() {
    return List.copyOf(items);
  }

  void place(List<Nested> pieces, List<CheckLine> checks) {
    obstacles.add(Path.rectangle(layout.square()), LineObstacles.NOTHING);
    layout.endSquare().ifPresent(box -> obstacles.add(Path.rectangle(box), LineObstacles.NOTHING));
    checks.forEach(check -> obstacles.add(check.line(), LineObstacles.NOTHING));
    List<List<Window>> windows = new ArrayList<>();
    for (Nested piece : pieces) {
      for (PieceArt.Stroke stroke : piece.others()) {
        if (stroke.layering().within().isEmpty()) {
          obstacles.add(stroke.path(), LineObstacles.NOTHING);
        }
      }
      List<Window> own = new ArrayList<>();
      for (Cutting line : piece.cutting()) {
        obstacles.add(line.path(), line.number());
        flat.put(line.number(), line.path().flattened(0.02));
        gaps.put(line.number(), new ArrayList<>());
        corners.put(line.number(), corners(line.path()));
        if (line.owners().size() < sizes) {
          own.addAll(windows(line));
        }
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
      marks(pieces.get(i));
    }
  }

  /** A line without its gaps; dashes begin anew at each name. */
  List<Path> parts(Cutting line) {
    List<double[]> cuts = new ArrayList<>(gaps.get(line.number()));
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
  private List<Window> windows(Cutting line) {
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
            windows.add(new Window(line, cell, from + k * step, from + (k + 1) * step));
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
      if (cell.core().contains(point)) {
        return cell;
      }
    }
    return null;
  }

  private Style style(String role) {
    return setting.style(prefix + role);
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
      double width = setting.lettering().width(text, style) + 2 * PAD;
      LineObstacles.Slot best = null;
      double bestAt = 0;
      double bestScore = Double.NEGATIVE_INFINITY;
      double middle = (window.from() + window.to()) / 2;
      for (double at = window.from() + width / 2; at <= window.to() - width / 2; at += STEP) {
        double score = AMPLE - 0.02 * Math.abs(at - middle);
        if (score <= bestScore || !amidst(window.line(), at - width / 2, at + width / 2)) {
          continue;
        }
        LineObstacles.Slot slot = slot(window, at, width, text, style, true);
        if (slot == null) {
          continue;
        }
        double clear = clearance(slot, window, at);
        if (!window.cell().core().expanded(-JOIN_MARKS).contains(slot.centre())) {
          score -= 1;
        }
        if (clear >= LEAST && clear - AMPLE + score > bestScore) {
          best = slot;
          bestAt = at;
          bestScore = clear - AMPLE + score;
        }
      }
      if (best != null) {
        gaps.get(window.line().number()).add(new double[] {bestAt - width / 2, bestAt + width / 2});
        put(window.cell(), text, best, role, layering.apply(window.line().owners(), ""));
        return true;
      }
    }
    return false;
  }

  private static List<Double> corners(Path path) {
    List<Double> corners = new ArrayList<>();
    List<Curve> curves = path.curves();
    double length = curves.get(0).length();
    for (int i = 1; i < curves.size(); i++) {
      if (curves.get(i - 1).tangent(1).dot(curves.get(i).tangent(0)) < BEND) {
        corners.add(length);
      }
      length += curves.get(i).length();
    }
    if (path.isClosed()
        && curves.get(curves.size() - 1).tangent(1).dot(curves.get(0).tangent(0)) < BEND) {
      corners.add(0.0);
      corners.add(length);
    }
    return corners;
  }

  /** Whether a gap hides neither a corner nor an end of the line. */
  private boolean amidst(Cutting line, double from, double to) {
    return from >= FROM_END
        && to <= line.path().length() - FROM_END
        && corners.get(line.number()).stream()
            .noneMatch(corner -> corner > from - FROM_CORNER && corner < to + FROM_CORNER);
  }

  private double clearance(LineObstacles.Slot slot, Window window, double at) {
    Path path = window.line().path();
    return obstacles.clearance(
        slot, AMPLE, window.line().number(), at, path.isClosed() ? path.length() : 0);
  }

  private LineObstacles.Slot slot(
      Window window, double at, double width, String text, Style style, boolean whole) {
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
    return !whole || inside(slot, window.cell()) ? slot : null;
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

  /** Writes a name beside a line that runs too close to the paper's edge, on its inside at best. */
  private void writeBeside(Window window) {
    String text = phrase.apply(window.line().owners());
    String role = ROLES.get(1);
    Style style = style(role);
    double width = setting.lettering().width(text, style);
    double middle = (window.from() + window.to()) / 2;
    double reach = (window.to() - window.from() - width) / 2;
    for (double away = 0; away <= reach; away += STEP) {
      for (double at :
          away == 0 ? new double[] {middle} : new double[] {middle - away, middle + away}) {
        LineObstacles.Slot on = slot(window, at, width, text, style, false);
        if (on == null) {
          continue;
        }
        for (int side : new int[] {1, -1}) {
          // Cutting lines run clockwise, so that their right is the inside.
          Point inwards = window.line().path().tangentAtLength(at).quarterTurn();
          LineObstacles.Slot slot =
              new LineObstacles.Slot(
                  on.centre().plus(inwards.times(side * (on.halfHeight() + 0.7))),
                  on.along(),
                  on.halfLength(),
                  on.halfHeight());
          if (inside(slot, window.cell()) && free(slot) >= LEAST) {
            put(window.cell(), text, slot, role, layering.apply(window.line().owners(), ""));
            return;
          }
        }
      }
    }
  }

  /** Whether words keep from the joins of a tile, and don't stand out of its other sides. */
  private boolean inside(LineObstacles.Slot slot, Cell cell) {
    return slot.corners().stream().allMatch(rooms.get(cell)::contains);
  }

  private static Box room(Cell cell, List<Join> joins) {
    double left = BEYOND;
    double top = BEYOND;
    double right = BEYOND;
    double bottom = BEYOND;
    for (Join join : joins) {
      if (join.first() == cell) {
        right = join.sideways() ? -FROM_JOIN : right;
        bottom = join.sideways() ? bottom : -FROM_JOIN;
      } else if (join.second() == cell) {
        left = join.sideways() ? -FROM_JOIN : left;
        top = join.sideways() ? top : -FROM_JOIN;
      }
    }
    Box core = cell.core();
    return new Box(
        core.minX() - left, core.minY() - top, core.maxX() + right, core.maxY() + bottom);
  }

  /** A line crossed by a hairline. */
  private record Crossing(double offset, Cutting line) {}

  private record Told(Point point, List<Integer> owners) {}

  private void hairlines(List<Window> left, Nested piece) {
    List<Told> told = new ArrayList<>();
    List<Window> longestFirst = new ArrayList<>(left);
    longestFirst.sort(
        Comparator.<Window>comparingDouble(window -> window.from() - window.to())
            .thenComparingInt(window -> window.line().number()));
    for (Window window : longestFirst) {
      double length = window.to() - window.from();
      Point centre = window.line().path().atLength((window.from() + window.to()) / 2);
      boolean said =
          told.stream()
              .anyMatch(
                  one ->
                      one.point().distance(centre) < HAIR_SPEAKS
                          && one.owners().containsAll(window.line().owners()));
      if (said || length < SHORT) {
        continue;
      }
      Told made = null;
      for (double away = 0; away <= length / 2 && made == null; away += 1.5) {
        for (double sign : away == 0 ? new double[] {1} : new double[] {1, -1}) {
          for (boolean outside : new boolean[] {true, false}) {
            if (made == null) {
              double at = (window.from() + window.to()) / 2 + sign * away;
              made = hairline(window, piece, at, outside);
            }
          }
        }
      }
      if (made != null) {
        told.add(made);
      } else {
        writeBeside(window);
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
    String role = ROLES.get(1);
    Style style = style(role);
    double space = setting.lettering().width("n", style);
    List<Double> widths =
        bunch.stream()
            .map(one -> setting.lettering().width(phrase.apply(one.line().owners()), style))
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
    if (!inside(words, window.cell()) || free(words) < LEAST || free(hair) < 0.2) {
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
    return new Told(point, owners);
  }

  private double free(LineObstacles.Slot slot) {
    return obstacles.clearance(slot, AMPLE, LineObstacles.NOTHING, 0, 0);
  }

  /** Where a line across meets the piece's cutting lines, from the inside outwards. */
  private List<Crossing> crossings(Nested piece, Point point, Point across) {
    List<Crossing> crossings = new ArrayList<>();
    Box near = new Box(point.x(), point.y(), point.x(), point.y()).expanded(REACH);
    for (Cutting line : piece.cutting()) {
      List<Point> points = flat.get(line.number());
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
  private void marks(Nested piece) {
    List<Mark> named = new ArrayList<>();
    for (Mark mark : piece.marks()) {
      boolean notch = mark.role().startsWith("notch");
      Point centre = mark.path().bounds().centre();
      boolean known =
          named.stream()
              .anyMatch(
                  other ->
                      other.owners().equals(mark.owners())
                          && other.path().bounds().centre().distance(centre)
                              < (notch ? NOTCH_PAIR : 2));
      if (!known && !mark.role().startsWith("on-fold") && !(notch && plain(mark, piece))) {
        named.add(mark);
        beside(mark, notch);
      }
    }
  }

  /** Whether a notch stands on a line of its own sizes, with no other near. */
  private static boolean plain(Mark notch, Nested piece) {
    Point foot = notch.path().start();
    return piece.cutting().stream()
        .filter(line -> line.path().bounds().expanded(NOTCH_NEAR).contains(foot))
        .filter(line -> line.path().distance(foot) <= NOTCH_NEAR)
        .allMatch(line -> line.owners().equals(notch.owners()));
  }

  private void beside(Mark mark, boolean notch) {
    String text = phrase.apply(mark.owners());
    String role = ROLES.get(notch ? 2 : 1);
    double halfLength = setting.lettering().width(text, style(role)) / 2;
    double halfHeight = halfHeight(text, style(role));
    Box bounds = mark.path().bounds();
    Point middle = mark.path().atLength(mark.path().length() / 2);
    Point tangent = mark.path().tangentAtLength(mark.path().length() / 2);
    Point normal = tangent.quarterTurn();
    Point end = mark.path().end();
    double beside = bounds.width() / 2 + halfLength + 0.9;
    double above = bounds.height() / 2 + halfHeight + 0.9;
    List<Point> places = new ArrayList<>();
    if (notch) {
      places.add(end.plus(tangent.times(reach(tangent, halfLength, halfHeight))));
    }
    places.add(middle.plus(normal.times(reach(normal, halfLength, halfHeight))));
    places.add(middle.minus(normal.times(reach(normal, halfLength, halfHeight))));
    places.add(bounds.centre().plus(new Point(beside, 0)));
    places.add(bounds.centre().minus(new Point(beside, 0)));
    places.add(bounds.centre().minus(new Point(0, above)));
    places.add(bounds.centre().plus(new Point(0, above)));
    for (Point place : places) {
      Cell cell = cell(place);
      LineObstacles.Slot slot =
          new LineObstacles.Slot(place, new Point(1, 0), halfLength, halfHeight);
      if (cell != null && inside(slot, cell) && free(slot) >= LEAST) {
        put(cell, text, slot, role, layering.apply(mark.owners(), ""));
        return;
      }
    }
  }

  /** How far an upright word's middle has to be off a line that it is pushed away from. */
  private static double reach(Point away, double halfLength, double halfHeight) {
    return Math.min(
            Math.abs(away.x()) < 1e-9 ? 1e9 : halfLength / Math.abs(away.x()),
            Math.abs(away.y()) < 1e-9 ? 1e9 : halfHeight / Math.abs(away.y()))
        + 0.9;
  }
}
