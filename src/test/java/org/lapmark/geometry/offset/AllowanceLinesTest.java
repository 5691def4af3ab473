package org.lapmark.geometry.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Allowances of smooth outlines: several of them, changing ones, and against a plain buffer. */
class AllowanceLinesTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Path path(List<Part> loop) {
    return new Path(loop.stream().map(Part::curve).toList());
  }

  private static Path outer(List<Side> sides) {
    return path(Offset.loops(sides).get(0));
  }

  private static Polygon polygon(Path path, double chord) {
    return FACTORY.createPolygon(
        path.flattened(chord).stream()
            .map(point -> new Coordinate(point.x(), point.y()))
            .toArray(Coordinate[]::new));
  }

  private static Side changing(Path path, double from, double to) {
    return new Side(path, from, to, false, Joint.USUAL);
  }

  private record Sample(Path outline, List<Side> sides) {}

  /** A smooth outline whose allowance changes at some places, half of them within its curves. */
  private static Sample sample(int seed, boolean changing) {
    Random random = new Random(seed);
    int count = 5 + random.nextInt(10);
    Path outline = OffsetTest.smooth(random.nextLong(), count, 0.1 + 0.7 * random.nextDouble());
    double length = outline.length();
    TreeSet<Double> places = new TreeSet<>(List.of(0.0));
    int cuts = 1 + random.nextInt(5);
    for (int i = 0; i < cuts; i++) {
      double before = 0;
      int curve = random.nextInt(count);
      for (Curve earlier : outline.curves().subList(0, curve)) {
        before += earlier.length();
      }
      places.add(random.nextBoolean() ? before : random.nextDouble() * length);
    }
    double[] distances = {0, 5, 10, 10, 15, 20};
    List<Double> ends = new ArrayList<>(places);
    ends.add(length);
    List<Side> sides = new ArrayList<>();
    for (int i = 1; i < ends.size(); i++) {
      if (ends.get(i) - ends.get(i - 1) < 0.5) {
        return null;
      }
      double from = distances[random.nextInt(6)];
      double to = changing ? distances[random.nextInt(6)] : from;
      sides.add(changing(outline.part(ends.get(i - 1), ends.get(i)), from, to));
    }
    return outline.selfCrossing().isPresent() ? null : new Sample(outline, sides);
  }

  private static void neverCrosses(int seed, boolean changing) {
    Sample sample = sample(seed, changing);
    if (sample == null) {
      return;
    }
    List<List<Part>> loops = Offset.loops(sample.sides);
    for (List<Part> loop : loops) {
      Path line = path(loop);
      assertTrue(line.isClosed());
      assertTrue(line.selfCrossing().isEmpty(), () -> "crosses at " + line.selfCrossing());
      assertTrue(polygon(line, 0.002).isValid());
    }
    Geometry covered = polygon(path(loops.get(0)), 0.002).buffer(0.01);
    assertTrue(covered.contains(polygon(sample.outline, 0.002)));
  }

  /**
   * As with {@code OffsetTest}'s: {@code -Dlapmark.tries=20000} draws that many from a fresh seed.
   */
  @Test
  void allowancesThatChangeInTightCurvesNeverCross() {
    Integer stated = Integer.getInteger("lapmark.tries");
    Random random = stated == null ? new Random(1) : new Random();
    for (int i = 0; i < (stated == null ? 200 : stated); i++) {
      int seed = random.nextInt(1_000_000_000);
      boolean changing = random.nextBoolean();
      try {
        neverCrosses(seed, changing);
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("sample " + seed + ", " + changing, e);
      }
    }
  }

  /** The allowance of 10 ends where the curve's radius is 4. */
  @Test
  void allowanceThatEndsInATightBayStopsAtItsCentres() {
    Arc bay = Arc.ofCircle(p(50, 20), 4, Math.PI, -Math.PI);
    Path around =
        Path.polyline(
            List.of(
                p(54, 20),
                p(54, 0),
                p(100, 0),
                p(100, 60),
                p(0, 60),
                p(0, 0),
                p(46, 0),
                p(46, 20)));
    List<Side> sides =
        List.of(
            new Side(new Path(List.of(bay.part(0, 0.5))), 10),
            new Side(new Path(List.of(bay.part(0.5, 1))), 1),
            new Side(around, 1));
    Path line = outer(sides);
    assertTrue(line.selfCrossing().isEmpty());
    // Half of the bay is filled as far as its centre, the other half keeps its parallel.
    assertTrue(line.encloses(p(49, 21)));
    assertFalse(line.encloses(p(51, 21)));
    assertEquals(0, line.distance(p(50, 23)), 0.01);
  }

  @Property(tries = 100, seed = "20240501")
  void changingAllowancesFollowTheirNormals(
      @ForAll @DoubleRange(min = 0.3, max = 0.55) double handle,
      @ForAll @DoubleRange(min = 0, max = 30) double from,
      @ForAll @DoubleRange(min = 0, max = 30) double to) {
    Cubic quarter = new Cubic(p(100, 0), p(100, 70 * handle), p(100 * handle, 70), p(0, 70));
    Arc round = new Arc(p(0, 0), 100, 70, 0, Math.PI / 2, Math.PI / 2);
    Path lower = new Path(List.of(quarter, round));
    Path upper = new Path(List.of(new Line(p(-100, 0), p(100, 0))));
    Path line = outer(List.of(changing(lower, from, to), changing(upper, to, from)));
    double length = lower.length();
    for (int i = 2; i < 100; i++) {
      double at = length * i / 100;
      Point normal = lower.tangentAtLength(at).quarterTurn().times(-1);
      Point expected = lower.atLength(at).plus(normal.times(from + (to - from) * i / 100));
      assertEquals(0, line.distance(expected), 0.02);
    }
    for (int i = 0; i <= 20; i++) {
      Point expected = p(-100 + 10 * i, -to - (from - to) * i / 20.0);
      // The straight side's own line may end where the other one's crosses it.
      if (Math.abs(expected.x()) < 60) {
        assertEquals(0, line.distance(expected), 1e-6);
      }
    }
  }

  /** A spiral r = a + b angle; its cubics are Hermite interpolants, far closer than is asked. */
  @ParameterizedTest
  @ValueSource(doubles = {-15, -3, 4, 12, 18})
  void parallelsOfASpiralAreItsOwn(double distance) {
    List<Curve> curves = new ArrayList<>();
    double step = Math.PI / 16;
    for (int i = 0; i < 24; i++) {
      double a = i * step;
      double b = a + step;
      Point from = spiral(a);
      Point to = spiral(b);
      Point first = from.plus(slope(a).times(step / 3));
      curves.add(new Cubic(from, first, to.minus(slope(b).times(step / 3)), to));
    }
    Path spiral = new Path(curves);
    List<Curve> parallel = new ArrayList<>();
    spiral.curves().forEach(curve -> parallel.addAll(Parallel.of(curve, distance)));
    List<Path> parts = parallel.stream().map(curve -> new Path(List.of(curve))).toList();
    for (int i = 0; i <= 500; i++) {
      double angle = 24 * step * i / 500;
      Point normal = slope(angle).unit().quarterTurn().times(-distance);
      Point expected = spiral(angle).plus(normal);
      double apart = parts.stream().mapToDouble(part -> part.distance(expected)).min().orElse(9);
      assertTrue(apart < 0.02, () -> "off by " + apart);
    }
  }

  private static Point spiral(double angle) {
    double radius = 40 + 9 * angle;
    return p(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
  }

  private static Point slope(double angle) {
    double radius = 40 + 9 * angle;
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    return p(9 * cos - radius * sin, 9 * sin + radius * cos);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-20, -5, 3, 10, 30})
  void parallelsOfEllipsesAndOfLinesWithArcsAreTheirOwn(double distance) {
    Arc ellipse = new Arc(p(0, 0), 90, 60, 0, 0, 2 * Math.PI);
    Path whole = new Path(List.of(ellipse.part(0, 0.5), ellipse.part(0.5, 1)));
    Path moved = outer(List.of(new Side(whole, distance)));
    Path slot =
        new Path(
            List.of(
                new Line(p(0, -40), p(100, -40)),
                Arc.ofCircle(p(100, 0), 40, -Math.PI / 2, Math.PI),
                new Line(p(100, 40), p(0, 40)),
                Arc.ofCircle(p(0, 0), 40, Math.PI / 2, Math.PI)));
    Path beside = outer(List.of(new Side(slot, distance)));
    for (int i = 0; i < 400; i++) {
      double angle = 2 * Math.PI * i / 400;
      double cos = StrictMath.cos(angle);
      double sin = StrictMath.sin(angle);
      Point normal = p(60 * cos, 90 * sin).unit();
      Point expected = p(90 * cos, 60 * sin).plus(normal.times(distance));
      assertEquals(0, moved.distance(expected), 0.02);
      Point round = p((cos > 0 ? 100 : 0) + (40 + distance) * cos, (40 + distance) * sin);
      assertEquals(0, beside.distance(round), 1e-6);
    }
    assertEquals(4, beside.curves().size());
  }

  @Property(tries = 40, seed = "20240501")
  void similarOutlinesHaveSimilarLines(
      @ForAll @IntRange(max = 1_000_000) int seed,
      @ForAll @DoubleRange(min = 0.4, max = 2) double scale,
      @ForAll @DoubleRange(min = 0, max = 360) double turn) {
    Sample sample = sample(seed, true);
    if (sample == null) {
      return;
    }
    Affine map =
        Affine.rotation(turn).after(Affine.scaling(scale, scale)).after(Affine.translation(7, -3));
    List<Side> images = new ArrayList<>();
    for (Side side : sample.sides) {
      images.add(
          changing(
              side.path().transformed(map), side.distance() * scale, side.endDistance() * scale));
    }
    List<List<Part>> loops = Offset.loops(sample.sides);
    List<List<Part>> others = Offset.loops(images);
    Path line = path(loops.get(0));
    Path image = path(others.get(0));
    assertEquals(line.signedArea() * scale * scale, image.signedArea(), 0.02 * image.length());
    // Where an allowance ends at a centre of curvature the line is less exact.
    Polygon one = polygon(line.transformed(map), 0.001);
    Polygon other = polygon(image, 0.001);
    assertTrue(one.symDifference(other).getArea() < 0.02 * image.length());
  }

  @Test
  void closedOutlinesOfOneSideHaveNoCornerToShape() {
    Path circle = Path.circle(p(0, 0), 20);
    Side side = new Side(circle, 5, 5, false, new Joint.Square(true));
    assertEquals(
        JointException.Reason.CLOSED,
        assertThrows(JointException.class, () -> Offset.loops(List.of(side))).reason());
  }

  /**
   * A thousand smooth outlines against a buffer of a thousand chords and more: nowhere farther
   * apart than 0.05 mm, both ways, and every loop valid.
   */
  @Test
  void aThousandSmoothOutlinesMatchABuffer() {
    Random random = new Random(20240501);
    int compared = 0;
    for (int seed = 0; compared < 1000; seed++) {
      int count = 5 + random.nextInt(10);
      double roughness = 0.1 + 0.6 * random.nextDouble();
      double distance = (random.nextBoolean() ? 1 : -1) * (1 + 19 * random.nextDouble());
      Path outline = OffsetTest.smooth(seed, count, roughness);
      if (outline.selfCrossing().isPresent()) {
        continue;
      }
      compared++;
      compare(outline, distance, "outline " + seed + " at " + distance);
    }
  }

  private static void compare(Path outline, double distance, String sample) {
    // Chords within 0.005 of the curve and of its round corners.
    int chords = (int) Math.ceil(Math.PI / 4 / StrictMath.acos(1 - 0.005 / Math.abs(distance)));
    BufferParameters parameters = new BufferParameters(chords);
    parameters.setSimplifyFactor(1e-4);
    Geometry expected = BufferOp.bufferOp(polygon(outline, 0.005), distance, parameters);
    List<List<Part>> loops = Offset.loops(List.of(new Side(outline, distance)));
    assertEquals(expected.isEmpty(), loops.isEmpty(), sample);
    if (loops.isEmpty()) {
      return;
    }
    List<Geometry> lines = new ArrayList<>();
    for (List<Part> loop : loops) {
      Polygon polygon = polygon(path(loop), 0.005);
      assertTrue(polygon.isValid(), sample);
      lines.add(polygon.getExteriorRing());
    }
    Geometry ours = FACTORY.buildGeometry(lines);
    assertNear(ours, expected.getBoundary(), sample);
    assertNear(expected.getBoundary(), ours, sample);
  }

  /** Between two vertices, at most some millimetres apart, chords don't stray farther. */
  private static void assertNear(Geometry one, Geometry other, String sample) {
    IndexedFacetDistance distance = new IndexedFacetDistance(other);
    for (Coordinate coordinate : one.getCoordinates()) {
      double apart = distance.distance(FACTORY.createPoint(coordinate));
      assertTrue(apart <= 0.05, () -> sample + " strays by " + apart + " at " + coordinate);
    }
  }
}
