package org.lapmark.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Where the moved lines of two neighbours meet when they go on as they run: a straight line
 * straight, an arc as an arc. A line that is too short is drawn on, and one that is too long is
 * cut.
 *
 * <p>Of all places where they meet the nearest to the corner counts, along the lines. It isn't
 * farther from the corner than the limit, unless most of a line that is cut is left.
 */
final class Meeting {
  /** In radians; a corner that turns by less is where one line runs on as the other. */
  private static final double SMOOTH = StrictMath.toRadians(15);

  /** In how many steps a curve is looked at. */
  private static final int STEPS = 48;

  private static final int ROUNDS = 20;

  /** How much of a line may be cut away farther from the corner than the limit. */
  private static final double ROOM = 0.5;

  /** How much farther than the corner's limit a line is drawn on to find where it ends. */
  private static final double AMPLE = 1.05;

  private final List<Curve> before;
  private final List<Curve> after;
  private final boolean cuts;

  private Meeting(List<Curve> before, List<Curve> after, boolean cuts) {
    this.before = before;
    this.after = after;
    this.cuts = cuts;
  }

  /** A place on a run of strips, or beyond its end. */
  private record Spot(int strip, int curve, double t, double away) {
    boolean isBeyond() {
      return strip < 0;
    }
  }

  /** A crossing of two runs. */
  private record Crossing(Spot first, Spot second, Point at) {
    double away() {
      return first.away + second.away;
    }
  }

  /** One of a run's curves, how far from its end it begins, or the line beyond that end. */
  private record Stretch(int strip, int index, Curve curve, double from, boolean backwards) {
    static Stretch beyond(Curve curve) {
      return new Stretch(-1, 0, curve, 0, false);
    }

    Spot spot(double t) {
      double along = backwards ? curve.length() - curve.lengthTo(t) : curve.lengthTo(t);
      return new Spot(strip, index, t, from + along);
    }
  }

  /**
   * Finds where the lines on either side of a corner meet, and cuts them there.
   *
   * @param strips all strips
   * @param meeting which strips meet the next one by themselves
   * @param index the strip before the corner
   * @param sign 1 for outlines that move outwards, -1 inwards
   * @return how they meet; null where they don't, or cross by themselves
   */
  static Meeting of(
      List<Strip> strips, boolean[] meeting, int index, Joint.Met joint, double sign) {
    Strip a = strips.get(index);
    Strip b = strips.get((index + 1) % strips.size());
    double turn = sign * a.turn(b);
    boolean smooth = Math.abs(turn) < SMOOTH;
    double limit = joint.limit() * Math.max(Math.abs(a.distanceOut), Math.abs(b.distanceIn));
    // Where lines run on smoothly their bend tells to which side the outline turns.
    boolean closes = turn + sign * (a.bendOut() + b.bendIn()) * (smooth ? limit / 4 : 0) < 0;
    boolean widerFirst = Math.abs(a.distanceOut) > Math.abs(b.distanceIn);
    if (a.distanceOut == b.distanceIn && (smooth || closes)) {
      // They meet at their ends, or cross by themselves.
      return null;
    }
    List<Strip> first = Strip.run(strips, meeting, index, false);
    List<Strip> second = Strip.run(strips, meeting, index, true);
    double lengthA = length(first);
    double lengthB = length(second);
    double reach = Math.max(AMPLE * limit, ROOM * Math.max(lengthA, lengthB));
    Curve beyondA = a.beyond(true, reach);
    Curve beyondB = b.beyond(false, reach);
    List<Stretch> coreA = stretches(first, true, reach);
    List<Stretch> coreB = stretches(second, false, reach);
    List<Stretch> onA = beyondA == null ? List.of() : List.of(Stretch.beyond(beyondA));
    List<Stretch> onB = beyondB == null ? List.of() : List.of(Stretch.beyond(beyondB));
    Predicate<Crossing> near = crossing -> crossing.at.distance(b.corner) <= limit;
    Crossing best = null;
    // Smooth lines may cross on both sides of the corner: where it closes the wider one goes on.
    if (!smooth || widerFirst == closes) {
      best = crossing(onA, coreB, near.or(found -> found.second.away <= ROOM * lengthB));
    }
    if (!smooth || widerFirst != closes) {
      Predicate<Crossing> fits = near.or(found -> found.first.away <= ROOM * lengthA);
      best = nearer(best, crossing(coreA, onB, fits));
    }
    if (!closes && !smooth) {
      best = nearer(best, crossing(onA, onB, near));
    }
    Crossing own = crossing(coreA, coreB, near);
    if (best == null || closes && own != null && own.away() <= best.away()) {
      return null;
    }
    return joined(best, first, second, beyondA, beyondB);
  }

  private static double length(List<Strip> run) {
    double length = 0;
    for (Strip strip : run) {
      for (Curve curve : strip.curves()) {
        length += curve.length();
      }
    }
    return length;
  }

