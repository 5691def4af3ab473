package org.lapmark.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Brings the ends of neighbouring curves of a loop together. */
final class Seams {
  /** Half of what a path allows, so that a later affine map of the loop keeps within it too. */
  private static final double EXACT = Path.JOIN_TOLERANCE / 2;

  /** A curve shorter than this many gaps is better left as it is. */
  private static final int FEW = 10;

  private Seams() {}

  /**
   * A loop whose curves meet. Gaps up to a bound are closed by moving the end of a line, or else of
   * a cubic; an arc gives way only to another arc, as cubics. A curve hardly longer than the gap
   * would turn about: then its longer neighbour moves.
   *
   * @throws IntricateOutlineException when a gap is wider
   */
  static List<Part> closed(List<Part> loop, double bound) {
    List<Part> parts = new ArrayList<>(loop);
    for (int i = 0; i < parts.size(); i++) {
      int next = (i + 1) % parts.size();
      Curve before = parts.get(i).curve();
      Curve after = parts.get(next).curve();
      double gap = before.end().distance(after.start());
      if (gap <= EXACT) {
        continue;
      }
      if (!(gap <= bound)) {
        throw new IntricateOutlineException(gap);
      }
      if (before instanceof Arc arc && after instanceof Arc) {
        List<Cubic> cubics = arc.cubics();
        Part part = parts.remove(i);
        for (int k = 0; k < cubics.size(); k++) {
          parts.add(i + k, new Part(part.side(), cubics.get(k), part.order()));
        }
        i--;
      } else if (laterMoves(before, after, gap)) {
        parts.set(next, with(parts.get(next), moved(after, before.end(), after.end())));
      } else {
        parts.set(i, with(parts.get(i), moved(before, before.start(), after.start())));
      }
    }
    return parts;
  }

  private static boolean laterMoves(Curve before, Curve after, double gap) {
    if (before instanceof Arc || after instanceof Arc) {
      return before instanceof Arc;
    }
    boolean later = !before.isStraight() && after.isStraight();
    double moving = (later ? after : before).length();
    double staying = (later ? before : after).length();
    return moving < FEW * gap && staying > moving ? !later : later;
  }

  private static Part with(Part part, Curve curve) {
    return new Part(part.side(), curve, part.order());
  }

  private static Curve moved(Curve curve, Point start, Point end) {
    if (curve instanceof Cubic cubic) {
      return new Cubic(
          start,
          cubic.control1().plus(start.minus(cubic.start())),
          cubic.control2().plus(end.minus(cubic.end())),
          end);
    }
    return new Line(start, end);
  }

  /** A loop in which lines that go on in one direction on one side are one line. */
  static List<Part> straightened(List<Part> loop) {
    List<Part> parts = new ArrayList<>();
    for (Part part : loop) {
      Part last = parts.isEmpty() ? null : parts.get(parts.size() - 1);
      if (last != null && goesOn(last, part)) {
        parts.set(parts.size() - 1, with(last, new Line(last.curve().start(), part.curve().end())));
      } else {
        parts.add(part);
      }
    }
    if (parts.size() > 2 && goesOn(parts.get(parts.size() - 1), parts.get(0))) {
      Part last = parts.remove(parts.size() - 1);
      parts.set(0, with(parts.get(0), new Line(last.curve().start(), parts.get(0).curve().end())));
    }
    return parts;
  }

  private static boolean goesOn(Part a, Part b) {
    if (a.side() != b.side() || !a.curve().isStraight() || !b.curve().isStraight()) {
      return false;
    }
    Point t = a.curve().tangent(0);
    Point u = b.curve().tangent(0);
    double shorter = Math.min(a.curve().length(), b.curve().length());
    return t.dot(u) > 0 && Math.abs(t.cross(u)) * shorter < 1e-9;
  }
}
