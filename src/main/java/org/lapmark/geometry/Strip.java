package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.List;

/** A curve's parallel, as far as its neighbours leave it, with what its joins need. */
final class Strip {
  private static final int SAMPLES = 32;

  final int side;
  final double distance;

  /** Where the curve itself begins. */
  final Point corner;

  final Point tangentIn;
  final Point tangentOut;
  private final double length;
  private List<Curve> curves;
  private Point start;
  private Point end;

  Strip(int side, double distance, Curve curve) {
    this.side = side;
    this.distance = distance;
    this.corner = curve.start();
    this.tangentIn = curve.tangent(0);
    this.tangentOut = curve.tangent(1);
    this.curves = Parallel.of(curve, distance);
    this.length = curves.stream().mapToDouble(Curve::length).sum();
    this.start = curve.start().plus(Parallel.outwards(tangentIn).times(distance));
    this.end = curve.end().plus(Parallel.outwards(tangentOut).times(distance));
  }

  /** What is left of the parallel. */
  List<Curve> curves() {
    return curves;
  }

  Point start() {
    return start;
  }

  Point end() {
    return end;
  }

  boolean meets(Strip next) {
    return end.distance(next.start) <= Offset.NUDGE;
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
    double left = room * run.stream().mapToDouble(strip -> strip.length).sum();
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

  /** The parameter at which a curve first meets a ray, seen from one of its ends; NaN if never. */
  private static double firstMeeting(Curve curve, boolean fromStart, Point from, Point along) {
    int steps = curve instanceof Line ? 1 : SAMPLES;
    double before = fromStart ? 0 : 1;
    boolean rightBefore = isRight(curve, before, from, along);
    for (int i = 1; i <= steps; i++) {
      double here = fromStart ? (double) i / steps : 1 - (double) i / steps;
      boolean right = isRight(curve, here, from, along);
      if (right != rightBefore) {
        double low = before;
        double high = here;
        for (int round = 0; round < 60; round++) {
          double middle = (low + high) / 2;
          if (isRight(curve, middle, from, along) == rightBefore) {
            low = middle;
          } else {
            high = middle;
          }
        }
        double found = (low + high) / 2;
        if (along.dot(curve.at(found).minus(from)) > Offset.STUB) {
          return found;
        }
      }
      before = here;
      rightBefore = right;
    }
    return Double.NaN;
  }

  private static boolean isRight(Curve curve, double t, Point from, Point along) {
    return along.cross(curve.at(t).minus(from)) > 0;
  }
}
