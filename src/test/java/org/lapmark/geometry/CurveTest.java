package org.lapmark.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CurveTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  @Test
  void parabolaHasItsAnalyticLength() {
    // y = x²/100 from 0 to 100: control point where the end tangents meet.
    Cubic parabola = Cubic.ofQuadratic(p(0, 0), p(50, 0), p(100, 100));
    double u = 2;
    double expected = 25 * (u * Math.sqrt(1 + u * u) + Math.log(u + Math.sqrt(1 + u * u)));
    assertEquals(expected, parabola.length(), 1e-6);
  }

  @Test
  void semicubicalCuspHasItsAnalyticLength() {
    // (t², t³) scaled by 90, from t = -1 to 1: a true cusp in the middle of the cubic.
    Point[] v = {p(90, -90), p(-30, 90), p(-30, -90), p(90, 90)};
    Cubic cusp = new Cubic(v[0], v[1], v[2], v[3]);
    double half = 90 * (Math.pow(13, 1.5) - 8) / 27;
    assertEquals(2 * half, cusp.length(), 1e-6);
    assertEquals(half, cusp.lengthTo(0.5), 1e-6);
    assertEquals(0.5, cusp.parameterAt(half), 1e-3);
    assertEquals(half, cusp.lengthTo(cusp.parameterAt(half)), 1e-6);
    assertEquals(1, cusp.tangent(0.5).x(), 1e-9);
    assertEquals(List.of(0.5), cusp.cusps());
  }

  @Test
  void cubicDoublingBackOnALineCountsBothWays() {
    Cubic back = new Cubic(p(0, 0), p(100, 0), p(-50, 0), p(50, 0));
    DoubleUnaryOperator x = t -> back.at(t).x();
    double sum = 0;
    int n = 400_000;
    for (int i = 0; i < n; i++) {
      sum += Math.abs(x.applyAsDouble((i + 1.0) / n) - x.applyAsDouble((double) i / n));
    }
    assertEquals(sum, back.length(), 1e-6);
  }

  @Test
  void coincidentControlPointsLeaveTheTangentsLimit() {
    Cubic first = new Cubic(p(0, 0), p(0, 0), p(30, 40), p(100, 0));
    assertEquals(0.6, first.tangent(0).x(), 1e-12);
    assertEquals(0.8, first.tangent(0).y(), 1e-12);
    Cubic last = first.reversed();
    assertEquals(-0.6, last.tangent(1).x(), 1e-12);
    assertEquals(-0.8, last.tangent(1).y(), 1e-12);
    Cubic straight = new Cubic(p(0, 0), p(0, 0), p(10, 0), p(10, 0));
    assertEquals(0, straight.tangent(0).distance(p(1, 0)), 1e-15);
    assertEquals(0, straight.tangent(1).distance(p(1, 0)), 1e-15);
    assertEquals(10, straight.length(), 1e-6);
    Cubic nothing = new Cubic(p(1, 1), p(1, 1), p(1, 1), p(1, 1));
    assertEquals(0, nothing.length());
    assertEquals(0, nothing.parameterAt(3));
  }

  @Test
  void ellipseHasItsAnalyticPerimeter() {
    Arc ellipse = new Arc(p(3, 4), 70, 25, 0.4, 1, 2 * Math.PI);
    double h = Math.pow((70.0 - 25) / (70 + 25), 2);
    double sum = 1;
    double coefficient = 1;
    double power = 1;
    for (int n = 1; n < 60; n++) {
      coefficient *= (0.5 - (n - 1)) / n;
      power *= h;
      sum += coefficient * coefficient * power;
    }
    assertEquals(Math.PI * 95 * sum, ellipse.length(), 1e-6);
    assertEquals(
        ellipse.length(), ellipse.part(0, 0.3).length() + ellipse.part(0.3, 1).length(), 1e-6);
    assertEquals(25 * 70 * Math.PI, new Path(List.of(ellipse)).signedArea(), 1e-8);
  }

  @Test
  void flatEllipseIsWalkedBothWays() {
    Arc flat = new Arc(p(0, 0), 50, 0, 0, 0, 2 * Math.PI);
    assertEquals(200, flat.length(), 1e-6);
    assertEquals(-1, flat.tangent(0).x(), 1e-9);
  }

  @Test
  void quarterCircleMeasuresAsOne() {
    Arc quarter = Arc.ofCircle(p(0, 0), 150, 0, Math.PI / 2);
    assertEquals(75 * Math.PI, quarter.length(), 1e-12);
    assertEquals(0, quarter.tangent(0).distance(p(0, 1)), 1e-15);
    assertEquals(1 / 150.0, quarter.curvature(0.3), 1e-12);
    assertEquals(-1 / 150.0, quarter.reversed().curvature(0.3), 1e-12);
  }

  @Test
  void arcFromEndpointsFollowsTheFlags() {
    // Four arcs of radius 10 over a chord of 10, and a half circle scaled up to reach.
    for (boolean large : new boolean[] {false, true}) {
      for (boolean clockwise : new boolean[] {false, true}) {
        Arc arc =
            assertInstanceOf(
                Arc.class, Arc.fromEndpoints(p(5, 5), 10, 10, 30, large, clockwise, p(15, 5)));
        assertEquals(0, arc.start().distance(p(5, 5)), 1e-12);
        assertEquals(0, arc.end().distance(p(15, 5)), 1e-12);
        assertEquals(clockwise, arc.sweep() > 0);
        assertEquals((large ? 5 : 1) * Math.PI / 3, Math.abs(arc.sweep()), 1e-12);
        // Travelling right, a clockwise arc bulges upwards.
        assertEquals(clockwise, arc.at(0.5).y() < 5);
      }
    }
    Arc half = (Arc) Arc.fromEndpoints(p(0, 0), 1, 2, 0, false, true, p(10, 0));
    assertEquals(5, half.radiusX(), 1e-12);
    assertEquals(10, half.radiusY(), 1e-12);
    assertEquals(-10, half.at(0.5).y(), 1e-9);
    assertInstanceOf(Line.class, Arc.fromEndpoints(p(0, 0), 0, 2, 0, false, true, p(10, 0)));
    assertInstanceOf(Line.class, Arc.fromEndpoints(p(0, 0), 3, 2, 0, false, true, p(0, 0)));
    assertThrows(IllegalArgumentException.class, () -> new Arc(p(0, 0), -1, 1, 0, 0, 1));
  }

  @Provide
  Arbitrary<Point> points() {
    Arbitrary<Double> c = Arbitraries.doubles().between(-300, 300);
    return Combinators.combine(c, c).as(Point::new);
  }

  @Provide
  Arbitrary<Curve> curves() {
    Arbitrary<Curve> lines = Combinators.combine(points(), points()).as(Line::new);
    Arbitrary<Curve> cubics =
        Combinators.combine(points(), points(), points(), points()).as(Cubic::new);
    Arbitrary<Curve> arcs =
        Combinators.combine(
                points(),
                Arbitraries.doubles().between(1, 200),
                Arbitraries.doubles().between(1, 200),
                Arbitraries.doubles().between(-7, 7),
                Arbitraries.doubles().between(-7, 7),
                Arbitraries.doubles().between(-6.28, 6.28))
            .as(Arc::new);
    return Arbitraries.oneOf(lines, cubics, arcs);
  }

  @Provide
  Arbitrary<Affine> maps() {
    Arbitrary<Double> c = Arbitraries.doubles().between(-2, 2);
    return Combinators.combine(c, c, c, c, c, c).as(Affine::new);
  }

  @Property(tries = 200, seed = "20240501")
  void parameterAtInvertsLength(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(max = 1) double f) {
    double length = curve.length();
    assertEquals(f * length, curve.lengthTo(curve.parameterAt(f * length)), 1e-6);
  }

  @Property(tries = 200, seed = "20240501")
  void partsAddUpAndStayOnTheCurve(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(max = 1) double f) {
    Curve first = curve.part(0, f);
    Curve second = curve.part(f, 1);
    assertEquals(curve.length(), first.length() + second.length(), 1e-6);
    assertEquals(0, first.at(0.5).distance(curve.at(f / 2)), 1e-9);
    assertEquals(0, second.at(0.25).distance(curve.at(f + (1 - f) / 4)), 1e-9);
    assertEquals(0, first.end().distance(second.start()), 1e-9);
    assertEquals(curve.length(), curve.reversed().length(), 1e-6);
    assertEquals(0, curve.reversed().at(f).distance(curve.at(1 - f)), 1e-9);
  }

  @Property(tries = 200, seed = "20240501")
  void imagesAreTheCurvesImages(
      @ForAll("curves") Curve curve,
      @ForAll("maps") Affine map,
      @ForAll @DoubleRange(max = 1) double f) {
    Curve image = curve.transformed(map);
    assertEquals(0, image.at(f).distance(map.apply(curve.at(f))), 1e-8);
    assertEquals(curve.getClass(), image.getClass());
  }

  @Property(tries = 200, seed = "20240501")
  void boundsAreTight(@ForAll("curves") Curve curve) {
    Box box = curve.bounds();
    double minX = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    Box grown = box.expanded(1e-9);
    for (int i = 0; i <= 2000; i++) {
      Point at = curve.at(i / 2000.0);
      assertTrue(grown.contains(at));
      minX = Math.min(minX, at.x());
      maxY = Math.max(maxY, at.y());
    }
    assertEquals(minX, box.minX(), 0.01);
    assertEquals(maxY, box.maxY(), 0.01);
  }

  @Property(tries = 100, seed = "20240501")
  void chordsKeepTheirTolerance(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0.01, max = 5) double tolerance) {
    List<Point> points = curve.flattened(tolerance);
    int n = points.size();
    for (int i = 0; i < 500; i++) {
      double t = (i + 0.5) / 500;
      int k = Math.min(n - 1, (int) Math.floor(t * n));
      Line chord = new Line(k == 0 ? curve.start() : points.get(k - 1), points.get(k));
      Point at = curve.at(t);
      assertTrue(chord.at(chord.nearest(at)).distance(at) <= tolerance + 1e-9);
    }
  }

  @Property(tries = 200, seed = "20240501")
  void nearestIsNoFartherThanAnySample(
      @ForAll("curves") Curve curve, @ForAll("points") Point point) {
    double found = curve.at(curve.nearest(point)).distance(point);
    for (int i = 0; i <= 1000; i++) {
      assertTrue(found <= curve.at(i / 1000.0).distance(point) + 1e-7);
    }
  }

  @Property(tries = 100, seed = "20240501")
  void arcsBecomeCubicsWithinTheirBound(
      @ForAll @DoubleRange(min = 0.1, max = 2000) double radius,
      @ForAll @DoubleRange(min = -6.28, max = 6.28) double sweep) {
    Arc arc = Arc.ofCircle(p(1, 2), radius, 0.3, sweep);
    Point before = arc.start();
    for (Cubic cubic : arc.cubics()) {
      assertEquals(0, before.distance(cubic.start()), 1e-9);
      before = cubic.end();
      for (int i = 0; i <= 50; i++) {
        assertEquals(radius, cubic.at(i / 50.0).distance(p(1, 2)), 1e-4);
      }
    }
    assertEquals(0, before.distance(arc.end()), 1e-9);
  }
}
