package org.lapmark.geometry.offset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Point;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Resolves the loops of a closed line: keeps the boundary of the region that it winds round at
 * least once, clockwise on paper.
 *
 * <p>What crosses what is decided on chords, whose ends are displaced by some millionths of a
 * millimetre: outwards, so that parts that only touch count as overlapping, and by a fixed
 * sequence, so that no three lines meet in a point and no end lies on a chord. With exact
 * orientation tests the answer is then always of one piece. Every crossing is then found on the
 * curves themselves by Newton's rule, and the curves are cut there.
 */
final class Loops {
  private static final double CHORD = 1e-3;
  private static final double BIAS = 3e-6;
  private static final double JITTER = 1e-6;

  /**
   * Shorter parts are left out and their neighbours brought together: they are what remains of
   * loops too small for the chords, and may be crossed still.
   */
  private static final double LEAST = 1e-3;

  /** How many chords are tried together. */
  private static final int GROUP = 16;

  private static final int MOST_CROSSINGS = 20_000;

  /** A chord: of curve {@code curve} between two parameters, or between two curves' ends. */
  private record Chord(int curve, double from, double to, Coordinate start, Coordinate end) {}

  /**
   * One passage of the line through a crossing.
   *
   * @param change how much more often the line winds round what is on its left behind it
   */
  private record Passage(int node, int chord, double fraction, int change) {
    double place() {
      return chord + fraction;
    }
  }

  /** The line between two passages. */
  private record Chain(Passage from, Passage to) {}

  /** A place on the curves themselves. */
  private record Place(int curve, double parameter) {}

  private final List<Part> line;
  private final double sign;
  private final List<Chord> chords = new ArrayList<>();
  private final List<Passage> passages = new ArrayList<>();
  private final List<Place[]> nodes = new ArrayList<>();

  Loops(List<Part> line, double sign) {
    this.line = line;
    this.sign = sign;
  }

  List<List<Part>> resolved() {
    if (line.isEmpty()) {
      return List.of();
    }
    layChords();
    findCrossings();
    List<List<Part>> loops = new ArrayList<>();
    if (passages.isEmpty()) {
      if (Offset.area(line) > 0) {
        loops.add(line);
      }
      return loops;
    }
    passages.sort(Comparator.comparingDouble(Passage::place));
    Chain[] leaving = new Chain[nodes.size()];
    List<Chain> kept = new ArrayList<>();
    int winding = 0;
    for (int i = 0; i < passages.size(); i++) {
      Chain chain = new Chain(passages.get(i), passages.get((i + 1) % passages.size()));
      winding = i == 0 ? windingLeft(chain) : winding + chain.from.change;
      // The line winds round nothing on its left and once round what is on its right.
      if (winding == 0) {
        kept.add(chain);
        leaving[chain.from.node] = chain;
      }
    }
    boolean[] used = new boolean[nodes.size()];
    for (Chain start : kept) {
      List<Part> loop = new ArrayList<>();
      Chain chain = start;
      while (chain != null && !used[chain.from.node]) {
        used[chain.from.node] = true;
        addParts(chain, loop);
        chain = leaving[chain.to.node];
      }
      if (!loop.isEmpty() && chain == start && isMoreThanASliver(loop)) {
        loops.add(loop);
      }
    }
    return loops;
  }

  private static boolean isMoreThanASliver(List<Part> loop) {
    double length = 0;
    for (Part part : loop) {
      length += part.curve().start().distance(part.curve().end());
    }
    return Math.abs(Offset.area(loop)) > Math.max(1e-3, 1e-4 * length);
  }

  static boolean isLonger(Curve curve, double length) {
    return curve.start().distance(curve.end()) > length || curve.length() > length;
  }

  private void layChords() {
    List<Coordinate[]> points = new ArrayList<>();
    int count = 0;
    for (Part part : line) {
      Curve curve = part.curve();
      int steps = curve.chords(CHORD);
      Coordinate[] own = new Coordinate[steps + 1];
      for (int i = 0; i <= steps; i++) {
        own[i] = displaced(curve, (double) i / steps, count++);
      }
      points.add(own);
    }
    for (int c = 0; c < points.size(); c++) {
      Coordinate[] own = points.get(c);
      int steps = own.length - 1;
      for (int i = 0; i < steps; i++) {
        chords.add(new Chord(c, (double) i / steps, (i + 1.0) / steps, own[i], own[i + 1]));
      }
      chords.add(new Chord(c, 1, 1, own[steps], points.get((c + 1) % points.size())[0]));
    }
  }

