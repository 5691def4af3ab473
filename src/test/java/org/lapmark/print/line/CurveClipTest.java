package org.lapmark.print.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

class CurveClipTest {
  private static final Box BOX = new Box(-20, -30, 25, 35);

  @Provide
  Arbitrary<Curve> curves() {
    Arbitrary<Double> number = Arbitraries.doubles().between(-70, 70);
    Arbitrary<Point> point = Combinators.combine(number, number).as(Point::new);
    Arbitrary<Curve> lines = Combinators.combine(point, point).as(Line::new);
    Arbitrary<Curve> cubics = Combinators.combine(point, point, point, point).as(Cubic::new);
    Arbitrary<Double> radius = Arbitraries.doubles().between(1, 60);
    Arbitrary<Double> angle = Arbitraries.doubles().between(-6.28, 6.28);
    Arbitrary<Curve> arcs =
        Combinators.combine(point, radius, radius, angle, angle, angle)
            .as(
                (centre, rx, ry, turn, start, sweep) ->
                    new Arc(centre, rx, ry, turn, start, sweep));
    return Arbitraries.oneOf(lines, cubics, arcs);
  }

  @Property(tries = 400)
  void whatLiesInsideIsKeptWhereItWas(@ForAll("curves") Curve curve) {
    List<Path> parts = CurveClip.inside(new Path(List.of(curve)), BOX);
    for (int i = 0; i <= 100; i++) {
      Point point = curve.at(i / 100.0);
      if (BOX.expanded(-1e-6).contains(point)) {
        assertTrue(parts.stream().anyMatch(part -> part.distance(point) < 1e-6), point.toString());
      }
    }
  }

  @Property(tries = 400)
  void whatIsKeptLiesInsideAndOnTheCurve(@ForAll("curves") Curve curve) {
    Path whole = new Path(List.of(curve));
    for (Path part : CurveClip.inside(whole, BOX)) {
      double length = part.length();
      for (int i = 0; i <= 20; i++) {
        Point point = part.atLength(length * i / 20);
        assertTrue(BOX.expanded(1e-6).contains(point), point.toString());
        assertTrue(whole.distance(point) < 1e-6, point.toString());
      }
    }
  }

  @Test
  void anOutlineInsideStaysClosed() {
    Path circle = Path.circle(new Point(0, 0), 10);
    assertEquals(List.of(circle), CurveClip.inside(circle, BOX));
  }

  @Test
  void anOutlineThatBeginsInsideIsNotCutAtItsBeginning() {
    // From its rightmost point, inside the box, round through the left, outside it.
    Path circle = Path.circle(new Point(-20, 0), 10);
    List<Path> parts = CurveClip.inside(circle, BOX);
    assertEquals(1, parts.size());
    assertEquals(Math.PI * 10, parts.get(0).length(), 1e-6);
  }
}
