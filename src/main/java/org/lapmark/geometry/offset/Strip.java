package org.lapmark.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Point;

/**
 * What lies beside a curve up to the line that its allowance gives it, as far as its neighbours
 * leave it, with what its joins need.
 *
 * <p>The line stops at the curve's centres of curvature. A strip whose line begins or ends there
 * has a spike: a straight line on, as far as its distance would have reached, where its neighbour
 * goes on at that distance.
 */
final class Strip {
  /** A line that bends by less than this, in radians, goes on straight. */
  private static final double FLAT = 1e-9;

  /** A line that goes on as a circle doesn't turn farther than a right angle. */
  private static final double MOST_SWEEP = Math.PI / 2;

  final int side;
  final boolean fold;
  final double distanceIn;
  final double distanceOut;

  /** Where the curve itself begins. */
  final Point corner;

  /** The directions of the curve at its ends. */
  final Point tangentIn;

  final Point tangentOut;

  /** The directions of the line at its ends, which differ where its distance changes. */
  final Point directionIn;

  final Point directionOut;

  private final boolean spikedIn;
  private final boolean spikedOut;
  private final Curve curve;
  private final Point centreIn;
  private final Point centreOut;
  private List<Curve> curves;
  private double length = -1;
  private Point start;
  private Point end;

  Strip(int side, boolean fold, double distanceIn, double distanceOut, Curve curve) {
    this.side = side;
    this.curve = curve;
    this.fold = fold;
    this.distanceIn = distanceIn;
    this.distanceOut = distanceOut;
    this.corner = curve.start();
    this.tangentIn = curve.tangent(0);
    this.tangentOut = curve.tangent(1);
    double slope = distanceIn == distanceOut ? 0 : (distanceOut - distanceIn) / curve.length();
    this.directionIn = turned(tangentIn, slope);
    this.directionOut = turned(tangentOut, slope);
    this.curves = Parallel.toCentres(curve, distanceIn, distanceOut);
    this.start = curve.start().plus(Parallel.outwards(tangentIn).times(distanceIn));
    this.end = curve.end().plus(Parallel.outwards(tangentOut).times(distanceOut));
    double asideIn = Parallel.toCentre(curve, 0, distanceIn);
    double asideOut = Parallel.toCentre(curve, 1, distanceOut);
    this.spikedIn = asideIn != distanceIn;
    this.spikedOut = asideOut != distanceOut;
    this.centreIn = curve.start().plus(Parallel.outwards(tangentIn).times(asideIn));
    this.centreOut = curve.end().plus(Parallel.outwards(tangentOut).times(asideOut));
  }

  private static Point turned(Point tangent, double slope) {
    return slope == 0 ? tangent : tangent.plus(Parallel.outwards(tangent).times(slope)).unit();
  }

  /** What is left of the line. */
  List<Curve> curves() {
    return curves;
  }

  Point start() {
    return start;
  }

  Point end() {
    return end;
  }

  /** By how much the outline turns at the join with the next strip, in radians. */
  double turn(Strip next) {
    return StrictMath.atan2(tangentOut.cross(next.tangentIn), tangentOut.dot(next.tangentIn));
  }

  boolean meets(Strip next) {
    return end.distance(next.start) <= Tolerances.NUDGE;
  }

  /**
   * Adds spikes where a corner opens. Elsewhere nothing would lie between them and what follows:
   * there the strips go on from their centres.
   *
   * @param sign 1 for outlines that move outwards, -1 inwards
   */
  static void joinSpikes(List<Strip> strips, double sign) {
    for (int i = 0; i < strips.size(); i++) {
      Strip strip = strips.get(i);
      Strip next = strips.get((i + 1) % strips.size());
      boolean opens = sign * strip.turn(next) > Tolerances.CLOSING && !strip.meets(next);
      if (strip.spikedOut && opens) {
        strip.curves = joined(strip.curves, List.of(new Line(strip.centreOut, strip.end)));
      } else if (strip.spikedOut) {
        strip.end = strip.centreOut;
      }
      if (next.spikedIn && opens) {
        next.curves = joined(List.of(new Line(next.start, next.centreIn)), next.curves);
      } else if (next.spikedIn) {
        next.start = next.centreIn;
      }
    }
  }

  private static List<Curve> joined(List<? extends Curve> first, List<? extends Curve> second) {
    List<Curve> both = new ArrayList<>(first);
    both.addAll(second);
    return both;
  }

  /** The line's length before anything was cut off, so that both ends are cut alike. */
  private double length() {
    if (length < 0) {
      length = curves.stream().mapToDouble(Curve::length).sum();
    }
    return length;
  }

