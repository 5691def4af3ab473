package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.line.Dashes;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.source.JoinStyle;
import org.lapmark.wording.Wording;

/** Draws what joining takes: lines, marks, corners, check lines and notes. Used once. */
final class JoinPainter {
  /** The radius of the circle where four tiles meet, in millimetres. */
  private static final double CORNER = 4;

  /** Half the length of the stroke at either end of a check line, in millimetres. */
  private static final double CHECK_END = 3;

  private final Wording wording;
  private final StyleSheet styles;
  private final LetteringMeasure lettering;
  private final Tiling tiling;
  private final SheetLayout layout;
  private final List<CheckLine> checks;
  private final List<Cell> blank;
  private final Map<Cell, List<Item>> items;
  private final Map<Cell, FreeSpace> spaces;

  JoinPainter(
      SheetPlanner planner,
      Tiling tiling,
      SheetLayout layout,
      List<CheckLine> checks,
      List<Cell> blank,
      Map<Cell, List<Item>> items,
      Map<Cell, FreeSpace> spaces) {
    this.wording = planner.wording();
    this.styles = planner.styles();
    this.lettering = planner.lettering();
    this.tiling = tiling;
    this.layout = layout;
    this.checks = checks;
    this.blank = blank;
    this.items = items;
    this.spaces = spaces;
  }

  void paint() {
    layout.joins().forEach(this::lines);
    corners();
    checks.forEach(this::checkLine);
    for (JoinMark mark : JoinMarks.of(layout, spaces)) {
      half(mark, true);
      half(mark, false);
      spaces.get(mark.join().first()).takeBox(mark.box().expanded(TilePainter.CLEAR));
      spaces.get(mark.join().second()).takeBox(mark.box().expanded(TilePainter.CLEAR));
    }
    checks.forEach(this::checkTexts);
  }

  /** The way of joining, as the words' keys have it. */
  static String way(JoinStyle joins) {
    return switch (joins) {
      case OVERLAP -> "overlap";
      case BUTT -> "butt";
      case NO_TRIM -> "fold";
    };
  }

  /** The line on which two tiles meet, on both. */
  private void lines(Join join) {
    boolean butt = tiling.joins() == JoinStyle.BUTT;
    boolean folded = tiling.joins() == JoinStyle.NO_TRIM;
    items.get(join.first()).add(across(join, join.first(), folded ? "fold-back" : "trim-line"));
    items.get(join.second()).add(across(join, join.second(), butt ? "trim-line" : "meet-line"));
  }

  /** Quarter circles where four tiles meet: joined well, they make a whole circle. */
  private void corners() {
    for (Join upper : layout.joins()) {
      if (!upper.sideways()) {
        continue;
      }
      Optional<Cell> lowerLeft = below(upper.first());
      Optional<Cell> lowerRight = below(upper.second());
      boolean closed =
          lowerLeft.isPresent()
              && lowerRight.isPresent()
              && layout.joins().stream()
                  .anyMatch(
                      join -> join.first() == lowerLeft.get() && join.second() == lowerRight.get());
      if (closed) {
        Point corner = new Point(upper.to().x(), lowerLeft.get().core().minY());
        List<Cell> around =
            List.of(lowerRight.get(), lowerLeft.get(), upper.first(), upper.second());
        for (int i = 0; i < around.size(); i++) {
          Arc arc = Arc.ofCircle(corner, CORNER, i * Math.PI / 2, Math.PI / 2);
          items
              .get(around.get(i))
              .add(new Item.Shape(List.of(new Path(List.of(arc))), "corner-mark"));
          spaces
              .get(around.get(i))
              .takeBox(
                  new Box(corner.x(), corner.y(), corner.x(), corner.y())
                      .expanded(CORNER + TilePainter.CLEAR));
        }
      }
    }
  }

  private Optional<Cell> below(Cell cell) {
    return layout.joins().stream()
        .filter(join -> !join.sideways() && join.first() == cell)
        .map(Join::second)
        .findFirst();
  }

