package org.lapmark.figure.workpiece;

import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A straight line at which cloth is folded over, in the panel's own coordinates.
 *
 * @param on a point of the line
 * @param away towards what is folded over, of length 1 and square to the line
 * @param by how far it lies back: 1 flat, less if it stands up and is seen shortened
 */
public record Crease(Point on, Point away, double by) {
  /** Where a place lies when all beyond the line is folded over. */
  public Point folded(Point place) {
    return beyond(place) > 0 ? map().apply(place) : place;
  }

  /** Where a place beyond the line comes to lie. */
  Affine map() {
    // Across the line everything is turned round and shortened, along it nothing changes.
    double k = 1 + by;
    double x = away.x();
    double y = away.y();
    double d = on.dot(away);
    return new Affine(1 - k * x * x, -k * x * y, -k * x * y, 1 - k * y * y, k * d * x, k * d * y);
  }

  /** How far a place lies beyond the line; negative before it. */
  public double beyond(Point place) {
    return place.minus(on).dot(away);
  }

  /** Whether a shape that isn't parted lies beyond the line. */
  boolean isBeyond(Path shape) {
    double most = 0;
    double least = 0;
    for (Point point : shape.flattened(1)) {
      most = Math.max(most, beyond(point));
      least = Math.min(least, beyond(point));
    }
    return most > -least;
  }

  /** What of a shape lies before the line. */
  Lines.Cropped kept(Path shape) {
    return Lines.crop(shape, on, away);
  }

  /** What of a shape lies beyond the line, where it comes to lie. */
  Path flap(Path shape) {
    return Lines.crop(shape, on, away.times(-1)).path().transformed(map());
  }
}
