package org.lapmark.print.tile;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/**
 * Ticks at the corners of the window, or a whole frame on a large sheet: where some is missing, the
 * printer has cut something off.
 */
record TileFrame(DraftSheet sheet) {
  private static final double TICK = 4;

  /** What a page shows, in its own coordinates; its window as long as the tile. */
  List<Item> on(DraftTile tile, Box window) {
    if (!sheet.paper().filling().isPaged()) {
      return List.of(new Item.Shape(List.of(Path.rectangle(window)), "sheet-frame"));
    }
    Box shown = tile.cell().window();
    Point back = new Point(shown.minX() - window.minX(), shown.minY() - window.minY());
    List<Path> ticks = new ArrayList<>();
    for (double x : new double[] {window.minX(), window.maxX()}) {
      for (double y : new double[] {window.minY() + sheet.tiling().caption(), window.maxY()}) {
        if (crowded(new Point(x, y).plus(back))) {
          continue;
        }
        double inX = x == window.minX() ? TICK : -TICK;
        double inY = y == window.maxY() ? -TICK : TICK;
        ticks.add(
            Path.polyline(List.of(new Point(x + inX, y), new Point(x, y), new Point(x, y + inY))));
      }
    }
    return ticks.isEmpty() ? List.of() : List.of(new Item.Shape(ticks, "tile-frame"));
  }

  /** Whether something that shows a cropped page as well as a tick would lies in a corner. */
  private boolean crowded(Point corner) {
    double reach = TICK + DraftTile.CLEAR;
    return sheet.layout().square().expanded(reach).contains(corner)
        || sheet.layout().art().stream()
            .filter(art -> art.bounds().expanded(reach).contains(corner))
            .flatMap(art -> art.strokes().stream())
            .anyMatch(
                stroke ->
                    stroke.path().bounds().expanded(reach).contains(corner)
                        && stroke.path().distance(corner) < reach);
  }
}
