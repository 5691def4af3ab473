package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * What replaces the ends of two stretches.
 *
 * @param left how much of the stretch before is left off, in millimetres
 * @param right how much of the stretch after is left off
 * @param curve the curve in between
 * @param aside how far it goes to one side and back, about, where it has to
 */
record Bridge(double left, double right, Curve curve, double aside) {
  /** How much is redrawn on either side of an opening beyond the width of the opening. */
  private static final double ASIDE = 5;

  /** Where the smoother of two solutions isn't needed, in radians. */
  private static final double SMOOTH = StrictMath.toRadians(30);

  /** A curve that leaves the straight line between its ends by more than this turns back. */
  private static final double STEEPEST = StrictMath.toRadians(60);

  /** How much may be redrawn on either side, in times what usually is. */
  private static final double[] REACHES = {1, 1.4, 2, 2.8, 4, 0.7, 0.5, 0.35, 0.25};

  /** What goes to one side and back by less than this can't be seen, in millimetres. */
  private static final double SEEN = 0.02;

  /** Over how much of a line, to either side, it is asked how it bends, in millimetres. */
  private static final double NEAR = 0.5;

  /** A line that turns by less than this on that stretch is straight, in radians. */
  private static final double LEAST_BEND = 1e-6;

  /** How much of a line is redrawn on either side of a hinge, in millimetres. */
  private static final double[] HINGE_REACHES = {10, 20, 40, 80, 160};

  /** Shares of the way to where the tangents meet, between which handles make an even curve. */
  private static final double LEAST_HANDLE = 0.4;

  private static final double MOST_HANDLE = 0.85;

  /** Whether it goes to one side and back so far that it can be seen. */
  boolean turnsBack() {
    return aside > SEEN;
  }

  /** A place on a line, how it is moved, and how much of the line may be left off there. */
  record Side(Path line, double at, Affine moved, double room) {
    Point end() {
      return moved.apply(line.atLength(at));
    }
  }

  /**
   * A smooth curve across an opening, with the tangents of both sides where it begins and ends. It
   * bends to one side only, the one to which the line bends beside it, and is as long as what it
   * replaces and the opening along the line, as far as such a curve can be. How much is redrawn on
   * either side is chosen so that it bends evenly, near the opening.
   *
   * <p>Where a line is straight beside an opening that is aslant to it, or nearly so, there is no
   * such curve: then it is one that bends to one side and back.
   *
   * @return null if there is none that doesn't turn back
   */
  static Bridge across(Side before, Side after) {
    double wanted = before.end().distance(after.end()) + ASIDE;
    List<End> starts = ends(before, wanted, true);
    List<End> ends = ends(after, wanted, false);
    Span best = null;
    double least = Double.POSITIVE_INFINITY;
    for (End start : starts) {
      for (End end : ends) {
        Span span = new Span(start, end);
        double cost = span.bendsOneWay() ? span.unevenness(wanted) : Double.POSITIVE_INFINITY;
        if (cost < least) {
          least = cost;
          best = span;
        }
      }
    }
    if (best != null) {
      return best.evenly(best.redrawn() + alongLine(before, after));
    }
    for (int i = 0; i < starts.size(); i++) {
      Span span = new Span(starts.get(i), ends.get(i));
      if (span.steepest() < (best == null ? STEEPEST : best.steepest())) {
        best = span;
      }
      if (span.steepest() <= SMOOTH) {
        break;
      }
    }
    return best == null ? null : best.aslant();
  }

  /** How long an opening is along the line. */
  private static double alongLine(Side before, Side after) {
    Point arriving = before.moved.applyVector(LineTurns.backwards(before.line, before.at));
    Point leaving = after.moved.applyVector(LineTurns.onwards(after.line, after.at));
    return after.end().minus(before.end()).dot(arriving.plus(leaving).unit());
  }

  /** The places beside an opening from which on a side may be redrawn. */
  private static List<End> ends(Side side, double wanted, boolean before) {
    List<End> ends = new ArrayList<>();
    for (double reach : REACHES) {
      double left = Math.min(side.room, reach * wanted);
      double at = before ? side.at - left : side.at + left;
      Point tangent =
          before ? LineTurns.onwards(side.line, at) : LineTurns.backwards(side.line, at);
      ends.add(
          new End(
              left,
              side.moved.apply(side.line.atLength(at)),
              side.moved.applyVector(tangent),
              bend(side.line, at)));
    }
    return ends;
  }

  /** To which side a line bends at a place; 0 where it is straight. */
  private static double bend(Path line, double at) {
    double from = Math.max(0, at - NEAR);
    double to = Math.min(line.length(), at + NEAR);
    double turn = LineTurns.angle(LineTurns.onwards(line, from), LineTurns.backwards(line, to));
    return Math.abs(turn) < LEAST_BEND ? 0 : Math.signum(turn);
  }

  /**
   * Where a curve across an opening begins or ends.
   *
   * @param left how much of the line is left off
   * @param bend to which side the line bends there
   */
  private record End(double left, Point point, Point tangent, double bend) {}

  /** What a curve across an opening spans. */
  private static final class Span {
    private final End start;
    private final End end;
    private final double chord;
    private final double out;
    private final double in;

