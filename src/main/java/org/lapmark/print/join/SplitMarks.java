package org.lapmark.print.join;

import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/** The marks that joins split: a half with the join's number in it on either tile. */
public record SplitMarks(DraftSheet sheet) {
  public void draw() {
    for (JoinMark mark : JoinMarks.of(sheet)) {
      half(mark, true);
      half(mark, false);
    }
  }

  private void half(JoinMark mark, boolean first) {
    Join join = mark.join();
    DraftTile tile = sheet.on(first ? join.first() : join.second());
    tile.add(new Item.Shape(List.of(mark.half(first)), "join-mark"));
    LetteringMeasure lettering = sheet.setting().lettering();
    Style style = sheet.setting().style("join-number");
    Point below = new Point(0, (lettering.ascent(style) - lettering.descent(style)) / 2);
    tile.add(
        new Item.Lettering(
            Integer.toString(join.number()),
            mark.numberAt(first).plus(below),
            Alignment.MIDDLE,
            0,
            "join-number"));
    tile.take(mark.box());
  }
}
