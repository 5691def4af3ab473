package org.lapmark.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;

/** Crossings and insides, held against chords that are found by other means. */
class CrossingsTest {
  /** How far chords stray from their curves, in millimetres. */
  private static final double FINE = 0.01;

  /** How far the crossing of two chords may lie from that of their curves. */
  private static final double OFF = 0.5;

  /** Curves whose directions differ by less, as a sine, run on together for chords. */
  private static final double ALONG = 0.05;

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Point any(Random random) {
    return p(200 * random.nextDouble(), 200 * random.nextDouble());
  }

  /** A path of lines, arcs and cubics. */
  private static Path path(Random random, int count, boolean closed) {
    List<Curve> curves = new ArrayList<>();
    Point start = any(random);
    Point at = start;
    for (int i = 0; i < count; i++) {
      Point next = closed && i == count - 1 ? start : any(random);
      curves.add(
          switch (random.nextInt(3)) {
            case 0 -> new Line(at, next);
            case 1 ->
                Arc.fromEndpoints(
                    at,
                    20 + 200 * random.nextDouble(),
                    20 + 200 * random.nextDouble(),
                    360 * random.nextDouble(),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    next);
            default -> new Cubic(at, any(random), any(random), next);
          });
      at = next;
    }
    return new Path(curves);
  }

