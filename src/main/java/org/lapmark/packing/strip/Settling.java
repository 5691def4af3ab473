package org.lapmark.packing.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.lapmark.geometry.Affine;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Pushes arranged shapes towards the beginning of the strip and towards its side, one after the
 * other, until they lie apart by the gap. A push that would bring shapes nearer than that is not
 * made.
 */
final class Settling {
  private static final int ROUNDS = 3;
  private static final double TOUCH = 1e-6;

  /** Kept free beyond the gap, so that rounding errors of the pushes don't undo them. */
  private static final double CLEAR = 1e-6;

  /** More than rounding errors of a distance come to. */
  private static final double ROUNDED = 0.1;

  /** What chords leave of the gap at rounded corners. */
  private static final double ROUNDING = 0.9996;

  private final List<StripFilling.Put> puts;
  private final double gap;
  private final double[][] places;

  /** By axis and shape the sides that face backwards, of shapes that are pushed. */
  private final Sides[][] bodies;

  /** By axis and shape the sides that face forwards, which stop what is pushed. */
  private final Sides[][] grown;

  /**
   * The sides of a shape as coordinates along and across, per side start and end.
   *
   * @param turn 1 when sides that face forwards rise across the strip, -1 when they fall
   */
  private record Sides(double[] x0, double[] y0, double[] x1, double[] y1, int turn) {
    static Sides of(Geometry geometry) {
      List<Coordinate[]> rings = new ArrayList<>();
      for (int i = 0; i < geometry.getNumGeometries(); i++) {
        Polygon polygon = (Polygon) geometry.getGeometryN(i);
        rings.add(polygon.getExteriorRing().getCoordinates());
        for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
          rings.add(polygon.getInteriorRingN(k).getCoordinates());
        }
      }
      int count = rings.stream().mapToInt(ring -> ring.length - 1).sum();
      int turn = Orientation.isCCW(rings.get(0)) ? 1 : -1;
      Sides sides =
          new Sides(
              new double[count], new double[count], new double[count], new double[count], turn);
      int at = 0;
      for (Coordinate[] ring : rings) {
        for (int i = 1; i < ring.length; i++) {
          sides.x0[at] = ring[i - 1].x;
          sides.y0[at] = ring[i - 1].y;
          sides.x1[at] = ring[i].x;
          sides.y1[at++] = ring[i].y;
        }
      }
      return sides;
    }

    /** How far along a side is at a place across. */
    double along(int side, double y) {
      double share = (y - y0[side]) / (y1[side] - y0[side]);
      return x0[side] + (x1[side] - x0[side]) * share;
    }

    Sides transposed() {
      return new Sides(y0, x0, y1, x1, -turn);
    }

    /** Those alone that face backwards, or forwards. */
    Sides facing(boolean forwards) {
      int[] kept =
          IntStream.range(0, x0.length)
              .filter(
                  side ->
                      forwards
                          ? (y1[side] - y0[side]) * turn > 0
                          : (y1[side] - y0[side]) * turn < 0)
              .toArray();
      return new Sides(some(x0, kept), some(y0, kept), some(x1, kept), some(y1, kept), turn);
    }

