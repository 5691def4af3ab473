package org.lapmark.print.arrange;

import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.packing.Shape;
import org.locationtech.jts.geom.Polygon;

/** The square by which a maker proves the scale, as it is arranged. */
public final class TestSquare {
  /** Its side, in millimetres. */
  public static final double SIDE = 100;

  /** The side of one that stands for it where there is no room, in millimetres. */
  public static final double SMALL_SIDE = 50;

  private TestSquare() {}

  /** Its outline, one corner at the origin. */
  static Polygon outline(double side) {
    return Cell.polygon(new Box(0, 0, side, side));
  }

  /** It lies upright in one tile. */
  static Shape shape(double side) {
    return new Shape(outline(side), List.of(0.0), true);
  }
}
