package org.lapmark.grade.fastening;

import java.util.OptionalInt;
import org.lapmark.geometry.Point;

/**
 * A piece or a thing at its place on a panel.
 *
 * @param name its name
 * @param thing the id of the hardware or of the material; empty for a piece
 * @param piece the piece's number; nothing for a thing
 * @param panel the panel that it lies on
 * @param caughtAt the edge at whose raw edge it begins; empty where it lies inside
 * @param holder the name of the attachment that holds it; empty where it is attached to the panel
 * @param wrongSide whether it lies on the panel's wrong side
 * @param point where the middle of its beginning lies, on the stitching line if it is caught
 * @param direction where it points from there, of length 1
 * @param width how wide it is there; 0 where nobody says so
 * @param length how far it reaches; 0 where nobody says so
 */
public record Attached(
    String name,
    String thing,
    OptionalInt piece,
    String panel,
    String caughtAt,
    String holder,
    boolean wrongSide,
    Point point,
    Point direction,
    double width,
    double length) {
  /**
   * The middle of its far end.
   *
   * @return a point
   */
  public Point end() {
    return point.plus(direction.times(length));
  }
}