  private static Meeting joined(
      Crossing at, List<Strip> first, List<Strip> second, Curve beyondA, Curve beyondB) {
    List<Curve> before = new ArrayList<>();
    List<Curve> after = new ArrayList<>();
    if (at.first.isBeyond()) {
      add(before, beyondA.part(0, at.first.t));
    }
    if (at.second.isBeyond()) {
      add(after, beyondB.part(0, at.second.t).reversed());
    }
    if (!at.first.isBeyond()) {
      Strip.cut(first, false, at.first.strip, at.first.curve, at.first.t);
    }
    if (!at.second.isBeyond()) {
      Strip.cut(second, true, at.second.strip, at.second.curve, at.second.t);
    }
    return new Meeting(before, after, !at.first.isBeyond() || !at.second.isBeyond());
  }

  private static void add(List<Curve> curves, Curve curve) {
    if (curve.start().distance(curve.end()) > Path.JOIN_TOLERANCE) {
      curves.add(curve);
    }
  }

  /** Whether part of a line was cut away. */
  boolean cuts() {
    return cuts;
  }

  /** What joins the lines. */
  List<Part> parts(int first, int second) {
    List<Part> parts = new ArrayList<>();
    before.forEach(curve -> parts.add(new Part(first, curve, 0)));
    after.forEach(curve -> parts.add(new Part(second, curve, 0)));
    return parts;
  }

  /** The curves of a run from the corner away, as far as they may be cut. */
  private static List<Stretch> stretches(List<Strip> run, boolean backwards, double farthest) {
    List<Stretch> stretches = new ArrayList<>();
    double away = 0;
    for (int s = 0; s < run.size() && away < farthest; s++) {
      List<Curve> curves = run.get(s).curves();
      for (int i = 0; i < curves.size(); i++) {
        int at = backwards ? curves.size() - 1 - i : i;
        stretches.add(new Stretch(s, at, curves.get(at), away, backwards));
        away += curves.get(at).length();
      }
    }
    return stretches;
  }

  private static Crossing nearer(Crossing one, Crossing other) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    return other.away() < one.away() ? other : one;
  }

  /** The crossing of two runs that is nearest to the corner. */
  private static Crossing crossing(
      List<Stretch> first, List<Stretch> second, Predicate<Crossing> fits) {
    Crossing best = null;
    for (Stretch one : first) {
      for (Stretch other : second) {
        if (one.curve.bounds().expanded(Tolerances.NUDGE).overlaps(other.curve.bounds())) {
          best = nearer(best, crossing(one, other, fits));
        }
      }
    }
    return best;
  }

  private static Crossing crossing(Stretch one, Stretch other, Predicate<Crossing> fits) {
    Crossing best = null;
    int steps = one.curve.isStraight() ? 1 : STEPS;
    int others = other.curve.isStraight() ? 1 : STEPS;
    for (int i = 0; i < steps; i++) {
      Line chord = new Line(one.curve.at((double) i / steps), one.curve.at((i + 1.0) / steps));
      for (int k = 0; k < others; k++) {
        Line across =
            new Line(other.curve.at((double) k / others), other.curve.at((k + 1.0) / others));
        double[] near = crossing(chord, across);
        double[] at =
            near == null
                ? null
                : refined(one.curve, other.curve, (i + near[0]) / steps, (k + near[1]) / others);
        if (at != null) {
          Crossing found = new Crossing(one.spot(at[0]), other.spot(at[1]), one.curve.at(at[0]));
          best = fits.test(found) ? nearer(best, found) : best;
        }
      }
    }
    return best;
  }

  /** Where two chords cross, or would a little beyond their ends. */
  private static double[] crossing(Line one, Line other) {
    Point along = one.end().minus(one.start());
    Point across = other.end().minus(other.start());
    Point apart = other.start().minus(one.start());
    double cross = along.cross(across);
    double s = apart.cross(across) / cross;
    double t = apart.cross(along) / cross;
    boolean near = cross != 0 && Math.abs(s - 0.5) < 1 && Math.abs(t - 0.5) < 1;
    return near ? new double[] {s, t} : null;
  }

  /** The parameters of a crossing on the curves themselves; null if there is none. */
  private static double[] refined(Curve one, Curve other, double first, double second) {
    double u = within(first);
    double v = within(second);
    for (int round = 0; round < ROUNDS; round++) {
      Point gap = other.at(v).minus(one.at(u));
      Point d = one.derivative(u);
      Point e = other.derivative(v);
      double turn = d.cross(e);
      if (Math.abs(turn) < 1e-9 * d.norm() * e.norm() || turn == 0) {
        return null;
      }
      u = within(u + gap.cross(e) / turn);
      v = within(v + gap.cross(d) / turn);
    }
    return one.at(u).distance(other.at(v)) < Path.JOIN_TOLERANCE ? new double[] {u, v} : null;
  }

  private static double within(double parameter) {
    return Math.max(0, Math.min(1, parameter));
  }
}