  private Coordinate displaced(Curve curve, double t, int count) {
    Point aside = Parallel.outwards(curve.tangent(t)).times(sign * BIAS);
    Point at = curve.at(t).plus(aside);
    // Multiples of irrational numbers, modulo one.
    double a = count * 0.7548776662466927;
    double b = count * 0.5698402909980532;
    return new Coordinate(
        at.x() + JITTER * (a - Math.floor(a) - 0.5), at.y() + JITTER * (b - Math.floor(b) - 0.5));
  }

  /** Some consecutive chords and their box. */
  private final class Group {
    final int from;
    final int to;
    final Envelope box = new Envelope();

    Group(int from) {
      this.from = from;
      this.to = Math.min(from + GROUP, chords.size());
      for (int i = from; i < to; i++) {
        box.expandToInclude(chords.get(i).start);
        box.expandToInclude(chords.get(i).end);
      }
    }
  }

  private void findCrossings() {
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < chords.size(); i += GROUP) {
      groups.add(new Group(i));
    }
    groups.sort(Comparator.comparingDouble(group -> group.box.getMinX()));
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      for (int h = g; h < groups.size(); h++) {
        Group other = groups.get(h);
        if (other.box.getMinX() > group.box.getMaxX()) {
          break;
        }
        if (group.box.intersects(other.box)) {
          boolean earlier = group.from <= other.from;
          findCrossings(earlier ? group : other, earlier ? other : group);
        }
      }
    }
  }

  private void findCrossings(Group group, Group other) {
    for (int i = group.from; i < group.to; i++) {
      Chord a = chords.get(i);
      if (!other.box.intersects(a.start, a.end)) {
        continue;
      }
      for (int j = Math.max(i + 2, other.from); j < other.to; j++) {
        Chord b = chords.get(j);
        boolean meet = Envelope.intersects(a.start, a.end, b.start, b.end);
        if (meet && !(i == 0 && j == chords.size() - 1) && cross(i, j)) {
          addCrossing(i, j);
        }
      }
    }
  }

  private boolean cross(int i, int j) {
    Chord a = chords.get(i);
    Chord b = chords.get(j);
    return Orientation.index(a.start, a.end, b.start) != Orientation.index(a.start, a.end, b.end)
        && Orientation.index(b.start, b.end, a.start) != Orientation.index(b.start, b.end, a.end);
  }

  private void addCrossing(int i, int j) {
    if (nodes.size() >= MOST_CROSSINGS) {
      throw new IntricateOutlineException();
    }
    Chord a = chords.get(i);
    Chord b = chords.get(j);
    Point along = point(a.end).minus(point(a.start));
    Point across = point(b.end).minus(point(b.start));
    Point apart = point(b.start).minus(point(a.start));
    double cross = along.cross(across);
    double s = cross == 0 ? 0.5 : within(apart.cross(across) / cross);
    double t = cross == 0 ? 0.5 : within(apart.cross(along) / cross);
    int node = nodes.size();
    // Paper's y runs down: an orientation of 1 is to the right, where the line winds once more.
    int change = Orientation.index(b.start, b.end, a.end);
    passages.add(new Passage(node, i, s, change));
    passages.add(new Passage(node, j, t, -change));
    nodes.add(
        refined(
            new Place(a.curve, a.from + (a.to - a.from) * s),
            new Place(b.curve, b.from + (b.to - b.from) * t)));
  }

  private static double within(double fraction) {
    return Math.max(0, Math.min(1, fraction));
  }

  private static Point point(Coordinate coordinate) {
    return new Point(coordinate.x, coordinate.y);
  }

  /** The crossing on the curves themselves; where it isn't clean, what the chords said. */
  private Place[] refined(Place first, Place second) {
    Curve a = line.get(first.curve).curve();
    Curve b = line.get(second.curve).curve();
    double s = first.parameter;
    double t = second.parameter;
    for (int round = 0; round < 12; round++) {
      Point gap = b.at(t).minus(a.at(s));
      if (gap.norm() < 1e-11) {
        break;
      }
      Point along = a.derivative(s);
      Point across = b.derivative(t);
      double cross = along.cross(across);
      if (Math.abs(cross) < 1e-9 * along.norm() * across.norm() || cross == 0) {
        break;
      }
      s = within(s + gap.cross(across) / cross);
      t = within(t + gap.cross(along) / cross);
    }
    boolean better =
        a.at(s).distance(b.at(t)) <= a.at(first.parameter).distance(b.at(second.parameter)) + 1e-12;
    boolean near =
        a.at(s).distance(a.at(first.parameter)) < 0.05
            && b.at(t).distance(b.at(second.parameter)) < 0.05;
    return better && near
        ? new Place[] {new Place(first.curve, s), new Place(second.curve, t)}
        : new Place[] {first, second};
  }

  /** How often the line winds round what is on a chain's left. */
  private int windingLeft(Chain chain) {
    double from = chain.from.place();
    double to = chain.to.place();
    int total = chords.size();
    if (to <= from) {
      to += total;
    }
    int longest = -1;
    double middle = 0;
    double length = -1;
    for (int k = chain.from.chord; k < to; k++) {
      Chord chord = chords.get(k % total);
      double low = Math.max(0, from - k);
      double high = Math.min(1, to - k);
      double own = chord.start.distance(chord.end) * (high - low);
      if (own > length) {
        length = own;
        longest = k % total;
        middle = (low + high) / 2;
      }
    }
    return windingLeft(longest, middle);
  }

  private int windingLeft(int own, double fraction) {
    Chord chord = chords.get(own);
    Point at = point(chord.start).towards(point(chord.end), fraction);
    double dx = chord.end.x - chord.start.x;
    double dy = chord.end.y - chord.start.y;
    boolean level = Math.abs(dy) >= Math.abs(dx);
    int number = 0;
    for (int k = 0; k < chords.size(); k++) {
      if (k != own) {
        Chord other = chords.get(k);
        number +=
            level
                ? passes(at.y(), at.x(), other.start.y, other.start.x, other.end.y, other.end.x)
                : -passes(at.x(), at.y(), other.start.x, other.start.y, other.end.x, other.end.y);
      }
    }
    // The ray leaves to the right or down the paper: the side it leaves on is left of a line that
    // runs down, or to the left.
    boolean leavesLeft = level ? dy > 0 : dx < 0;
    return leavesLeft ? number : number - 1;
  }

  /** Whether a chord passes beyond a point at its level: 1 upwards in the level, -1 downwards. */
  private static int passes(
      double level, double beyond, double u0, double v0, double u1, double v1) {
    if ((u0 <= level) == (u1 <= level)) {
      return 0;
    }
    double v = v0 + (v1 - v0) * ((level - u0) / (u1 - u0));
    return v > beyond ? (u1 > u0 ? 1 : -1) : 0;
  }

  private Place place(Passage passage) {
    Place[] both = nodes.get(passage.node);
    int curve = chords.get(passage.chord).curve;
    if (both[0].curve == curve && both[1].curve == curve) {
      // A curve that crosses itself: its two passages are told apart by their chords.
      boolean earlier = true;
      for (Passage other : passages) {
        if (other.node == passage.node && other.place() < passage.place()) {
          earlier = false;
        }
      }
      return both[earlier ? 0 : 1];
    }
    return both[0].curve == curve ? both[0] : both[1];
  }

  private void addParts(Chain chain, List<Part> loop) {
    Place from = place(chain.from);
    Place to = place(chain.to);
    int total = line.size();
    boolean wraps = chain.to.place() <= chain.from.place();
    int last = to.curve + (wraps ? total : 0);
    for (int k = from.curve; k <= last; k++) {
      Part part = line.get(k % total);
      double low = k == from.curve ? from.parameter : 0;
      double high = k == last ? to.parameter : 1;
      if (high <= low) {
        continue;
      }
      Curve cut = low == 0 && high == 1 ? part.curve() : part.curve().part(low, high);
      if (isLonger(cut, LEAST)) {
        loop.add(new Part(part.side(), cut, k % total + low));
      }
    }
  }
}
