package org.lapmark.print.arrange;

import java.util.List;
import org.lapmark.packing.TileGrid;
import org.locationtech.jts.geom.Polygon;

/**
 * How well a sheet came out, and what it is held to.
 *
 * @param pages the pages
 * @param joins the lines on which two pages are joined
 * @param areaPages the pages that the pieces would fill if they left nothing free: their areas over
 *     the net window, which is what a page adds to its neighbours, the overlap counted once
 * @param forcedPages the pages that the most demanding single piece needs by its length and width,
 *     in the best of its turns
 * @param savedPages how many more pages there would be if the rectangles and strips that are ruled
 *     onto the cloth were on paper too, put where these pages have room or onto further ones
 * @param blankPages how many of the pages show the inside of a piece and no line
 * @param leftOutPages how many such pages were left out
 */
public record PlanQuality(
    int pages,
    int joins,
    int areaPages,
    int forcedPages,
    int savedPages,
    int blankPages,
    int leftOutPages) {
  public static final PlanQuality NOTHING = new PlanQuality(0, 0, 0, 0, 0, 0, 0);

  /**
   * The number of pages that the plan is held to.
   *
   * @return the greater of {@link #areaPages} and {@link #forcedPages}
   */
  public int bound() {
    return Math.max(areaPages, forcedPages);
  }

  public static PlanQuality of(int pages, int joins, List<Polygon> shapes, TileGrid grid) {
    double area = 0;
    int forced = 0;
    for (Polygon shape : shapes) {
      area += shape.getArea();
      int least = Integer.MAX_VALUE;
      for (double turn : Turns.of(shape, grid)) {
        least = Math.min(least, Turns.pages(shape.convexHull().getCoordinates(), turn, grid));
      }
      forced = Math.max(forced, least);
    }
    int filled = (int) Math.ceil(area / (grid.stepX() * grid.stepY()) - 1e-9);
    return new PlanQuality(pages, joins, filled, forced, 0, 0, 0);
  }

  public PlanQuality saving(int more) {
    return new PlanQuality(pages, joins, areaPages, forcedPages, more, blankPages, leftOutPages);
  }

  public PlanQuality blank(int count, boolean leftOut) {
    return new PlanQuality(
        pages, joins, areaPages, forcedPages, savedPages, leftOut ? 0 : count, leftOut ? count : 0);
  }
}
