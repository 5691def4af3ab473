package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where lines cross, on the curves themselves.
 *
 * <p>A straight line is crossed wherever a path gets from one of its sides to the other: none of
 * these places is missed, and each is found to rounding. Two paths cross where one gets from one
 * side of the other to the other side: found within 1e-9 mm as long as they don't run on together
 * there; where they only touch, the place may be told or not. Where paths lie on each other for a
 * stretch nothing is promised but an answer.
 */
public final class Crossings {
  /** Stretches of curves as straight as this, in millimetres, are looked at as chords. */
  private static final double FLAT = 1e-5;

  /** Stretches shorter than this aren't parted further, in millimetres. */
  private static final double SHORT = 0.1;

  /** Directions whose sine is less are looked at on shorter stretches. */
  private static final double ALONG = 1e-3;

  /** How near two curves come to each other where they cross. */
  private static final double MET = 1e-9;

  private static final int ROUNDS = 60;

  private Crossings() {}

  /**
   * A place where a path crosses a straight line.
   *
   * @param along how far along the straight line, in lengths of its direction
   * @param place where on the path
   */
  public record OnStraight(double along, Path.Place place) {}

  /**
   * A place where two paths cross.
   *
   * @param first where on the first
   * @param second where on the second
   * @param point the point, within 1e-9 mm of both
   */
  public record OfPaths(Path.Place first, Path.Place second, Point point) {}

  /**
   * Where a path crosses a straight line without ends.
   *
   * @param path a closed or open path
   * @param from a point of the straight line
   * @param direction its direction, other than zero
   * @return the crossings in order along the straight line. Where two curves of the path meet on
   *     it, within rounding, the start of the later one is the place.
   */
  public static List<OnStraight> straight(Path path, Point from, Point direction) {
    List<OnStraight> found = new ArrayList<>();
    double size = direction.dot(direction);
    boolean closed = path.isClosed();
    boolean left = isLeft(closed ? path.end() : path.start(), from, direction);
    for (int i = 0; i < path.curves().size(); i++) {
      Curve curve = path.curves().get(i);
      if (isLeft(curve.start(), from, direction) != left) {
        double along = direction.dot(curve.start().minus(from)) / size;
        found.add(new OnStraight(along, new Path.Place(i, 0)));
      }
      for (double t : parameters(curve, from, direction)) {
        double along = direction.dot(curve.at(t).minus(from)) / size;
        found.add(new OnStraight(along, new Path.Place(i, t)));
      }
      left = isLeft(curve.end(), from, direction);
    }
    found.sort(Comparator.comparingDouble(OnStraight::along));
    return found;
  }

