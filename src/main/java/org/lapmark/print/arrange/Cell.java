package org.lapmark.print.arrange;

import org.lapmark.geometry.Box;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A tile before it is drawn. All boxes are in sheet coordinates.
 *
 * @param code row letters and column number
 * @param column 0-based, over the whole sheet
 * @param row 0-based, over the whole sheet
 * @param window what the paper's window covers, its caption included
 * @param core what is this tile's alone: up to the lines on which it meets its neighbours
 * @param shown what is drawn: the core and, beyond the lines on which tiles are joined, the overlap
 */
public record Cell(String code, int column, int row, Box window, Box core, Box shown) {
  /**
   * The code of a place: letters for the row, a number for the column.
   *
   * @param row 0-based
   * @param column 0-based
   * @return such as B3; after Z comes AA
   */
  public static String code(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int left = row + 1; left > 0; left = (left - 1) / 26) {
      letters.insert(0, (char) ('A' + (left - 1) % 26));
    }
    return letters.toString() + (column + 1);
  }

  /** A box as an area. */
  public static Polygon polygon(Box box) {
    return (Polygon)
        new GeometryFactory()
            .toGeometry(new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY()));
  }

  /** What two boxes have in common; inside out when they have nothing. */
  public static Box shared(Box a, Box b) {
    return new Box(
        Math.max(a.minX(), b.minX()),
        Math.max(a.minY(), b.minY()),
        Math.min(a.maxX(), b.maxX()),
        Math.min(a.maxY(), b.maxY()));
  }
}