  /** Crossings of chords, by another library. */
  private static List<Point> byChords(Path one, Path other) {
    List<Point> first = one.flattened(FINE);
    List<Point> second = other.flattened(FINE);
    List<Point> found = new ArrayList<>();
    RobustLineIntersector lines = new RobustLineIntersector();
    for (int i = 1; i < first.size(); i++) {
      Box box = new Line(first.get(i - 1), first.get(i)).bounds().expanded(1e-9);
      for (int j = 1; j < second.size(); j++) {
        if (box.overlaps(new Line(second.get(j - 1), second.get(j)).bounds().expanded(1e-9))) {
          lines.computeIntersection(
              coordinate(first.get(i - 1)),
              coordinate(first.get(i)),
              coordinate(second.get(j - 1)),
              coordinate(second.get(j)));
          for (int k = 0; k < lines.getIntersectionNum(); k++) {
            Coordinate met = lines.getIntersection(k);
            Point point = p(met.x, met.y);
            if (found.stream().noneMatch(known -> known.distance(point) < 1e-3)) {
              found.add(point);
            }
          }
        }
      }
    }
    return found;
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.x(), point.y());
  }

  /** By which angle curves cross: where they run on together chords tell another story. */
  private static double sine(Path one, Path other, Crossings.OfPaths crossing) {
    Point u = one.curves().get(crossing.first().curve()).tangent(crossing.first().parameter());
    Point v = other.curves().get(crossing.second().curve()).tangent(crossing.second().parameter());
    return Math.abs(u.cross(v));
  }

  @Property(tries = 150)
  void pathsCrossWhereTheirChordsDo(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
    Random random = new Random(seed);
    Path one = path(random, 3, false);
    Path other = path(random, 4, true);
    List<Crossings.OfPaths> found = Crossings.of(one, other);
    for (int i = 0; i < found.size(); i++) {
      Crossings.OfPaths crossing = found.get(i);
      assertEquals(0, one.at(crossing.first()).distance(crossing.point()), 1e-9);
      assertEquals(0, other.at(crossing.second()).distance(crossing.point()), 1e-6);
      assertTrue(i == 0 || found.get(i - 1).first().compareTo(crossing.first()) <= 0);
    }
    // A crossing of chords lies within some chord errors of one of the curves, unless these run on
    // together.
    List<Point> chords = byChords(one, other);
    for (Point point : chords) {
      boolean known = found.stream().anyMatch(met -> met.point().distance(point) < OFF);
      assertTrue(known || touches(one, other, point), "missed " + point);
    }
    for (Crossings.OfPaths crossing : found) {
      if (sine(one, other, crossing) > ALONG) {
        assertTrue(
            chords.stream().anyMatch(point -> point.distance(crossing.point()) < OFF),
            "made up " + crossing);
      }
    }
  }

  /** Whether two paths run in one direction where they come next to a point. */
  private static boolean touches(Path one, Path other, Point point) {
    Point u = one.tangentAtLength(one.nearestLength(point));
    Point v = other.tangentAtLength(other.nearestLength(point));
    return Math.abs(u.cross(v)) < 2 * ALONG;
  }

  @Property(tries = 300)
  void straightLinesAreCrossedWhereSidesChange(
      @ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
    Random random = new Random(seed);
    Path path = path(random, 5, true);
    Point from = any(random);
    Point direction = any(random).minus(p(100, 100)).unit();
    List<Crossings.OnStraight> found = Crossings.straight(path, from, direction);
    // A closed path comes back to the side on which it begins.
    assertEquals(0, found.size() % 2);
    double last = Double.NEGATIVE_INFINITY;
    for (Crossings.OnStraight crossing : found) {
      Point at = path.at(crossing.place());
      assertEquals(0, from.plus(direction.times(crossing.along())).distance(at), 1e-9);
      assertTrue(crossing.along() >= last);
      last = crossing.along();
    }
    Path line =
        Path.polyline(List.of(from.minus(direction.times(1e3)), from.plus(direction.times(1e3))));
    for (Point point : byChords(line, path)) {
      boolean known = found.stream().anyMatch(one -> path.at(one.place()).distance(point) < OFF);
      assertTrue(known || touches(line, path, point), "missed " + point);
    }
    double reach =
        found.stream()
            .mapToDouble(Crossings.OnStraight::along)
            .filter(a -> a > 0)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    assertEquals(reach, Crossings.reach(path, from, direction));
  }

  @Property(tries = 150)
  void stretchesInsideAreThoseWhosePointsAre(
      @ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
    Random random = new Random(seed);
    Path outline = path(random, 4, true);
    Path line = path(random, 2, false);
    for (double margin : new double[] {0, 1e-3, 3}) {
      Inside inside = new Inside(outline, margin);
      List<Inside.Stretch> stretches = inside.stretches(line);
      double before = -1;
      for (Inside.Stretch stretch : stretches) {
        double from = line.lengthTo(stretch.from());
        double to = line.lengthTo(stretch.to());
        assertTrue(from >= before && to > from);
        assertEquals(to - from, stretch.path().length(), 1e-5);
        before = to;
        for (double end : new double[] {from, to}) {
          boolean atEnd = end < 1e-6 || end > line.length() - 1e-6;
          double off = Math.abs(outline.distance(line.atLength(end)) - margin);
          assertTrue(atEnd || off < 1e-6, "ends " + off + " off");
        }
      }
      for (int i = 0; i <= 500; i++) {
        double at = line.length() * i / 500;
        Point point = line.atLength(at);
        boolean in =
            stretches.stream()
                .anyMatch(
                    one ->
                        at >= line.lengthTo(one.from()) - 1e-9
                            && at <= line.lengthTo(one.to()) + 1e-9);
        // Next to a border rounding decides.
        if (Math.abs(outline.distance(point) - margin) > 1e-6 && inside.has(point) != in) {
          assertTrue(margin > 0 && isShort(inside, line, at), "at " + at);
        }
      }
      double sum = stretches.stream().mapToDouble(one -> one.path().length()).sum();
      assertEquals(line.length() - sum, inside.outside(line), 1e-6);
    }
  }

  /** Whether a line is on its side of the margin for so short a way that it may be missed. */
  private static boolean isShort(Inside inside, Path line, double at) {
    double reach = Math.max(2, line.length() / 32);
    boolean here = inside.has(line.atLength(at));
    for (int i = -50; i <= 50; i++) {
      double near = Math.max(0, Math.min(line.length(), at + reach * i / 50));
      if (inside.has(line.atLength(near)) != here) {
        return true;
      }
    }
    return false;
  }

  @Test
  void whatGoesInAndOutBetweenTwoLooksIsSeen() {
    Path outline = Path.rectangle(new Box(0, 0, 100, 100));
    // A cusp of a tenth of a millimetre reaches in.
    Path line = new Path(List.of(new Cubic(p(40, -1), p(50, 0.4), p(50, 0.4), p(60, -1))));
    List<Inside.Stretch> stretches = new Inside(outline, 0).stretches(line);
    assertEquals(1, stretches.size());
    assertEquals(0, stretches.get(0).path().start().y(), 1e-9);
    assertEquals(0, stretches.get(0).path().end().y(), 1e-9);
    assertTrue(stretches.get(0).path().length() < 5);
  }

  @Test
  void aCrossingAtAJoinIsOne() {
    Path line = Path.polyline(List.of(p(0, 0), p(10, 0), p(20, 0)));
    Path other = Path.polyline(List.of(p(10, -5), p(10, 0), p(10, 5)));
    List<Crossings.OfPaths> found = Crossings.of(line, other);
    assertEquals(1, found.size());
    assertEquals(p(10, 0), found.get(0).point());
  }

  @Test
  void aClosedPathIsPartedOverItsStart() {
    Path square = Path.rectangle(new Box(0, 0, 10, 10));
    assertEquals(15, square.around(30, 5).length(), 1e-9);
    assertEquals(p(0, 10), square.around(30, 5).start());
    assertEquals(p(5, 0), square.around(30, 5).end());
    assertEquals(10, square.around(30, 0).length(), 1e-9);
    assertEquals(5, square.around(40, 5).length(), 1e-9);
    assertEquals(40, square.around(7, 7).length(), 1e-9);
    Path.Place place = square.place(12.5);
    assertEquals(12.5, square.lengthTo(place), 1e-9);
    assertTrue(square.between(place, place).isEmpty());
    assertEquals(2.5, square.between(square.place(10), place).orElseThrow().length(), 1e-9);
  }

  @Test
  void linesThatLieOnEachOtherHaveAnAnswer() {
    Cubic cubic = new Cubic(p(0, 0), p(40, 50), p(80, -50), p(120, 0));
    Path one = new Path(List.of(cubic));
    Path other = new Path(List.of(cubic.part(0.2, 0.9)));
    assertTrue(Crossings.of(one, other).size() < 10_000);
    Path closed = other.then(Path.polyline(List.of(other.end(), p(60, 200), other.start())));
    Inside inside = new Inside(closed, 1e-3);
    double sum = inside.stretches(one).stream().mapToDouble(s -> s.path().length()).sum();
    assertEquals(other.length(), sum, 0.1);
  }
}
