package org.lapmark.grade.piece;

import java.util.List;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;

/** Angles at the corners of panels. */
public final class CornerAngle {
  private CornerAngle() {}

  /**
   * The angle inside the panel between two edges that follow one another clockwise.
   *
   * @param before the edge that ends at the corner
   * @param after the edge that begins there
   * @return degrees from 0 to 360; 180 where the outline goes on smoothly
   */
  public static double innerAngle(Edge before, Edge after) {
    Path ending = before.path();
    List<org.lapmark.geometry.Curve> curves = ending.curves();
    Point in = curves.get(curves.size() - 1).tangent(1);
    Point out = after.path().curves().get(0).tangent(0);
    return 180 - StrictMath.toDegrees(StrictMath.atan2(in.cross(out), in.dot(out)));
  }
}
