package org.lapmark.figure.operation.craft;

import java.util.List;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * How an edge bends on the whole.
 *
 * @param length how long it is in millimetres
 * @param turn how far it turns, in degrees; above 0 where it bends outward from the cloth
 */
record Bend(double length, double turn) {
  private static final double FLATNESS = 0.02;
  private static final double STRAIGHT = 8;

  static Bend of(Path edge) {
    List<Point> points = edge.flattened(FLATNESS);
    double turn = 0;
    for (int i = 2; i < points.size(); i++) {
      turn +=
          between(
              points.get(i - 1).minus(points.get(i - 2)), points.get(i).minus(points.get(i - 1)));
    }
    return new Bend(edge.length(), turn);
  }

  /** Its mean radius, below 0 where it bends inward; 0 where it is straight. */
  double radius() {
    return Math.abs(turn) < STRAIGHT ? 0 : length / StrictMath.toRadians(turn);
  }

  /** The angle inside a corner of an outline that runs clockwise on paper, in degrees. */
  static double angle(Path into, Path out) {
    return 180 - between(into.tangentAtLength(into.length()), out.tangentAtLength(0));
  }

  private static double between(Point first, Point second) {
    return StrictMath.toDegrees(StrictMath.atan2(first.cross(second), first.dot(second)));
  }
}
