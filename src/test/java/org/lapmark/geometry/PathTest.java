package org.lapmark.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathTest {
  private static final double RADIUS = 25;

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** The end of a bag: flat behind at x = 0, two rounded corners, two flats, a round front. */
  static Path end(double depth, double height) {
    double h = height / 2;
    double flat = 55;
    Point first = p(flat + 0.6 * (depth - flat), h);
    Point second = p(depth, 0.55 * h);
    return new Path(
        List.of(
            new Line(p(0, h - RADIUS), p(0, RADIUS - h)),
            Arc.ofCircle(p(RADIUS, RADIUS - h), RADIUS, Math.PI, Math.PI / 2),
            new Line(p(RADIUS, -h), p(flat, -h)),
            new Cubic(
                p(flat, -h), p(first.x(), -first.y()), p(second.x(), -second.y()), p(depth, 0)),
            new Cubic(p(depth, 0), second, first, p(flat, h)),
            new Line(p(flat, h), p(RADIUS, h)),
            Arc.ofCircle(p(RADIUS, h - RADIUS), RADIUS, Math.PI / 2, Math.PI / 2)));
  }

  @ParameterizedTest
  @CsvSource({"125, 140, 449.89", "110, 120, 390.45", "140, 160, 509.47"})
  void roundedEndMeasuresAsWorkedOut(double depth, double height, double rim) {
    Path end = end(depth, height);
    assertTrue(end.isClosed());
    assertEquals(rim, end.length(), 0.005);
    assertTrue(end.signedArea() > 0);
    assertEquals(new Box(0, -height / 2, depth, height / 2), rounded(end.bounds()));
  }

  private static Box rounded(Box b) {
    return new Box(
        Math.rint(b.minX() * 1e6) / 1e6 + 0.0,
        Math.rint(b.minY() * 1e6) / 1e6,
        Math.rint(b.maxX() * 1e6) / 1e6,
        Math.rint(b.maxY() * 1e6) / 1e6);
  }

  @Test
  void gapsAreRefused() {
    Line first = new Line(p(0, 0), p(1, 0));
    new Path(List.of(first, new Line(p(1 + 9e-7, 0), p(2, 0))));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Path(List.of(first, new Line(p(1 + 2e-6, 0), p(2, 0)))));
    assertThrows(IllegalArgumentException.class, () -> new Path(List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Path(List.of(first)).then(new Path(List.of(first))));
  }

  @Test
  void polylineLeavesRepeatedPointsOut() {
    assertEquals(
        2, Path.polyline(List.of(p(0, 0), p(0, 0), p(1, 0), p(1, 0), p(1, 1))).curves().size());
    Path rectangle = Path.rectangle(new Box(1, 2, 4, 6));
    assertEquals(12, rectangle.signedArea(), 1e-12);
    assertEquals(14, rectangle.length(), 1e-12);
    assertEquals(Math.PI * 9, Path.circle(p(100, 50), 3).signedArea(), 1e-9);
    assertEquals(-12, rectangle.reversed().signedArea(), 1e-12);
  }

  @Test
  void areaOfACubicIsExact() {
    // Under y = x³ from 0 to 1, scaled: a quarter of the square, to the right of the rising curve.
    Cubic curve = new Cubic(p(0, 0), p(1.0 / 3, 0), p(2.0 / 3, 0), p(1, 1));
    Path closed =
        new Path(List.of(new Line(p(0, 0), p(1, 0)), new Line(p(1, 0), p(1, 1)), curve.reversed()));
    assertEquals(0.25, closed.signedArea(), 1e-15);
    assertEquals(0.25, closed.transformed(Affine.translation(1e6, -1e6)).signedArea(), 1e-8);
  }

  @Test
  void cornersBelongToTheCurveThatBeginsThere() {
    Path square = Path.rectangle(new Box(0, 0, 10, 10));
    assertEquals(p(0, 1), square.tangentAtLength(10));
    assertEquals(p(1, 0), square.tangentAtLength(0));
    assertEquals(0, square.tangentAtLength(40).distance(p(0, -1)), 0);
    assertEquals(p(10, 5), square.atLength(15));
    assertEquals(p(0, 0), square.atLength(99));
    assertEquals(1, square.part(10, 20).curves().size());
    assertEquals(3, square.part(5, 25).curves().size());
    assertThrows(IllegalArgumentException.class, () -> square.part(5, 5));
  }

  @Property(tries = 100, seed = "20240501")
  void partsOfAPathAddUp(
      @ForAll @DoubleRange(min = 1, max = 199) double a,
      @ForAll @DoubleRange(min = 201, max = 449) double b) {
    Path end = end(125, 140);
    Path part = end.part(a, b);
    assertEquals(b - a, part.length(), 1e-6);
    assertEquals(0, part.start().distance(end.atLength(a)), 1e-7);
    assertEquals(0, part.end().distance(end.atLength(b)), 1e-7);
    assertEquals(end.length(), end.part(0, a).then(end.part(a, end.length())).length(), 1e-6);
  }

  @Property(tries = 100, seed = "20240501")
  void nearestLengthFindsPointsAside(
      @ForAll @DoubleRange(min = 0.1, max = 449) double at,
      @ForAll @DoubleRange(min = -15, max = 15) double aside) {
    Path end = end(125, 140);
    Point foot = end.atLength(at);
    Point point = foot.plus(end.tangentAtLength(at).quarterTurn().times(aside));
    assertEquals(at, end.nearestLength(point), 1e-4);
    assertEquals(Math.abs(aside), end.distance(point), 1e-7);
  }

  @Property(tries = 100, seed = "20240501")
  void areaAndEnclosureFollowAffineMaps(
      @ForAll @DoubleRange(min = -2, max = 2) double a,
      @ForAll @DoubleRange(min = -2, max = 2) double b,
      @ForAll @DoubleRange(min = -140, max = 140) double x,
      @ForAll @DoubleRange(min = -80, max = 80) double y) {
    Affine map = new Affine(a, 0.3, b, 1.1, 12, -7);
    Path end = end(125, 140);
    Path image = end.transformed(map);
    assertEquals(end.signedArea() * map.determinant(), image.signedArea(), 1e-6);
    if (Math.abs(map.determinant()) > 1e-3 && end.distance(p(x, y)) > 1e-3) {
      assertEquals(end.encloses(p(x, y)), image.encloses(map.apply(p(x, y))));
    }
  }

  @Test
  void crossingsAreFoundAndNearMissesAreNot() {
    List<Point> eight = List.of(p(0, 0), p(10, 10), p(10, 0), p(0, 10), p(0, 0));
    assertEquals(p(5, 5), Path.polyline(eight).selfCrossing().orElseThrow());
    assertTrue(end(125, 140).selfCrossing().isEmpty());
    assertTrue(Path.circle(p(0, 0), 4).selfCrossing().isEmpty());
    Cubic loop = new Cubic(p(0, 0), p(100, 80), p(-50, 80), p(50, 0));
    assertTrue(new Path(List.of(loop, new Line(p(50, 0), p(0, 0)))).selfCrossing().isPresent());
    List<Point> spur = List.of(p(0, 0), p(10, 0), p(5, 0), p(5, 10), p(0, 0));
    assertTrue(Path.polyline(spur).selfCrossing().isPresent());
    // A corner that touches another side counts; one that stops short by a tenth doesn't.
    List<Point> touch =
        new ArrayList<>(List.of(p(0, 0), p(20, 0), p(20, 10), p(10, 0), p(0, 10), p(0, 0)));
    assertTrue(Path.polyline(touch).selfCrossing().isPresent());
    touch.set(3, p(10, 0.1));
    assertFalse(Path.polyline(touch).selfCrossing().isPresent());
  }
}
