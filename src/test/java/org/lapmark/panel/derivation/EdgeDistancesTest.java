package org.lapmark.panel.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Beside.Marks;

/** Every edge at a distance of its own: where its line meets its neighbours' is known exactly. */
class EdgeDistancesTest {
  private static final double TRUE = 0.02;

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** A panel whose edges e0, e1 and so on begin at corners c0, c1 and so on. */
  private static Panel panel(List<Curve> curves) {
    Map<String, Point> corners = new LinkedHashMap<>();
    Map<String, PanelBuilder.CornerPair> edges = new LinkedHashMap<>();
    for (int i = 0; i < curves.size(); i++) {
      corners.put("c" + i, curves.get(i).start());
      edges.put("e" + i, new PanelBuilder.CornerPair("c" + i, "c" + (i + 1) % curves.size()));
    }
    return PanelBuilder.fromOutline("front", new Path(curves), corners, edges, Map.of(), List.of());
  }

  private static Panel polygon(Point... corners) {
    List<Curve> lines = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      lines.add(new Line(corners[i], corners[(i + 1) % corners.length]));
    }
    return panel(lines);
  }

  private static Panel moved(Panel panel, boolean inwards, double... distances) {
    Map<String, Double> by = new LinkedHashMap<>();
    for (int i = 0; i < distances.length; i++) {
      by.put("e" + i, distances[i]);
    }
    List<PanelException> notices = new ArrayList<>();
    Panel moved =
        inwards
            ? new Beside(panel, false, by, Marks.ALL).derive("b", notices::add)
            : new Beside(panel, true, by, Marks.ALL).derive("b", notices::add);
    assertEquals(List.of(), notices);
    return moved;
  }

  private static double length(Panel panel, String edge) {
    return panel.line(edge).length();
  }

  private static Point start(Panel panel, String edge) {
    return panel.line(edge).start();
  }

  private static void near(Point expected, Point point) {
    assertTrue(expected.distance(point) < TRUE, () -> expected + " is not " + point);
  }

  /** Where two lines meet that run beside the sides of a polygon that end and begin at a corner. */
  private static Point corner(Point before, Point at, Point after, double first, double second) {
    Point t = at.minus(before).unit();
    Point u = after.minus(at).unit();
    Point one = at.plus(p(t.y(), -t.x()).times(first));
    Point other = at.plus(p(u.y(), -u.x()).times(second));
    return one.plus(t.times(other.minus(one).cross(u) / t.cross(u)));
  }

  private static void checkPolygon(Panel panel, boolean inwards, double... distances) {
    Panel moved = moved(panel, inwards, distances);
    double sign = inwards ? -1 : 1;
    int count = panel.edges().size();
    assertEquals(count, moved.edges().size());
    for (int i = 0; i < count; i++) {
      int last = (i + count - 1) % count;
      Point expected =
          corner(
              start(panel, "e" + last),
              start(panel, "e" + i),
              panel.line("e" + i).end(),
              sign * distances[last],
              sign * distances[i]);
      near(expected, start(moved, "e" + i));
      assertEquals(1, moved.line("e" + i).curves().size());
    }
  }

  /** A block with a square cut out of its corner at the top right. */
  private static Panel block(double width, double height, double cut) {
    return polygon(
        p(0, 0),
        p(width - cut, 0),
        p(width - cut, cut),
        p(width, cut),
        p(width, height),
        p(0, height));
  }

  @Test
  void aCutOutFollows() {
    Panel block = block(200, 150, 50);
    assertEquals(50, length(block, "e1"), 1e-9);
    Panel one = moved(block, true, 0, 2, 0, 0, 0, 0);
    assertEquals(50, length(one, "e1"), 1e-6);
    assertEquals(52, length(one, "e2"), 1e-6);
    assertEquals(148, length(one, "e0"), 1e-6);
    Panel other = moved(block, true, 0, 0, 2, 0, 0, 0);
    assertEquals(52, length(other, "e1"), 1e-6);
    assertEquals(50, length(other, "e2"), 1e-6);
    Panel both = moved(block, true, 0, 2, 2, 0, 0, 0);
    assertEquals(52, length(both, "e1"), 1e-6);
    assertEquals(52, length(both, "e2"), 1e-6);
    Panel out = moved(block, false, 0, 2, 0, 0, 0, 0);
    assertEquals(50, length(out, "e1"), 1e-6);
    assertEquals(48, length(out, "e2"), 1e-6);
  }

  @Property(tries = 150, seed = "51101")
  void everySideOfABlockMeetsItsNeighbours(
      @ForAll @DoubleRange(min = 0, max = 20) double a,
      @ForAll @DoubleRange(min = 0, max = 20) double b,
      @ForAll @DoubleRange(min = 0, max = 20) double c,
      @ForAll @DoubleRange(min = 0, max = 20) double d,
      @ForAll boolean inwards) {
    checkPolygon(block(200, 150, 50), inwards, a, b, c, d, b, c);
  }

  @Property(tries = 300, seed = "51102")
  void sidesOfPolygonsMeetAtCornersThatOpenAndThatClose(
      @ForAll @IntRange(min = 4, max = 9) int half,
      @ForAll @DoubleRange(min = 0.6, max = 0.93) double waist,
      @ForAll @DoubleRange(min = 0, max = 8) double first,
      @ForAll @DoubleRange(min = 0, max = 8) double second,
      @ForAll @DoubleRange(min = 0, max = 360) double turn,
      @ForAll boolean inwards) {
    Point[] corners = new Point[2 * half];
    double[] distances = new double[2 * half];
    Affine map = Affine.rotation(turn);
    for (int i = 0; i < corners.length; i++) {
      double radius = i % 2 == 0 ? 200 : 200 * waist * StrictMath.cos(Math.PI / half);
      double angle = Math.PI * i / half;
      corners[i] = map.apply(p(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
      distances[i] = i % 3 == 0 ? first : i % 3 == 1 ? second : 0;
    }
    Panel star = polygon(corners);
    for (int i = 0; i < corners.length; i++) {
      // Farther away lines that hardly turn end with a step.
      int last = (i + corners.length - 1) % corners.length;
      Point next = corners[(i + 1) % corners.length];
      Point at = corner(corners[last], corners[i], next, distances[last], distances[i]);
      Assume.that(at.distance(corners[i]) < 9 * Math.max(first, second));
    }
    checkPolygon(star, inwards, distances);
  }

  /** Where a level line meets a circle, the crossing on the side that is asked for. */
  private static Point onCircle(Point centre, double radius, double y, boolean right) {
    double aside = Math.sqrt(radius * radius - (y - centre.y()) * (y - centre.y()));
    return p(centre.x() + (right ? aside : -aside), y);
  }

  /** A block whose upper side has an arc of a circle cut out, or set on. */
  private static Panel scooped(double sag, double reach) {
    double radius = (reach * reach + sag * sag) / (2 * Math.abs(sag));
    Point from = p(150 - reach, 0);
    Point to = p(150 + reach, 0);
    return panel(
        List.of(
            new Line(p(0, 0), from),
            Arc.fromEndpoints(from, radius, radius, 0, false, sag < 0, to),
            new Line(to, p(300, 0)),
            new Line(p(300, 0), p(300, 200)),
            new Line(p(300, 200), p(0, 200)),
            new Line(p(0, 200), p(0, 0))));
  }

  @Property(tries = 300, seed = "51103")
  void anArcGoesOnAsAnArcUntilItMeetsALine(
      @ForAll @DoubleRange(min = 15, max = 39) double depth,
      @ForAll @DoubleRange(min = 0, max = 10) double arc,
      @ForAll @DoubleRange(min = 0, max = 10) double line,
      @ForAll boolean scooped,
      @ForAll boolean inwards) {
    double sag = scooped ? depth : -depth;
    Panel panel = scooped(sag, 60);
    Panel moved = moved(panel, inwards, line, arc, line, 0, 0, 0);
    double radius = (3600 + sag * sag) / (2 * Math.abs(sag));
    Point centre = p(150, scooped ? depth - radius : radius - depth);
    double y = inwards ? line : -line;
    // Into the cloth a scoop's circle gets wider, and one that is set on gets narrower.
    double wide = radius + (inwards == scooped ? arc : -arc);
    near(onCircle(centre, wide, y, false), start(moved, "e1"));
    near(onCircle(centre, wide, y, true), start(moved, "e2"));
    for (Curve curve : moved.line("e1").curves()) {
      assertTrue(curve instanceof Arc, () -> "a straight piece in " + moved.line("e1"));
      assertEquals(wide, ((Arc) curve).radiusX(), 1e-6);
    }
  }

  @Property(tries = 200, seed = "51104")
  void twoArcsMeet(
      @ForAll @DoubleRange(min = 60, max = 200) double one,
      @ForAll @DoubleRange(min = 60, max = 200) double other,
      @ForAll @DoubleRange(min = 0, max = 9) double first,
      @ForAll @DoubleRange(min = 0, max = 9) double second,
      @ForAll boolean inwards) {
    // A leaf of two arcs between two points.
    Point top = p(0, 0);
    Point foot = p(0, 100);
    Panel leaf =
        panel(
            List.of(
                Arc.fromEndpoints(top, one, one, 0, false, true, foot),
                Arc.fromEndpoints(foot, other, other, 0, false, true, top)));
    Panel moved = moved(leaf, inwards, first, second);
    Point left = p(-Math.sqrt(one * one - 2500), 50);
    Point right = p(Math.sqrt(other * other - 2500), 50);
    double sign = inwards ? -1 : 1;
    double a = one + sign * first;
    double b = other + sign * second;
    double apart = right.x() - left.x();
    double x = left.x() + (apart * apart + a * a - b * b) / (2 * apart);
    double away = Math.sqrt(a * a - (x - left.x()) * (x - left.x()));
    near(p(x, 50 - away), start(moved, "e0"));
    near(p(x, 50 + away), start(moved, "e1"));
    for (String edge : List.of("e0", "e1")) {
      assertTrue(moved.line(edge).curves().stream().noneMatch(Line.class::isInstance));
    }
  }

  /** A block with two corners rounded, at which arcs run on from lines. */
  private static Panel rounded(double radius) {
    return panel(
        List.of(
            new Line(p(radius, 0), p(300 - radius, 0)),
            Arc.ofCircle(p(300 - radius, radius), radius, -Math.PI / 2, Math.PI / 2),
            new Line(p(300, radius), p(300, 200)),
            new Line(p(300, 200), p(0, 200)),
            new Line(p(0, 200), p(0, radius)),
            Arc.ofCircle(p(radius, radius), radius, Math.PI, Math.PI / 2)));
  }

  @Property(tries = 200, seed = "51105")
  void anArcThatRunsOnKeepsItsEnds(
      @ForAll @DoubleRange(min = 20, max = 80) double radius,
      @ForAll @DoubleRange(min = 0, max = 19) double distance,
      @ForAll boolean inwards) {
    double d = distance;
    Panel moved = moved(rounded(radius), inwards, d, d, d, d, d, d);
    double y = inwards ? d : -d;
    near(p(300 - radius, y), start(moved, "e1"));
    near(p(300 - y, radius), start(moved, "e2"));
    near(p(y, radius), start(moved, "e5"));
    Arc arc = (Arc) moved.line("e1").curves().get(0);
    assertEquals(radius - y, arc.radiusX(), 1e-6);
    assertEquals(1, moved.line("e1").curves().size());
  }

  @Property(tries = 200, seed = "51106")
  void aHemThatIsDeeperThanTheSidesEndsOnTheirArcs(
      @ForAll @DoubleRange(min = 40, max = 80) double radius,
      @ForAll @DoubleRange(min = 1, max = 8) double more,
      @ForAll @DoubleRange(min = 0, max = 9) double side) {
    double hem = side + more;
    Panel moved = moved(rounded(radius), true, hem, side, side, side, side, side);
    // The hem's line ends where it meets the circles.
    Point centre = p(300 - radius, radius);
    near(onCircle(centre, radius - side, hem, true), start(moved, "e1"));
    near(onCircle(p(radius, radius), radius - side, hem, false), start(moved, "e0"));
    assertEquals(1, moved.line("e0").curves().size());
    assertTrue(moved.line("e1").curves().stream().allMatch(Arc.class::isInstance));
  }

  @Property(tries = 150, seed = "51107")
  void curvesStayAtTheirDistance(
      @ForAll @DoubleRange(min = 20, max = 60) double dip,
      @ForAll @DoubleRange(min = -40, max = 40) double flare,
      @ForAll @DoubleRange(min = 0, max = 9) double neck,
      @ForAll @DoubleRange(min = 0, max = 9) double armhole,
      @ForAll boolean inwards) {
    // A bodice block: neck and armhole are drawn as cubics, and meet straight edges at corners.
    Panel bodice =
        panel(
            List.of(
                new Line(p(80, 20), p(150, 0)),
                new Cubic(p(150, 0), p(155, dip), p(130, 110), p(190, 130)),
                new Cubic(p(190, 130), p(185, 200), p(180 + flare, 260), p(190 + flare, 330)),
                new Line(p(190 + flare, 330), p(0, 330)),
                new Line(p(0, 330), p(0, 90)),
                new Cubic(p(0, 90), p(40, 90), p(75, 60), p(80, 20))));
    double[] distances = {2, armhole, 0, 5, 0, neck};
    Panel moved = moved(bodice, inwards, distances);
    assertEquals(6, moved.edges().size());
    for (int i = 0; i < 6; i++) {
      Path old = bodice.line("e" + i);
      Path path = moved.line("e" + i);
      for (int k = 0; k <= 20; k++) {
        Point at = path.atLength(path.length() * k / 20);
        double foot = old.nearestLength(at);
        if (foot > 0.01 && foot < old.length() - 0.01) {
          assertEquals(distances[i], old.distance(at), TRUE, "e" + i);
        }
      }
      // No edge has a corner that it didn't have.
      for (int k = 1; k < path.curves().size(); k++) {
        Point t = path.curves().get(k - 1).tangent(1);
        Point u = path.curves().get(k).tangent(0);
        assertEquals(0, StrictMath.atan2(t.cross(u), t.dot(u)), 0.01, "e" + i);
      }
    }
  }
}
