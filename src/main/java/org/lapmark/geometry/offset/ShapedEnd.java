package org.lapmark.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.offset.JointException.Reason;

/**
 * The end of a strip that is cut square to its side or as its neighbour's mirror image. Both begin
 * at the place where the side's own line, drawn on straight, meets the neighbour's moved line.
 */
final class ShapedEnd {
  /** How far from the corner that place may lie, in times the larger distance. */
  private static final double FARTHEST = 4;

  /** How much of a strip may be taken away. */
  private static final double ROOM = 0.95;

  private static final int SAMPLES = 64;

  private final List<Strip> strips;
  private final boolean[] meeting;
  private final int index;
  private final boolean first;
  private final Strip own;
  private final Strip other;
  private final Point corner;

  /** The side's line beyond the corner. */
  private final Point beyond;

  /**
   * An end.
   *
   * @param index the strip before the corner
   * @param first whether that strip is the one whose end is shaped, else the next one
   */
  ShapedEnd(List<Strip> strips, boolean[] meeting, int index, boolean first) {
    this.strips = strips;
    this.meeting = meeting;
    this.index = index;
    this.first = first;
    Strip a = strips.get(index);
    Strip b = strips.get((index + 1) % strips.size());
    this.own = first ? a : b;
    this.other = first ? b : a;
    this.corner = b.corner;
    this.beyond = first ? a.tangentOut : b.tangentIn.times(-1);
    if (!(a.turn(b) > Tolerances.SMOOTH)) {
      throw failure(Reason.CLOSED);
    }
  }

  private JointException failure(Reason reason) {
    return new JointException(strips.get(index).side, reason);
  }

  /**
   * Cuts the strips back as far as needed.
   *
   * @return what comes between them
   */
  List<Part> square() {
    Point foot = foot();
    Point along = first ? own.directionOut : own.directionIn.times(-1);
    Point ownEnd = first ? own.end() : own.start();
    // Where the square line through the foot meets the strip's own line drawn on.
    double ahead = foot.minus(ownEnd).dot(beyond) / along.dot(beyond);
    Point top = ownEnd.plus(along.times(ahead));
    return between(foot, List.of(new Line(foot, top)), top);
  }

  /** As {@link #square}, with the mirror image of the neighbour's line. */
  List<Part> turned(Path side, int folds) {
    double depth = first ? own.distanceOut : own.distanceIn;
    Mirror mirror = new Mirror(side, first, depth / folds);
    Point foot = foot();
    List<Curve> rise = new ArrayList<>();
    Point otherEnd = first ? other.start() : other.end();
    double left = depth / folds;
    boolean done = false;
    if (foot.distance(otherEnd) > Path.JOIN_TOLERANCE) {
      done = climb(new Line(foot, otherEnd), mirror, left, rise);
    }
    int at = first ? (index + 1) % strips.size() : index;
    for (int k = 0; k < strips.size() && !done; k++) {
      List<Curve> curves = strips.get(at).curves();
      for (int i = 0; i < curves.size() && !done; i++) {
        Curve curve = first ? curves.get(i) : curves.get(curves.size() - 1 - i).reversed();
        done = climb(curve, mirror, left, rise);
      }
      int join = first ? at : Math.floorMod(at - 1, strips.size());
      if (!done && !meeting[join]) {
        throw failure(Reason.SHORT);
      }
      at = Math.floorMod(at + (first ? 1 : -1), strips.size());
    }
    if (!done) {
      throw failure(Reason.SHORT);
    }
    if (folds == 2) {
      for (int i = rise.size() - 1; i >= 0; i--) {
        rise.addAll(mirror.again(rise.get(i).reversed()));
      }
    }
    Point top = rise.get(rise.size() - 1).end();
    Point inside = mirror.outwards(top);
    if (top.minus(corner).dot(beyond) < 0) {
      List<Strip> run = Strip.run(strips, meeting, index, !first);
      Point from = top.minus(inside.times(depth / 2));
      Point cut = Strip.cut(run, !first, from, inside, ROOM);
      if (cut == null) {
        throw failure(Reason.FAR);
      }
    }
    return between(foot, rise, top);
  }

  /**
   * Adds a curve's mirror image as far as it lies within a depth.
   *
   * @return whether it goes beyond that depth
   */
  private static boolean climb(Curve curve, Mirror mirror, double depth, List<Curve> rise) {
    double before = 0;
    for (int i = 1; i <= SAMPLES; i++) {
      double here = (double) i / SAMPLES;
      if (mirror.depth(curve.at(here)) >= depth) {
        double low = before;
        double high = here;
        for (int round = 0; round < 60; round++) {
          double middle = (low + high) / 2;
          if (mirror.depth(curve.at(middle)) >= depth) {
            high = middle;
          } else {
            low = middle;
          }
        }
        if (high > 0) {
          rise.addAll(mirror.image(curve.part(0, high)));
        }
        return true;
      }
      before = here;
    }
    rise.addAll(mirror.image(curve));
    return false;
  }

  /** Where the side's own line, drawn on, meets the neighbour's line, which is cut back to it. */
  private Point foot() {
    double otherDistance = first ? other.distanceIn : other.distanceOut;
    if (otherDistance == 0) {
      return corner;
    }
    double ownDistance = first ? own.distanceOut : own.distanceIn;
    Point from = first ? other.start() : other.end();
    Point away = first ? other.directionIn : other.directionOut.times(-1);
    double cross = beyond.cross(away);
    double on = from.minus(corner).cross(beyond) / cross;
    double reach = FARTHEST * Math.max(ownDistance, otherDistance);
    Point foot;
    if (on > Tolerances.STUB) {
      List<Strip> run = Strip.run(strips, meeting, index, first);
      foot = Strip.cut(run, first, corner, beyond, ROOM);
    } else {
      foot = corner.plus(beyond.times(from.minus(corner).cross(away) / cross));
    }
    if (foot == null || !(foot.distance(corner) <= reach) || foot.minus(corner).dot(beyond) < 0) {
      throw failure(Reason.FAR);
    }
    return foot;
  }

  private List<Part> between(Point foot, List<Curve> rise, Point top) {
    List<Part> parts = new ArrayList<>();
    Point ownEnd = first ? own.end() : own.start();
    Point otherEnd = first ? other.start() : other.end();
    if (first) {
      add(parts, own, ownEnd, top);
      for (int i = rise.size() - 1; i >= 0; i--) {
        parts.add(new Part(own.side, rise.get(i).reversed(), 0));
      }
      add(parts, other, foot, otherEnd);
    } else {
      add(parts, other, otherEnd, foot);
      rise.forEach(curve -> parts.add(new Part(own.side, curve, 0)));
      add(parts, own, top, ownEnd);
    }
    return parts;
  }

  private static void add(List<Part> parts, Strip strip, Point from, Point to) {
    if (from.distance(to) > Path.JOIN_TOLERANCE) {
      parts.add(new Part(strip.side, new Line(from, to), 0));
    }
  }
}
