package org.lapmark.geometry.offset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Area;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Moves a closed outline outwards or inwards, each of its sides by a distance of its own, which may
 * change evenly along the side.
 *
 * <p>First a line is laid beside every curve, its {@link Parallel} where its distance is one, but
 * nowhere beyond the curve's centres of curvature, so that the curve's normals sweep what lies
 * between in one direction only. Neighbours are joined: at a corner that opens, by their {@link
 * Joint}, which is usually the mitre of the two tangents, or beyond the mitre limit by a straight
 * cut square to the line from corner to mitre; at a corner that closes, by way of the corner; where
 * two sides run on in one direction at different distances, by a straight step. Where sides of
 * different distances meet at an obtuse corner, the narrow side's line goes on until it meets the
 * wide one's parallel, if that leaves at least half of it. The closed line so made crosses itself
 * wherever a parallel doesn't fit: it is cut at its crossings, and what remains is the boundary of
 * what it winds round, as curves.
 *
 * <p>A fold's line goes on straight until it meets its neighbour's line, at an obtuse corner or
 * where it runs on smoothly, so that the unfolded pieces join along one straight line. Only where
 * it meets nothing the neighbour's line ends square to it.
 */
public final class Offset {
  private static final double RIGHT_ANGLE = Math.PI / 2;

  /** Turns of less than this, in radians, are none. */
  private static final double LEVEL = 1e-9;

  /** How much of a strip a narrower neighbour's line may take away, and how much a fold's. */
  private static final double ROOM = 0.5;

  private static final double FOLD_ROOM = 0.95;

  private final List<Side> sides;
  private final double sign;
  private final boolean trims;
  private boolean trimmed;

  private Offset(List<Side> sides, boolean trims) {
    this.trims = trims;
    this.sides = List.copyOf(sides);
    boolean inwards =
        sides.stream().anyMatch(side -> side.distance() < 0 || side.endDistance() < 0);
    boolean outwards =
        sides.stream().anyMatch(side -> side.distance() > 0 || side.endDistance() > 0);
    if (inwards && outwards) {
      throw new IllegalArgumentException("sides move outwards or inwards, not both");
    }
    this.sign = inwards ? -1 : 1;
  }

  /**
   * The moved outline.
   *
   * @param sides the sides in order around a closed outline that runs clockwise on paper and
   *     doesn't cross itself; all distances 0 or more, or all 0 or less
   * @return closed loops, the largest area first; outer loops run clockwise on paper, holes the
   *     other way; each starts as early in the order of sides as it can. None when nothing is left.
   *     Curves join within {@link Path#JOIN_TOLERANCE}.
   * @throws IntricateOutlineException when the moved sides cross each other too often
   * @throws JointException when a side's joint can't be drawn
   */
  public static List<List<Part>> loops(List<Side> sides) {
    Offset offset = new Offset(sides, true);
    List<List<Part>> loops = offset.loops();
    // Trimming can cut into the outline itself where it is narrower than the distances.
    return !offset.trimmed || offset.covers(loops) ? loops : new Offset(sides, false).loops();
  }

  private boolean covers(List<List<Part>> loops) {
    if (sign < 0) {
      return true;
    }
    if (loops.isEmpty()) {
      return false;
    }
    Path outer = new Path(loops.get(0).stream().map(Part::curve).toList());
    List<Curve> curves = new ArrayList<>();
    sides.forEach(side -> curves.addAll(side.path().curves()));
    Path outline = new Path(curves);
    return curves.stream().noneMatch(curve -> parts(outer, curve, false))
        && outer.curves().stream().noneMatch(curve -> parts(outline, curve, true));
  }

  /** Whether a place of a curve lies on the wrong side of an outline. */
  private static boolean parts(Path outline, Curve curve, boolean wrong) {
    for (double t : new double[] {0, 0.25, 0.5, 0.75}) {
      Point point = curve.at(t);
      if (outline.encloses(point) == wrong && outline.distance(point) > 0.01) {
        return true;
      }
    }
    return false;
  }

  private List<List<Part>> loops() {
    List<Part> raw = Seams.closed(raw(), Tolerances.NUDGE);
    List<List<Part>> loops = new ArrayList<>();
    for (List<Part> loop : new Loops(raw, sign).resolved()) {
      loops.add(Seams.straightened(Seams.closed(fromItsFirst(loop), 10 * Tolerances.NUDGE)));
    }
    loops.sort(Comparator.comparingDouble(loop -> -Math.abs(area(loop))));
    return loops;
  }

  static double area(List<Part> loop) {
    return Area.signed(loop.stream().map(Part::curve).toList());
  }