  /** Lines across and down through each island of joined tiles. */
  private void checkLine(CheckLine check) {
    List<Path> drawn = check.offPieces(layout);
    for (Cell cell : check.cells()) {
      List<Path> dots = new ArrayList<>();
      for (Path line : drawn) {
        dots.addAll(Dashes.inside(line, styles.style("check-line"), cell.shown()));
        CurveClip.inside(line, cell.shown())
            .forEach(part -> spaces.get(cell).takeLine(part.flattened(1), TilePainter.CLEAR));
      }
      if (!dots.isEmpty()) {
        items.get(cell).add(new Item.Shape(dots, "check-line"));
      }
    }
    for (boolean last : new boolean[] {false, true}) {
      Cell cell = check.cells().get(last ? check.cells().size() - 1 : 0);
      Point end = last ? check.to() : check.from();
      Point arm = check.sideways() ? new Point(0, CHECK_END) : new Point(CHECK_END, 0);
      Path tick = new Path(List.of(new Line(end.minus(arm), end.plus(arm))));
      items.get(cell).add(new Item.Shape(List.of(tick), "check-end"));
      spaces.get(cell).takeLine(tick.flattened(1), TilePainter.CLEAR);
    }
  }

  /** A check line's length at both ends, or somewhere on its way where neither has room. */
  private void checkTexts(CheckLine check) {
    boolean first = checkText(check, check.cells().get(0), check.from());
    boolean last = checkText(check, check.cells().get(check.cells().size() - 1), check.to());
    boolean said = first || last;
    for (int i = 0; i < check.cells().size() && !said; i++) {
      Cell cell = check.cells().get(i);
      Point middle = cell.core().centre();
      said =
          checkText(
              check,
              cell,
              check.sideways()
                  ? new Point(middle.x(), check.from().y())
                  : new Point(check.from().x(), middle.y()));
    }
  }

  /** Puts the length beside the line near one of its points; false when there is no room. */
  private boolean checkText(CheckLine check, Cell cell, Point end) {
    String text =
        wording.text("tile.check", Map.of("length", Long.toString(Math.round(check.length()))));
    TextBlock block =
        TextBlock.of(List.of(new TextBlock.Text(text, "join-note")), 1000, styles, lettering);
    boolean turned = !check.sideways();
    double reach = 9;
    Box near =
        turned
            ? new Box(
                end.x() - reach,
                TilePainter.room(cell).minY(),
                end.x() + reach,
                TilePainter.room(cell).maxY())
            : new Box(
                TilePainter.room(cell).minX(),
                end.y() - reach,
                TilePainter.room(cell).maxX(),
                end.y() + reach);
    Optional<Box> found =
        spaces
            .get(cell)
            .part(near)
            .finder(null, true)
            .find(
                turned ? block.height() : block.width(),
                turned ? block.width() : block.height(),
                end,
                Cell.shared(near, TilePainter.room(cell)));
    found.ifPresent(
        box -> {
          items.get(cell).addAll(block.in(box, turned));
          spaces.get(cell).takeBox(box.expanded(TilePainter.CLEAR));
        });
    return found.isPresent();
  }

  /** The line of a join through all that a tile shows. */
  private static Item across(Join join, Cell cell, String role) {
    Box box = cell.shown();
    Point from = join.from();
    Line line =
        join.sideways()
            ? new Line(new Point(from.x(), box.minY()), new Point(from.x(), box.maxY()))
            : new Line(new Point(box.minX(), from.y()), new Point(box.maxX(), from.y()));
    return new Item.Shape(List.of(new Path(List.of(line))), role);
  }

  /** A tile's half of a mark with the join's number in it. */
  private void half(JoinMark mark, boolean first) {
    Join join = mark.join();
    Cell cell = first ? join.first() : join.second();
    items.get(cell).add(new Item.Shape(List.of(mark.half(first)), "join-mark"));
    Style style = styles.style("join-number");
    Point at = mark.numberAt(first);
    items
        .get(cell)
        .add(
            new Item.Lettering(
                Integer.toString(join.number()),
                at.plus(new Point(0, (lettering.ascent(style) - lettering.descent(style)) / 2)),
                Alignment.MIDDLE,
                0,
                "join-number"));
  }

