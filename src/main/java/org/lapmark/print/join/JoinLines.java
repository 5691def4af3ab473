package org.lapmark.print.join;

import java.util.List;
import java.util.Optional;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.lapmark.source.JoinStyle;

/**
 * The lines on which tiles meet, and quarter circles where four of them do: joined well, they make
 * a whole circle.
 */
public record JoinLines(DraftSheet sheet) {
  /** The radius of the circle where four tiles meet, in millimetres. */
  private static final double CORNER = 4;

  public void draw() {
    sheet.joins().forEach(this::lines);
    sheet.joins().stream().filter(Join::sideways).forEach(this::corner);
  }

  /** The line on which two tiles meet, on both. */
  private void lines(Join join) {
    boolean butt = sheet.tiling().joins() == JoinStyle.BUTT;
    boolean folded = sheet.tiling().joins() == JoinStyle.NO_TRIM;
    across(join, join.first(), folded ? "fold-back" : "trim-line");
    across(join, join.second(), butt ? "trim-line" : "meet-line");
  }

  /** The line of a join through all that a tile shows. */
  private void across(Join join, Cell cell, String role) {
    Box box = cell.shown();
    Point from = join.from();
    Line line =
        join.sideways()
            ? new Line(new Point(from.x(), box.minY()), new Point(from.x(), box.maxY()))
            : new Line(new Point(box.minX(), from.y()), new Point(box.maxX(), from.y()));
    sheet.on(cell).add(new Item.Shape(List.of(new Path(List.of(line))), role));
  }

  /** The corner at the lower end of an upright join, if four tiles meet there. */
  private void corner(Join upper) {
    Optional<Cell> lowerLeft = below(upper.first());
    Optional<Cell> lowerRight = below(upper.second());
    boolean closed =
        lowerLeft.isPresent()
            && lowerRight.isPresent()
            && sheet.joins().stream()
                .anyMatch(
                    join -> join.first() == lowerLeft.get() && join.second() == lowerRight.get());
    if (closed) {
      Point corner = new Point(upper.to().x(), lowerLeft.get().core().minY());
      Box room =
          new Box(corner.x(), corner.y(), corner.x(), corner.y())
              .expanded(CORNER + DraftTile.CLEAR);
      List<Cell> around = List.of(lowerRight.get(), lowerLeft.get(), upper.first(), upper.second());
      for (int i = 0; i < around.size(); i++) {
        Arc arc = Arc.ofCircle(corner, CORNER, i * Math.PI / 2, Math.PI / 2);
        DraftTile tile = sheet.on(around.get(i));
        tile.add(new Item.Shape(List.of(new Path(List.of(arc))), "corner-mark"));
        tile.space().takeBox(room);
      }
    }
  }

  private Optional<Cell> below(Cell cell) {
    return sheet.joins().stream()
        .filter(join -> !join.sideways() && join.first() == cell)
        .map(Join::second)
        .findFirst();
  }
}