  /**
   * How far it is from a point along a direction to a path, by the first crossing.
   *
   * @param path the path
   * @param from the point
   * @param direction a vector of length 1
   * @return millimetres above 0, or infinity when the ray misses the path
   */
  public static double reach(Path path, Point from, Point direction) {
    return straight(path, from, direction).stream()
        .mapToDouble(OnStraight::along)
        .filter(along -> along > 0)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The parameters at which a curve crosses a straight line without ends.
   *
   * @param curve the curve
   * @param from a point of the straight line
   * @param direction its direction, other than zero
   * @return the parameters in order; a curve that begins on the straight line crosses it there if
   *     it goes on to its right
   */
  public static List<Double> parameters(Curve curve, Point from, Point direction) {
    List<Double> found = new ArrayList<>();
    double[] turns = curve.turns(direction);
    double before = 0;
    boolean left = isLeft(curve.at(0), from, direction);
    for (int i = 0; i <= turns.length; i++) {
      double next = i == turns.length ? 1 : turns[i];
      boolean then = isLeft(curve.at(next), from, direction);
      if (then != left) {
        double low = before;
        double high = next;
        for (int round = 0; round < ROUNDS; round++) {
          double middle = (low + high) / 2;
          if (isLeft(curve.at(middle), from, direction) == left) {
            low = middle;
          } else {
            high = middle;
          }
        }
        found.add((low + high) / 2);
      }
      before = next;
      left = then;
    }
    return found;
  }

  private static boolean isLeft(Point point, Point from, Point direction) {
    return direction.cross(point.minus(from)) <= 0;
  }

  /**
   * Where two paths cross.
   *
   * @param first a path
   * @param second another
   * @return the crossings in order along the first; one at a join is told once
   */
  public static List<OfPaths> of(Path first, Path second) {
    List<OfPaths> found = new ArrayList<>();
    List<Box> boxes = second.curves().stream().map(Curve::bounds).toList();
    for (int i = 0; i < first.curves().size(); i++) {
      Curve curve = first.curves().get(i);
      Box box = curve.bounds().expanded(Path.JOIN_TOLERANCE);
      for (int j = 0; j < boxes.size(); j++) {
        if (box.overlaps(boxes.get(j).expanded(Path.JOIN_TOLERANCE))) {
          Pair pair = new Pair(curve, second.curves().get(j));
          pair.look(new Span(curve, 0, 1), new Span(pair.second, 0, 1));
          for (double[] met : pair.found) {
            Path.Place place = new Path.Place(i, met[0]);
            found.add(new OfPaths(place, new Path.Place(j, met[1]), curve.at(met[0])));
          }
        }
      }
    }
    found.sort(Comparator.comparing(OfPaths::first).thenComparing(OfPaths::second));
    List<OfPaths> once = new ArrayList<>();
    for (OfPaths crossing : found) {
      if (once.stream().noneMatch(other -> isSame(first, second, crossing, other))) {
        once.add(crossing);
      }
    }
    return once;
  }

  /** Whether two crossings are one that was found on both sides of a join. */
  private static boolean isSame(Path first, Path second, OfPaths one, OfPaths other) {
    return one.point.distance(other.point) <= 2 * Path.JOIN_TOLERANCE
        && isNear(first, one.first, other.first)
        && isNear(second, one.second, other.second);
  }

  private static boolean isNear(Path path, Path.Place one, Path.Place other) {
    int apart = Math.abs(one.curve() - other.curve());
    return apart <= 1 || path.isClosed() && apart == path.curves().size() - 1;
  }

  /** A stretch of a curve with a box around it. */
  private record Span(Curve curve, double from, double to, Point start, Point end, double stray) {
    Span(Curve curve, double from, double to) {
      this(
          curve,
          from,
          to,
          curve.at(from),
          curve.at(to),
          (to - from) * (to - from) * curve.greatestBend() / 8);
    }

    /** How long its chord can be at the most with what it strays. */
    double size() {
      return start.distance(end) + 2 * stray;
    }

    Box box() {
      return new Line(start, end).bounds().expanded(stray + Path.JOIN_TOLERANCE);
    }

    List<Span> halves() {
      double middle = (from + to) / 2;
      return List.of(new Span(curve, from, middle), new Span(curve, middle, to));
    }
  }

  /** Two curves that are parted until they are straight. */
  private static final class Pair {
    private final Curve first;
    private final Curve second;
    private final List<double[]> found = new ArrayList<>();

    Pair(Curve first, Curve second) {
      this.first = first;
      this.second = second;
    }

    private void look(Span one, Span other) {
      if (!one.box().overlaps(other.box())) {
        return;
      }
      Point along = one.end.minus(one.start);
      Point across = other.end.minus(other.start);
      boolean flat = one.stray <= FLAT && other.stray <= FLAT;
      boolean apart =
          Math.abs(along.cross(across)) > ALONG * along.norm() * across.norm()
              || first.isStraight() && second.isStraight();
      boolean small = one.size() <= SHORT && other.size() <= SHORT;
      if (flat && apart || small) {
        meet(one, other);
      } else if (other.size() <= SHORT || one.size() > SHORT && one.size() >= other.size()) {
        one.halves().forEach(half -> look(half, other));
      } else {
        other.halves().forEach(half -> look(one, half));
      }
    }

    /** Newton's rule from the chords' crossing. */
    private void meet(Span one, Span other) {
      Point gap = other.start.minus(one.start);
      Point along = one.end.minus(one.start);
      Point across = other.end.minus(other.start);
      double area = along.cross(across);
      double s = one.from + (one.to - one.from) * (area == 0 ? 0.5 : gap.cross(across) / area);
      double t = other.from + (other.to - other.from) * (area == 0 ? 0.5 : gap.cross(along) / area);
      s = Math.max(one.from, Math.min(one.to, s));
      t = Math.max(other.from, Math.min(other.to, t));
      for (int round = 0; round < 20; round++) {
        Point apart = second.at(t).minus(first.at(s));
        Point u = first.derivative(s);
        Point v = second.derivative(t);
        double cross = u.cross(v);
        if (apart.norm() <= MET / 10 || cross == 0) {
          break;
        }
        s = clamped(s + apart.cross(v) / cross);
        t = clamped(t + apart.cross(u) / cross);
      }
      // At a join the curves end within its tolerance of each other.
      boolean atEnd = s == 0 || s == 1 || t == 0 || t == 1;
      double gapLeft = second.at(t).distance(first.at(s));
      if (gapLeft <= (atEnd ? Path.JOIN_TOLERANCE : MET)
          && isWithin(s, one)
          && isWithin(t, other)) {
        add(s, t);
      }
    }

    private static double clamped(double t) {
      return Math.max(0, Math.min(1, t));
    }

    private static boolean isWithin(double t, Span span) {
      double margin = 1e-3 * (span.to - span.from);
      return t >= span.from - margin && t <= span.to + margin;
    }

    private void add(double s, double t) {
      Point point = first.at(s);
      boolean known =
          found.stream()
              .anyMatch(
                  met ->
                      first.at(met[0]).distance(point) <= 2 * Path.JOIN_TOLERANCE
                          && Math.abs(met[1] - t) <= 1e-4);
      if (!known) {
        found.add(new double[] {s, t});
      }
    }
  }
}