    Span(End start, End end) {
      this.start = start;
      this.end = end;
      Point along = end.point.minus(start.point);
      this.chord = along.norm();
      this.out = LineTurns.angle(start.tangent, along);
      this.in = LineTurns.angle(along, end.tangent);
    }

    /** How much of the line is redrawn. */
    double redrawn() {
      return start.left + end.left;
    }

    double steepest() {
      return Math.max(Math.abs(out), Math.abs(in));
    }

    private boolean isStraight() {
      return chord * steepest() < LineTurns.STRAIGHT;
    }

    /** Whether a curve can bend to one side only, and to the side that the line bends to. */
    boolean bendsOneWay() {
      if (isStraight()) {
        return true;
      }
      double side = Math.signum(out);
      boolean fits = start.bend == side || end.bend == side || start.bend == 0 && end.bend == 0;
      return out * in > 0 && steepest() < STEEPEST && fits;
    }

    /** How far it is from bending evenly, and how far its ends lie from where they usually do. */
    double unevenness(double wanted) {
      double far =
          Math.abs(StrictMath.log(start.left / wanted))
              + Math.abs(StrictMath.log(end.left / wanted));
      return (isStraight() ? 0 : Math.abs(StrictMath.log(out / in))) + far / 4;
    }

    /** A curve that bends to one side, of a length or as near to it as may be. */
    Bridge evenly(double length) {
      if (isStraight()) {
        return new Bridge(start.left, end.left, new Line(start.point, end.point), 0);
      }
      // How far it is from either end to where the tangents meet.
      double turn = StrictMath.sin(out + in);
      Point first = start.tangent.times(chord * StrictMath.sin(in) / turn);
      Point last = end.tangent.times(chord * StrictMath.sin(out) / turn);
      Curve curve = ofLength(start.point, first, last, end.point, length);
      if (curve == null) {
        Cubic longest = cubic(start.point, first, last, end.point, MOST_HANDLE);
        curve =
            longest.length() < length
                ? longest
                : cubic(start.point, first, last, end.point, LEAST_HANDLE);
      }
      return new Bridge(start.left, end.left, curve, 0);
    }

    /** A curve that may bend to one side and back. */
    Bridge aslant() {
      Curve curve = curve(start.point, start.tangent, out, end.tangent, in, end.point);
      return new Bridge(start.left, end.left, curve, chord * steepest() / 8);
    }
  }

  /**
   * A smooth curve over a hinge, exactly as long as what it replaces. There is one where the line
   * bends to the side to which it turns at the hinge, and enough of it may be redrawn: the curve
   * cuts the corner off and makes up for it beside.
   *
   * @return null if there is none, as on a straight line
   */
  static Bridge overHinge(Side before, Side after) {
    for (double reach : HINGE_REACHES) {
      double left = Math.min(before.room, reach);
      double right = Math.min(after.room, reach);
      Point start = before.moved.apply(before.line.atLength(before.at - left));
      Point end = after.moved.apply(after.line.atLength(after.at + right));
      Point first = before.moved.applyVector(LineTurns.onwards(before.line, before.at - left));
      Point last = after.moved.applyVector(LineTurns.backwards(after.line, after.at + right));
      double out = LineTurns.angle(first, end.minus(start));
      double in = LineTurns.angle(end.minus(start), last);
      if (out * in > 0 && Math.max(Math.abs(out), Math.abs(in)) < STEEPEST) {
        // How far it is from either end to where the tangents meet.
        double turn = StrictMath.sin(out + in);
        double firstReach = start.distance(end) * StrictMath.sin(in) / turn;
        double lastReach = start.distance(end) * StrictMath.sin(out) / turn;
        Curve curve =
            ofLength(start, first.times(firstReach), last.times(lastReach), end, left + right);
        if (curve != null) {
          return new Bridge(left, right, curve, 0);
        }
      }
    }
    return null;
  }

  /** A cubic of a length, with handles that are shares of two vectors; null if there is none. */
  private static Curve ofLength(Point start, Point first, Point last, Point end, double length) {
    double low = LEAST_HANDLE;
    double high = MOST_HANDLE;
    if (cubic(start, first, last, end, low).length() > length
        || cubic(start, first, last, end, high).length() < length) {
      return null;
    }
    for (int round = 0; round < 60; round++) {
      double middle = (low + high) / 2;
      if (cubic(start, first, last, end, middle).length() < length) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return cubic(start, first, last, end, high);
  }

  private static Cubic cubic(Point start, Point first, Point last, Point end, double share) {
    return new Cubic(start, start.plus(first.times(share)), end.minus(last.times(share)), end);
  }

  /**
   * A cubic by its ends and tangents. Its handles are those by which a cubic comes nearest to an
   * arc: chord / (3 cos² (turn / 4)).
   */
  private static Curve curve(
      Point start, Point first, double out, Point last, double in, Point end) {
    double chord = start.distance(end);
    if (chord * Math.max(Math.abs(out), Math.abs(in)) < LineTurns.STRAIGHT) {
      return new Line(start, end);
    }
    double cosine = StrictMath.cos((Math.abs(out) + Math.abs(in)) / 4);
    double handle = chord / (3 * cosine * cosine);
    return new Cubic(start, start.plus(first.times(handle)), end.minus(last.times(handle)), end);
  }
}