  /**
   * The strips of one side that meet, from a corner away from it.
   *
   * @param index the strip before the corner
   * @param later whether those behind the corner are wanted, else those before it, backwards
   */
  static List<Strip> run(List<Strip> strips, boolean[] meeting, int index, boolean later) {
    List<Strip> run = new ArrayList<>();
    int count = strips.size();
    int at = later ? (index + 1) % count : index;
    do {
      run.add(strips.get(at));
      int join = later ? at : Math.floorMod(at - 1, count);
      at = Math.floorMod(at + (later ? 1 : -1), count);
      if (!meeting[join] || strips.get(at).side != run.get(0).side) {
        break;
      }
    } while (run.size() < count);
    return run;
  }

  /**
   * Takes away that end of a run of strips which a ray cuts off.
   *
   * @param run strips that meet, from the end in question inwards
   * @param fromStart whether that end is the run's start in the direction of travel
   * @param from where the ray begins
   * @param along the ray's direction
   * @param room the greatest share of the run's length that may be taken away
   * @return where the run now ends, or null when the ray misses it or would take too much; the run
   *     is then as before
   */
  static Point cut(List<Strip> run, boolean fromStart, Point from, Point along, double room) {
    double left = room * run.stream().mapToDouble(Strip::length).sum();
    for (int k = 0; k < run.size(); k++) {
      List<Curve> curves = run.get(k).curves;
      for (int i = 0; i < curves.size(); i++) {
        int here = fromStart ? i : curves.size() - 1 - i;
        Curve curve = curves.get(here);
        double t = firstMeeting(curve, fromStart, from, along);
        if (Double.isNaN(t)) {
          left -= curve.length();
        } else {
          left -= fromStart ? curve.lengthTo(t) : curve.length() - curve.lengthTo(t);
          return left < 0 ? null : cutAt(run.subList(0, k + 1), fromStart, here, t);
        }
      }
    }
    return null;
  }

  private static Point cutAt(List<Strip> run, boolean fromStart, int curve, double t) {
    Strip last = run.get(run.size() - 1);
    Curve whole = last.curves.get(curve);
    List<Curve> rest = new ArrayList<>();
    if (fromStart) {
      rest.add(whole.part(t, 1));
      rest.addAll(last.curves.subList(curve + 1, last.curves.size()));
    } else {
      rest.addAll(last.curves.subList(0, curve));
      rest.add(whole.part(0, t));
    }
    run.forEach(strip -> strip.curves = List.of());
    last.curves = rest;
    Point cut = whole.at(t);
    if (fromStart) {
      run.get(0).start = cut;
    } else {
      run.get(0).end = cut;
    }
    return cut;
  }

  /** How the curve bends where it begins: above 0 to the right. */
  double bendIn() {
    return bend(0);
  }

  /** How the curve bends where it ends. */
  double bendOut() {
    return bend(1);
  }

  private double bend(double t) {
    double bend = curve.curvature(t);
    return Double.isFinite(bend) ? bend : 0;
  }

  /**
   * How the line would go on beyond one of its ends: straight beside a straight end, else as the
   * circle that has its bend there.
   *
   * @param beyondEnd whether beyond its end, travelled onwards; else beyond its start, backwards
   * @param length how far
   * @return a curve that begins at the line's end; null where the line ends at a centre
   */
  Curve beyond(boolean beyondEnd, double length) {
    if (beyondEnd ? spikedOut : spikedIn) {
      return null;
    }
    Point from = beyondEnd ? end : start;
    Point along = beyondEnd ? directionOut : directionIn.times(-1);
    double own = bend(beyondEnd ? 1 : 0);
    double distance = beyondEnd ? distanceOut : distanceIn;
    // To the left of travel a curve that turns to the right gets wider.
    double bend = own / (1 + own * distance);
    bend = beyondEnd ? bend : -bend;
    if (!(Math.abs(bend) * length > FLAT)) {
      return new Line(from, from.plus(along.times(length)));
    }
    double radius = 1 / Math.abs(bend);
    Point centre = from.plus(along.quarterTurn().times(Math.signum(bend) * radius));
    Point out = from.minus(centre);
    double sweep = Math.min(length / radius, MOST_SWEEP) * Math.signum(bend);
    return Arc.ofCircle(centre, radius, StrictMath.atan2(out.y(), out.x()), sweep);
  }

  /**
   * Takes away that end of a run of strips which lies before a place.
   *
   * @param run strips that meet, from the end in question inwards
   * @param fromStart whether that end is the run's start in the direction of travel
   * @param strip the index of the strip in the run
   * @param curve the index of the curve in that strip's line
   * @param t the place on the curve
   */
  static void cut(List<Strip> run, boolean fromStart, int strip, int curve, double t) {
    cutAt(run.subList(0, strip + 1), fromStart, curve, t);
  }

  /** The parameter at which a curve first meets a ray, seen from one of its ends; NaN if never. */
  private static double firstMeeting(Curve curve, boolean fromStart, Point from, Point along) {
    double first = Double.NaN;
    for (double met : Crossings.parameters(curve, from, along)) {
      if (along.dot(curve.at(met).minus(from)) > Tolerances.STUB) {
        first = met;
        if (fromStart) {
          return first;
        }
      }
    }
    return first;
  }
}
