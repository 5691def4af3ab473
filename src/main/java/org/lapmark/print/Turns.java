package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.packing.TileGrid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The turns in which a piece is tried on paper, which has no grain: quarter turns, and where a
 * slanted one saves pages that a piece would take alone, that one too.
 */
final class Turns {
  private static final List<Double> QUARTERS = List.of(0.0, 90.0, 180.0, 270.0);

  /** Slanted turns are tried in steps of this many degrees. */
  private static final int STEP = 3;

  private Turns() {}

  /** The turns in degrees, quarter turns first. */
  static List<Double> of(Polygon shape, TileGrid grid) {
    Coordinate[] hull = shape.convexHull().getCoordinates();
    int least = Math.min(pages(hull, 0, grid), pages(hull, 90, grid));
    List<Double> turns = new ArrayList<>(QUARTERS);
    if (least == 1) {
      return turns;
    }
    double slanted = 0;
    for (int angle = STEP; angle < 180; angle += STEP) {
      int pages = pages(hull, angle, grid);
      if (angle != 90 && pages < least) {
        least = pages;
        slanted = angle;
      }
    }
    if (slanted > 0) {
      turns.add(slanted);
      turns.add(slanted + 180);
    }
    return turns;
  }

  /**
   * The fewest pages that a shape in one turn reaches: one that hangs together and spans so many
   * columns and rows touches all but one of their sum at least.
   */
  static int pages(Coordinate[] hull, double angle, TileGrid grid) {
    double cos = StrictMath.cos(StrictMath.toRadians(angle));
    double sin = StrictMath.sin(StrictMath.toRadians(angle));
    double minX = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (Coordinate point : hull) {
      double x = point.x * cos - point.y * sin;
      double y = point.x * sin + point.y * cos;
      minX = Math.min(minX, x);
      maxX = Math.max(maxX, x);
      minY = Math.min(minY, y);
      maxY = Math.max(maxY, y);
    }
    return grid.columns(maxX - minX + grid.edge()) + grid.rows(maxY - minY + grid.edge()) - 1;
  }
}
