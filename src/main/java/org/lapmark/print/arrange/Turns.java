package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.packing.TileGrid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * The turns in which a piece is tried on paper, which has no grain: quarter turns, and where a
 * slanted one saves pages that a piece would take alone, that one too.
 */
public final class Turns {
  private static final List<Double> QUARTERS = List.of(0.0, 90.0, 180.0, 270.0);

  /**
   * Slanted turns are tried in steps of this many degrees: a piece that reaches a sliver beyond a
   * page may fit in few of them alone.
   */
  private static final int STEP = 1;

  /** A slanted turn on a roll reaches at most so far as the better quarter turn, as a share. */
  private static final double WORTH = 0.98;

  private Turns() {}

  /** The turns in degrees, quarter turns first. */
  public static List<Double> of(Polygon shape, TileGrid grid) {
    Coordinate[] hull = shape.convexHull().getCoordinates();
    int least = Math.min(pages(hull, 0, grid), pages(hull, 90, grid));
    List<Double> turns = new ArrayList<>(QUARTERS);
    if (least == 1) {
      return turns;
    }
    double slanted = 0;
    double most = 0;
    for (int angle = STEP; angle < 180; angle += STEP) {
      int pages = angle == 90 ? Integer.MAX_VALUE : pages(hull, angle, grid);
      // Arranging sees shapes coarsely: one that only just fits may not fit there.
      double room = pages < least || (slanted > 0 && pages == least) ? room(hull, angle, grid) : 0;
      if (room > 0 && (pages < least || room > most)) {
        least = pages;
        most = room;
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
   * The turns on a roll: quarter turns, and those slanted ones in which a long shape fits across
   * and reaches least far along.
   */
  static List<Double> onRoll(Polygon shape, TileGrid grid) {
    double across = grid.width() - 2 * grid.edge();
    Coordinate[] hull = shape.convexHull().getCoordinates();
    List<Double> turns = new ArrayList<>(QUARTERS);
    double least = WORTH * Math.min(reach(hull, 0, across), reach(hull, 90, across));
    int slanted = 0;
    for (int angle = 1; angle < 180; angle++) {
      double reach = reach(hull, angle, across);
      if (reach < least) {
        least = reach;
        slanted = angle;
      }
    }
    if (slanted > 0) {
      turns.addAll(List.of((double) slanted, slanted + 180.0));
      if (WORTH * reach(hull, 180 - slanted, across) < least) {
        turns.addAll(List.of(180.0 - slanted, 360.0 - slanted));
      }
    }
    return turns;
  }

  /** How far a shape reaches along a roll; without end if it doesn't fit across. */
  private static double reach(Coordinate[] hull, double angle, double across) {
    Envelope box = box(hull, angle);
    return box.getWidth() <= across ? box.getHeight() : Double.POSITIVE_INFINITY;
  }

  /**
   * The fewest pages that a shape in one turn reaches: one that hangs together and spans so many
   * columns and rows touches all but one of their sum at least.
   */
  static int pages(Coordinate[] hull, double angle, TileGrid grid) {
    Envelope box = box(hull, angle);
    return grid.columns(box.getWidth() + grid.edge())
        + grid.rows(box.getHeight() + grid.edge())
        - 1;
  }

  /** How much room a shape in one turn leaves on its pages, across or down, whichever is less. */
  private static double room(Coordinate[] hull, double angle, TileGrid grid) {
    Envelope box = box(hull, angle);
    int columns = grid.columns(box.getWidth() + grid.edge());
    int rows = grid.rows(box.getHeight() + grid.edge());
    return Math.min(
        (columns - 1) * grid.stepX() + grid.width() - box.getWidth(),
        (rows - 1) * grid.stepY() + grid.height() - box.getHeight());
  }

  private static Envelope box(Coordinate[] hull, double angle) {
    double cos = StrictMath.cos(StrictMath.toRadians(angle));
    double sin = StrictMath.sin(StrictMath.toRadians(angle));
    Envelope box = new Envelope();
    for (Coordinate point : hull) {
      box.expandToInclude(point.x * cos - point.y * sin, point.x * sin + point.y * cos);
    }
    return box;
  }
}
