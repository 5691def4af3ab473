package org.lapmark.print.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.line.Dashes;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.sheet.CheckLine;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/** Lines across and down through each island of joined tiles, with their lengths. */
public record CheckLines(DraftSheet sheet) {
  /** Half the length of the stroke at either end, in millimetres. */
  private static final double END = 3;

  /** How far from the line its length may stand, in millimetres. */
  private static final double REACH = 9;

  public void draw() {
    sheet.drawn().checks().forEach(this::draw);
  }

  private void draw(CheckLine check) {
    List<Path> drawn = check.offPieces(sheet.layout());
    for (Cell cell : check.cells()) {
      DraftTile tile = sheet.on(cell);
      List<Path> dots = new ArrayList<>();
      for (Path line : drawn) {
        dots.addAll(Dashes.inside(line, sheet.setting().style("check-line"), cell.shown()));
        CurveClip.inside(line, cell.shown()).forEach(part -> tile.take(part, 1));
      }
      if (!dots.isEmpty()) {
        tile.add(new Item.Shape(dots, "check-line"));
      }
    }
    end(check, first(check), check.from());
    end(check, last(check), check.to());
  }

  private void end(CheckLine check, Cell cell, Point end) {
    Point arm = check.sideways() ? new Point(0, END) : new Point(END, 0);
    Path tick = new Path(List.of(new Line(end.minus(arm), end.plus(arm))));
    sheet.on(cell).add(new Item.Shape(List.of(tick), "check-end"));
    sheet.on(cell).take(tick, 1);
  }

  private static Cell first(CheckLine check) {
    return check.cells().get(0);
  }

  private static Cell last(CheckLine check) {
    return check.cells().get(check.cells().size() - 1);
  }

  /** Writes lengths, where what joins the tiles leaves room. */
  public void drawLengths() {
    sheet.drawn().checks().forEach(this::drawLength);
  }

  /** A line's length at both ends, or somewhere on its way where neither has room. */
  private void drawLength(CheckLine check) {
    boolean atFirst = drawLength(check, first(check), check.from());
    boolean atLast = drawLength(check, last(check), check.to());
    boolean said = atFirst || atLast;
    for (int i = 0; i < check.cells().size() && !said; i++) {
      Cell cell = check.cells().get(i);
      Point middle = cell.core().centre();
      said =
          drawLength(
              check,
              cell,
              check.sideways()
                  ? new Point(middle.x(), check.from().y())
                  : new Point(check.from().x(), middle.y()));
    }
  }

  /** Puts the length beside the line near one of its points; false when there is no room. */
  private boolean drawLength(CheckLine check, Cell cell, Point end) {
    String text =
        sheet
            .setting()
            .wording()
            .text("tile.check", Map.of("length", Long.toString(Math.round(check.length()))));
    TextBlock block = sheet.setting().line(text, "join-note");
    boolean turned = !check.sideways();
    DraftTile tile = sheet.on(cell);
    Box room = tile.room();
    Box near =
        turned
            ? new Box(end.x() - REACH, room.minY(), end.x() + REACH, room.maxY())
            : new Box(room.minX(), end.y() - REACH, room.maxX(), end.y() + REACH);
    Optional<Box> found =
        tile.space()
            .part(near)
            .finder(null, true)
            .find(
                turned ? block.height() : block.width(),
                turned ? block.width() : block.height(),
                end,
                Cell.shared(near, room));
    found.ifPresent(box -> tile.write(block, box, turned));
    return found.isPresent();
  }
}