  private static List<Part> fromItsFirst(List<Part> loop) {
    int first = 0;
    for (int i = 1; i < loop.size(); i++) {
      if (rank(loop, i, loop.get(first), isEntry(loop, first)) < 0) {
        first = i;
      }
    }
    List<Part> turned = new ArrayList<>(loop.subList(first, loop.size()));
    turned.addAll(loop.subList(0, first));
    return turned;
  }

  private static int rank(List<Part> loop, int i, Part best, boolean bestIsEntry) {
    Part part = loop.get(i);
    if (part.side() != best.side()) {
      return Integer.compare(part.side(), best.side());
    }
    if (isEntry(loop, i) != bestIsEntry) {
      return bestIsEntry ? 1 : -1;
    }
    return Double.compare(part.order(), best.order());
  }

  private static boolean isEntry(List<Part> loop, int i) {
    return loop.get((i + loop.size() - 1) % loop.size()).side() != loop.get(i).side();
  }

  private List<Strip> strips() {
    List<Strip> strips = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      Side side = sides.get(i);
      double widening = side.endDistance() - side.distance();
      double total = widening == 0 ? 1 : side.path().length();
      double before = 0;
      for (Curve whole : side.path().curves()) {
        for (Curve curve : Parallel.smoothParts(whole)) {
          double from = side.distance() + widening * before / total;
          before += widening == 0 ? 0 : curve.length();
          double to = widening == 0 ? from : side.distance() + widening * before / total;
          if (Loops.isLonger(curve, Path.JOIN_TOLERANCE)) {
            strips.add(new Strip(i, side.fold(), from, to, curve));
          }
        }
      }
    }
    return strips;
  }

  private List<Part> raw() {
    List<Strip> strips = strips();
    int count = strips.size();
    Strip.joinSpikes(strips, sign);
    boolean[] meeting = new boolean[count];
    for (int i = 0; i < count; i++) {
      meeting[i] = strips.get(i).meets(strips.get((i + 1) % count));
    }
    List<Meeting> met = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      met.add(
          trims && !meeting[i] && joint(strips, i) instanceof Joint.Met asked
              ? Meeting.of(strips, meeting, i, asked, sign)
              : null);
      trimmed |= met.get(i) != null && met.get(i).cuts();
    }
    Point[] cuts = new Point[count];
    for (int i = 0; i < count && trims; i++) {
      if (!meeting[i] && met.get(i) == null && !isShaped(strips, i)) {
        cuts[i] = trimmed(strips, i, meeting);
        trimmed |= cuts[i] != null;
      }
    }
    List<List<Part>> shaped = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      shaped.add(isShaped(strips, i) ? shaped(strips, i, meeting) : null);
    }
    List<Part> raw = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Strip strip = strips.get(i);
      Strip next = strips.get((i + 1) % count);
      for (Curve curve : strip.curves()) {
        raw.add(new Part(strip.side, curve, raw.size()));
      }
      if (met.get(i) != null) {
        for (Part part : met.get(i).parts(strip.side, next.side)) {
          raw.add(new Part(part.side(), part.curve(), raw.size()));
        }
      } else if (shaped.get(i) != null) {
        for (Part part : shaped.get(i)) {
          raw.add(new Part(part.side(), part.curve(), raw.size()));
        }
      } else if (cuts[i] != null) {
        line(raw, strip.side, strip.end(), cuts[i]);
        line(raw, next.side, cuts[i], next.start());
      } else if (!meeting[i]) {
        join(strip, next, joint(strips, i).mitreLimit(), raw);
      }
    }
    return raw;
  }

  /**
   * How a strip is joined to the next; curves of one side are joined as usual, unless lines are to
   * meet wherever they turn.
   */
  private Joint joint(List<Strip> strips, int index) {
    Strip strip = strips.get(index);
    if (sides.get(strip.side).joint() instanceof Joint.Met met) {
      return met;
    }
    boolean last = index == strips.size() - 1 || strips.get(index + 1).side != strip.side;
    return last && sign > 0 ? sides.get(strip.side).joint() : Joint.USUAL;
  }

  private boolean isShaped(List<Strip> strips, int index) {
    return joint(strips, index) instanceof Joint.Shaped;
  }

  private List<Part> shaped(List<Strip> strips, int index, boolean[] meeting) {
    Strip strip = strips.get(index);
    Strip next = strips.get((index + 1) % strips.size());
    Joint.Shaped joint = (Joint.Shaped) joint(strips, index);
    ShapedEnd end = new ShapedEnd(strips, meeting, index, joint.first());
    if (joint.folds() == 0) {
      return end.square();
    }
    Side side = sides.get(joint.first() ? strip.side : next.side);
    if (side.distance() != side.endDistance()) {
      throw new JointException(strip.side, JointException.Reason.UNEVEN);
    }
    return end.turned(side.path(), joint.folds());
  }

  /** Whether one of two neighbours is a fold and the other isn't. */
  private static boolean isFold(Strip a, Strip b) {
    return a.fold != b.fold;
  }

  /**
   * Where a narrow strip's line, going on past their corner, cuts the end of its wider neighbour:
   * that end is taken away. Null where it doesn't, or where too little of the neighbour would be
   * left.
   */
  private Point trimmed(List<Strip> strips, int index, boolean[] meeting) {
    Strip a = strips.get(index);
    Strip b = strips.get((index + 1) % strips.size());
    Point t = a.directionOut;
    Point u = b.directionIn;
    double turn = sign * a.turn(b);
    if (turn >= RIGHT_ANGLE - Tolerances.CLOSING
        || turn <= (isFold(a, b) ? -Tolerances.SMOOTH : LEVEL)) {
      return null;
    }
    boolean later = isFold(a, b) ? a.fold : Math.abs(b.distanceIn) > Math.abs(a.distanceOut);
    List<Strip> run = Strip.run(strips, meeting, index, later);
    Point from = later ? a.end() : b.start();
    Point along = later ? t : u.times(-1);
    if (!isFold(a, b)) {
      Point corner = b.corner;
      Point gap = b.start().minus(a.end());
      double cross = t.cross(u);
      double ahead = gap.cross(u) / cross;
      double behind = t.cross(gap) / cross;
      double reach = Math.max(Math.abs(a.distanceOut), Math.abs(b.distanceIn));
      Point mitre = a.end().plus(t.times(ahead));
      if (Math.min(ahead, behind) >= -Tolerances.STUB
          || mitre.distance(corner) > limit(Joint.MITRE_LIMIT, reach)) {
        return null;
      }
    }
    return Strip.cut(run, later, from, along, isFold(a, b) ? FOLD_ROOM : ROOM);
  }

  private static double limit(double limit, double reach) {
    return limit * reach * (1 + 1e-12);
  }

  private void join(Strip a, Strip b, double limit, List<Part> raw) {
    Point from = a.end();
    Point to = b.start();
    Point t = a.directionOut;
    Point u = b.directionIn;
    double cross = t.cross(u);
    double turn = a.turn(b);
    boolean closes = turn * sign < -Tolerances.CLOSING;
    double reach = Math.max(Math.abs(a.distanceOut), Math.abs(b.distanceIn));
    int wider = Math.abs(a.distanceOut) > Math.abs(b.distanceIn) ? a.side : b.side;
    Point corner = b.corner;
    if (closes) {
      // By way of the corner, so that the line goes round each strip as a whole.
      line(raw, a.side, from, corner);
      line(raw, b.side, corner, to);
      return;
    }
    Point gap = to.minus(from);
    double ahead = gap.cross(u) / cross;
    double behind = t.cross(gap) / cross;
    Point mitre = from.plus(t.times(ahead));
    boolean parallel = Math.abs(cross) < LEVEL;
    if (!parallel && mitre.distance(corner) <= limit(limit, reach)) {
      if (Math.min(ahead, behind) < -Tolerances.STUB) {
        line(raw, wider, from, to);
        return;
      }
      // A stub backwards over the strip's own end would stay as a spike: the strip's end is bent to
      // the tip instead.
      if (ahead >= 0) {
        line(raw, a.side, from, mitre);
      }
      if (behind >= 0) {
        line(raw, b.side, mitre, to);
      }
    } else if (Math.abs(turn) < RIGHT_ANGLE && (parallel || limit == Joint.MITRE_LIMIT)
        || Math.min(ahead, behind) < -Tolerances.STUB && Math.abs(turn) < RIGHT_ANGLE) {
      line(raw, wider, from, to);
    } else {
      Point away = parallel ? t.minus(u).unit() : mitre.minus(corner).unit();
      blunt(a, b, away, limit * reach, raw);
    }
  }

  private static void blunt(Strip a, Strip b, Point away, double reach, List<Part> raw) {
    Point from = a.end();
    Point to = b.start();
    Point corner = b.corner;
    double ahead = (reach - from.minus(corner).dot(away)) / a.directionOut.dot(away);
    double behind = (reach - to.minus(corner).dot(away)) / -b.directionIn.dot(away);
    if (!(ahead >= 0 && behind >= 0)) {
      line(raw, a.side, from, to);
      return;
    }
    Point left = from.plus(a.directionOut.times(ahead));
    Point right = to.minus(b.directionIn.times(behind));
    Point middle = left.towards(right, 0.5);
    line(raw, a.side, from, left);
    line(raw, a.side, left, middle);
    line(raw, b.side, middle, right);
    line(raw, b.side, right, to);
  }

  private static void line(List<Part> raw, int side, Point from, Point to) {
    if (from.distance(to) > Path.JOIN_TOLERANCE) {
      raw.add(new Part(side, new Line(from, to), raw.size()));
    }
  }
}