    private static double[] some(double[] all, int[] kept) {
      return IntStream.of(kept).mapToDouble(side -> all[side]).toArray();
    }
  }

  private Settling(List<StripFilling.Put> puts, double gap) {
    this.puts = puts;
    this.gap = gap;
    this.places = new double[puts.size()][];
    this.bodies = new Sides[2][puts.size()];
    this.grown = new Sides[2][puts.size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = new double[] {puts.get(i).x(), puts.get(i).y()};
      Sides body = Sides.of(puts.get(i).pose().outline());
      Sides wide = Sides.of(puts.get(i).pose().wide());
      bodies[0][i] = body.facing(false);
      bodies[1][i] = body.transposed().facing(false);
      grown[0][i] = wide.facing(true);
      grown[1][i] = wide.transposed().facing(true);
    }
  }

  /** The places, along and across, in the order of the puts. */
  static double[][] settle(List<StripFilling.Put> puts, double gap) {
    Settling settling = new Settling(puts, gap);
    for (int round = 0; round < ROUNDS; round++) {
      double moved = settling.push(0) + settling.push(1);
      if (moved < TOUCH) {
        break;
      }
    }
    return settling.places;
  }

  private double push(int axis) {
    double sum = 0;
    List<Integer> order =
        IntStream.range(0, places.length)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer i) -> places[i][axis]).thenComparing(i -> i))
            .toList();
    for (int i : order) {
      sum += pushOne(i, axis);
    }
    return sum;
  }

  private double pushOne(int i, int axis) {
    double before = places[i][axis];
    double way = before;
    for (int other = 0; other < places.length && way > TOUCH; other++) {
      if (other != i) {
        way = way(i, other, axis, way);
      }
    }
    if (way < before) {
      way -= CLEAR;
    }
    if (way <= TOUCH) {
      return 0;
    }
    places[i][axis] = before - way;
    if (tooNear(i)) {
      places[i][axis] = before;
      return 0;
    }
    return way;
  }

  private boolean tooNear(int i) {
    Polygon outline = placed(i);
    Envelope reach = outline.getEnvelopeInternal();
    reach.expandBy(gap);
    for (int other = 0; other < places.length; other++) {
      if (other != i
          && reach.intersects(placedBox(other))
          && placed(other).isWithinDistance(outline, gap * ROUNDING - 1e-9)) {
        return true;
      }
    }
    return false;
  }

  private Envelope placedBox(int i) {
    double x = places[i][0];
    double y = places[i][1];
    Pose pose = puts.get(i).pose();
    return new Envelope(x, x + pose.length(), y, y + pose.height());
  }

  private Polygon placed(int i) {
    return Pose.mapped(
        puts.get(i).pose().outline(), Affine.translation(places[i][0], places[i][1]));
  }

  /**
   * How far a shape can be pushed before it meets another's surroundings: the least distance
   * between a side of the one that faces backwards and a side of the other that faces forwards.
   */
  private double way(int i, int other, int axis, double limit) {
    Envelope mine = placedBox(i);
    Envelope theirs = placedBox(other);
    theirs.expandBy(gap + 1);
    boolean beside =
        axis == 0
            ? mine.getMaxY() <= theirs.getMinY()
                || mine.getMinY() >= theirs.getMaxY()
                || theirs.getMinX() > mine.getMaxX()
                || theirs.getMaxX() < mine.getMinX() - limit
            : mine.getMaxX() <= theirs.getMinX()
                || mine.getMinX() >= theirs.getMaxX()
                || theirs.getMinY() > mine.getMaxY()
                || theirs.getMaxY() < mine.getMinY() - limit;
    if (beside) {
      return limit;
    }
    double dx = places[i][0] - places[other][0];
    double dy = places[i][1] - places[other][1];
    Sides moving = bodies[axis][i];
    Sides still = grown[axis][other];
    double along = axis == 0 ? dx : dy;
    double across = axis == 0 ? dy : dx;
    double way = limit;
    for (int m = 0; m < moving.x0.length; m++) {
      double low = Math.min(moving.y0[m], moving.y1[m]) + across;
      double high = Math.max(moving.y0[m], moving.y1[m]) + across;
      double nearest = Math.min(moving.x0[m], moving.x1[m]) + along - ROUNDED;
      for (int s = 0; s < still.x0.length; s++) {
        double from = Math.max(low, Math.min(still.y0[s], still.y1[s]));
        double to = Math.min(high, Math.max(still.y0[s], still.y1[s]));
        if (to - from > TOUCH && nearest - Math.max(still.x0[s], still.x1[s]) < way) {
          double apart =
              Math.min(
                  moving.along(m, from - across) + along - still.along(s, from),
                  moving.along(m, to - across) + along - still.along(s, to));
          if (apart > -TOUCH && apart < way) {
            way = Math.max(0, apart);
          }
        }
      }
    }
    return way;
  }
}