  /** What to do along each join, where there is room for words. */
  void notes() {
    // Edge to edge, nothing lies beyond the line: the words stand before it.
    boolean beyond = tiling.joins() != JoinStyle.BUTT;
    for (Join join : layout.joins()) {
      note(join, join.first(), "tile.join.first.", named(join.second()), beyond ? 1 : -1);
      note(join, join.second(), "tile.join.second.", named(join.first()), beyond ? -1 : 1);
    }
  }

  /** A tile's code, and whether it can be left out. */
  private String named(Cell cell) {
    return blank.contains(cell)
        ? wording.text("tile.join.blank", Map.of("code", cell.code()))
        : cell.code();
  }

  /**
   * Says on a tile which other one belongs to a join: with the number of cutting lines that cross,
   * or in a word or two; on the strip that joining hides, then on the other side of the line. There
   * is always a place: where ink leaves no room, the few words stand where they meet least of it.
   * The number stands by itself where it has no room beside the words; it is never left out.
   */
  private void note(Join join, Cell cell, String key, String other, int side) {
    String text = wording.text(key + way(tiling.joins()), Map.of("code", other));
    String few = wording.text("tile.join.few", Map.of("code", other));
    int lines = JoinMarks.crossings(layout, join, "cutting-line").size();
    String count = lines == 0 ? "" : wording.text("tile.join.count", Map.of("count", lines));
    if (!count.isEmpty()
        && beside(
            join,
            cell,
            wording.text("tile.join.lines", Map.of("note", text, "lines", count)),
            side)) {
      return;
    }
    if (!beside(join, cell, text, side)) {
      anywhere(join, cell, few, side);
    }
    if (!count.isEmpty()) {
      anywhere(join, cell, count, side);
    }
  }

  /** Puts a text on one side of a join; false where it has no room there. */
  private boolean beside(Join join, Cell cell, String text, int side) {
    TextBlock block = block(text);
    Optional<Box> found = place(join, cell, block, strip(join, cell, side), side);
    found.ifPresent(box -> put(join, cell, block, box));
    return found.isPresent();
  }

  /** Puts a text on either side of a join, or where it covers least. */
  private void anywhere(Join join, Cell cell, String text, int side) {
    if (beside(join, cell, text, side) || beside(join, cell, text, -side)) {
      return;
    }
    boolean turned = join.sideways();
    TextBlock block = block(text);
    put(
        join,
        cell,
        block,
        spaces
            .get(cell)
            .leastTaken(
                turned ? block.height() : block.width(),
                turned ? block.width() : block.height(),
                strip(join, cell, side)));
  }

  private void put(Join join, Cell cell, TextBlock block, Box box) {
    items.get(cell).addAll(block.in(box, join.sideways()));
    spaces.get(cell).takeBox(box.expanded(TilePainter.CLEAR));
  }

  private TextBlock block(String text) {
    return TextBlock.of(List.of(new TextBlock.Text(text, "join-note")), 1000, styles, lettering);
  }

  /** The strip on one side of a join in which its words stand, as far as the tile shows it. */
  private static Box strip(Join join, Cell cell, int side) {
    double near = 0.8;
    double far = JoinMark.RADIUS;
    double low = Math.min(side * near, side * far);
    double high = Math.max(side * near, side * far);
    Box strip =
        join.sideways()
            ? new Box(join.from().x() + low, join.from().y(), join.from().x() + high, join.to().y())
            : new Box(
                join.from().x(), join.from().y() + low, join.to().x(), join.from().y() + high);
    return Cell.shared(strip, cell.shown());
  }

  private Optional<Box> place(Join join, Cell cell, TextBlock block, Box strip, int side) {
    boolean turned = join.sideways();
    Point middle =
        join.from()
            .towards(join.to(), 0.47)
            .plus(turned ? new Point(side * 2.4, 0) : new Point(0, side * 2.4));
    return spaces
        .get(cell)
        .part(strip)
        .finder(null, true)
        .find(
            turned ? block.height() : block.width(),
            turned ? block.width() : block.height(),
            middle,
            strip);
  }
}
