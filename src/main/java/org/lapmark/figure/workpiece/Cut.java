package org.lapmark.figure.workpiece;

import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;

/**
 * A straight line at which the rest of a shape is left out.
 *
 * @param key what leaves it out: {@code cropped} or {@code cut_away}
 * @param from one end of the line
 * @param to its other end
 * @param away the direction in which everything is left out
 */
public record Cut(String key, Point from, Point to, Point away) {
  /** What leaves it out where as much of a piece is drawn as its author says. */
  public static final String CROPPED = "cropped";

  private static final double NEAR = 1e-6;

  /** Whether the rest is there, and only isn't drawn. */
  boolean isBroken() {
    return key.equals(CROPPED) || key.equals(PlacedBody.CUT_AWAY_KEY);
  }

  /** The same line on a picture. */
  Cut transformed(Affine map) {
    return new Cut(key, map.apply(from), map.apply(to), map.applyVector(away).unit());
  }

  /** Whether a place is left out. */
  public boolean hides(Point place) {
    return place.minus(from).dot(away) > NEAR;
  }

  /** Whether a stretch lies on it. */
  boolean holds(Point a, Point b) {
    Point along = to.minus(from).unit();
    return Math.abs(along.cross(a.minus(from))) < NEAR
        && Math.abs(along.cross(b.minus(from))) < NEAR;
  }

  /** The part of it that another cut leaves. */
  Cut before(Point on, Point beyond) {
    double a = from.minus(on).dot(beyond);
    double b = to.minus(on).dot(beyond);
    if (a <= 0 && b <= 0 || a == b) {
      return this;
    }
    Point crossing = from.towards(to, a / (a - b));
    return a > 0 ? new Cut(key, crossing, to, away) : new Cut(key, from, crossing, away);
  }
}
