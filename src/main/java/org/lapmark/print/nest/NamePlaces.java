package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.LineObstacles;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.SheetSubject;

/**
 * The names of sizes that are written so far, and where there is room for more: never upside down,
 * off other ink, and never across the line on which tiles meet.
 */
final class NamePlaces {
  /** The least paper between a name and any other line, in millimetres. */
  static final double LEAST = 0.4;

  /** More paper than this around a name is no better. */
  static final double AMPLE = 2.5;

  /** How far places are tried one after the other, in millimetres. */
  static final double STEP = 1;

  /** The roles of names, the largest first. */
  static final List<String> ROLES = List.of("size-name", "size-name-7", "size-name-6");

  /** How far words keep from the lines on which tiles meet, in millimetres. */
  private static final double FROM_JOIN = 1.2;

  /** How far they may stand out where nothing is joined: pieces lie close to the edge there. */
  private static final double BEYOND = 0.5;

  /** Half the height of capitals and figures, in ems. */
  private static final double HALF_CAPITAL = 0.33;

  private static final double DESCENDER = 0.2;

  private final Typesetting setting;
  private final SheetLayout layout;
  private final String prefix;
  private final Function<List<Integer>, String> phrase;
  private final BiFunction<List<Integer>, String, Layering> layering;
  private final LineObstacles obstacles = new LineObstacles();
  private final Map<Cell, Box> rooms = new LinkedHashMap<>();
  private final List<SheetSubject.LineName> names = new ArrayList<>();

  NamePlaces(
      Typesetting setting,
      SheetLayout layout,
      boolean projected,
      Function<List<Integer>, String> phrase,
      BiFunction<List<Integer>, String, Layering> layering) {
    this.setting = setting;
    this.layout = layout;
    this.prefix = projected ? "projector-" : "";
    this.phrase = phrase;
    this.layering = layering;
    layout.cells().forEach(cell -> rooms.put(cell, room(cell, layout.joins())));
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

  List<SheetSubject.LineName> names() {
    return List.copyOf(names);
  }

  /** Keeps names off a line without a number. */
  void keepOff(Path line) {
    obstacles.add(line, LineObstacles.NOTHING);
  }

  void keepOff(NestedLines.Cutting line) {
    obstacles.add(line.path(), line.number());
  }

  /** What some sizes are called together. */
  String phrase(List<Integer> owners) {
    return phrase.apply(owners);
  }

  private Style style(String role) {
    return setting.style(prefix + role);
  }

  double width(String text, String role) {
    return setting.width(text, prefix + role);
  }

  /** The size of letters, in millimetres. */
  double em(String role) {
    return style(role).fontSize() * 25.4 / 72;
  }

  double halfHeight(String text, String role) {
    boolean deep = text.chars().anyMatch(c -> "gjpqy()[],;/Q".indexOf(c) >= 0);
    return em(role) * (HALF_CAPITAL + (deep ? DESCENDER : 0.03));
  }

  /** The tile whose own a point is, or null. */
  Cell cell(Point point) {
    for (Cell cell : layout.cells()) {
      if (cell.core().contains(point)) {
        return cell;
      }
    }
    return null;
  }

  /** Whether words keep from the joins of a tile, and don't stand out of its other sides. */
  boolean isInside(LineObstacles.Slot slot, Cell cell) {
    return slot.corners().stream().allMatch(rooms.get(cell)::contains);
  }

  /** How much paper is free around words, in millimetres, {@link #AMPLE} at most. */
  double free(LineObstacles.Slot slot) {
    return obstacles.clearance(slot, AMPLE, LineObstacles.NOTHING, 0, 0);
  }

  /** The same for words in a gap of a line. */
  double free(LineObstacles.Slot slot, NestedLines.Cutting line, double at) {
    Path path = line.path();
    return obstacles.clearance(slot, AMPLE, line.number(), at, path.isClosed() ? path.length() : 0);
  }

  /** Whether words have room on a tile. */
  boolean isRoom(LineObstacles.Slot slot, Cell cell) {
    return isInside(slot, cell) && free(slot) >= LEAST;
  }

  /** The direction, or its opposite, in which words aren't upside down; upwards if steep. */
  static Point upright(Point along) {
    boolean steep = Math.abs(along.x()) < 0.09;
    boolean turn = steep ? along.y() > 0 : along.x() < 0;
    return turn ? along.times(-1) : along;
  }

  /** Writes what some sizes are called. */
  void write(Cell cell, List<Integer> owners, LineObstacles.Slot slot, String role) {
    Point along = slot.along();
    Point anchor = slot.centre().plus(along.quarterTurn().times(em(role) * HALF_CAPITAL));
    double angle = StrictMath.toDegrees(StrictMath.atan2(along.y(), along.x()));
    names.add(
        new SheetSubject.LineName(
            cell,
            new Item.Lettering(phrase(owners), anchor, Alignment.MIDDLE, angle, role),
            slot.box(),
            layering.apply(owners, "")));
    obstacles.add(slot);
  }

  /** Draws a hairline that speaks for some sizes. */
  void hairline(Cell cell, List<Integer> owners, Point from, Point to) {
    Path line = new Path(List.of(new Line(from, to)));
    names.add(
        new SheetSubject.LineName(
            cell,
            new Item.Shape(List.of(line), "size-hair"),
            line.bounds(),
            layering.apply(owners, "")));
  }
}
