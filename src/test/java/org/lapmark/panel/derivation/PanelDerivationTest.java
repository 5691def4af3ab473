package org.lapmark.panel.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.stated.StatedShape;

class PanelDerivationTest {
  private static final double EXACT = 1e-5;

  private final List<PanelException> notices = new ArrayList<>();

  /**
   * A half panel with an arc, a cubic and a slanted line, its fold on the left; the top leaves the
   * fold square to it and the bottom arrives so.
   */
  private static Panel half(double width, double height, double bulge, Affine map) {
    Point a = new Point(0, 0);
    Point b = new Point(width, 0.2 * height);
    Point c = new Point(width, 0.7 * height);
    Point d = new Point(0, height);
    Curve top = new Cubic(a, new Point(0.5 * width, 0), new Point(width - 5, 0.1 * height), b);
    Curve side =
        Arc.fromEndpoints(b, height * (1 + bulge), height * (1 + bulge), 0, false, true, c);
    Curve bottom = new Cubic(c, new Point(width, 0.9 * height), new Point(width / 3, height), d);
    Path outline = new Path(List.of(top, side, bottom, new Line(d, a))).transformed(map);
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", map.apply(a));
    corners.put("b", map.apply(b));
    corners.put("c", map.apply(c));
    corners.put("d", map.apply(d));
    Map<String, PanelBuilder.CornerPair> edges = new LinkedHashMap<>();
    edges.put("top", new PanelBuilder.CornerPair("a", "b"));
    edges.put("side", new PanelBuilder.CornerPair("b", "c"));
    edges.put("bottom", new PanelBuilder.CornerPair("c", "d"));
    edges.put("fold", new PanelBuilder.CornerPair("d", "a"));
    Map<String, List<String>> chains = new LinkedHashMap<>();
    chains.put("rim", List.of("top", "side"));
    chains.put("round", List.of("top", "side", "bottom"));
    List<Mark> marks =
        List.of(
            new Mark.Notch("top", 10, 1),
            new Mark.Notch("side", 12, 2),
            new PointMark.DrillPoint("eyelet", map.apply(new Point(width / 2, height / 2))),
            new PointMark.DrillPoint("centre", map.apply(new Point(0, height / 2))),
            new LineMark.Placement(
                "pocket",
                Path.polyline(
                    List.of(
                        map.apply(new Point(0, height / 3)),
                        map.apply(new Point(width / 2, height / 3)),
                        map.apply(new Point(width / 2, height / 2))))),
            new Mark.Grainline(
                map.apply(new Point(0, 0.3 * height)), map.apply(new Point(0, 0.8 * height))));
    return PanelBuilder.fromOutline("half", outline, corners, edges, chains, marks);
  }

  private static Affine placed(double turn, double shift) {
    return Affine.translation(shift, -2 * shift).after(Affine.rotation(turn));
  }

  private static double area(Panel panel) {
    return panel.outline().signedArea();
  }

  private static double length(Panel panel, String edge) {
    return panel.line(edge).length();
  }

  private static List<String> names(Panel panel) {
    return panel.edges().stream().map(Edge::name).toList();
  }

  private static void same(Panel expected, Panel panel, double within) {
    assertEquals(new TreeSet<>(names(expected)), new TreeSet<>(names(panel)));
    assertEquals(expected.chains().keySet(), panel.chains().keySet());
    for (Edge edge : expected.edges()) {
      Path path = panel.line(edge.name());
      double length = edge.path().length();
      assertEquals(length, path.length(), within, edge.name());
      for (int i = 0; i <= 10; i++) {
        Point at = edge.path().atLength(length * i / 10);
        assertTrue(at.distance(path.atLength(length * i / 10)) < within, edge.name());
      }
    }
    for (int i = 0; i < panel.edges().size(); i++) {
      Edge edge = panel.edges().get(i);
      Edge next = panel.edges().get((i + 1) % panel.edges().size());
      assertEquals(edge.to(), next.from());
    }
  }

  private static Map<String, Double> all(Panel panel, double distance) {
    Map<String, Double> distances = new LinkedHashMap<>();
    panel.edges().forEach(edge -> distances.put(edge.name(), distance));
    return distances;
  }

  @Property(tries = 100, seed = "4101")
  void unfoldingDoubles(
      @ForAll @DoubleRange(min = 40, max = 400) double width,
      @ForAll @DoubleRange(min = 60, max = 400) double height,
      @ForAll @DoubleRange(min = 0, max = 2) double bulge,
      @ForAll @DoubleRange(min = 0, max = 360) double turn) {
    Panel half = half(width, height, bulge, placed(turn, width));
    Panel whole = new Unfolded(half, "fold", List.of()).derive("whole", notices::add);
    assertEquals(2 * area(half), area(whole), 1e-6 * area(half));
    double around = half.outline().length() - length(half, "fold");
    assertEquals(2 * around, whole.outline().length(), EXACT);
    assertEquals(List.of("top", "side", "bottom", "side_mirrored"), names(whole));
    assertEquals(2 * length(half, "top"), length(whole, "top"), EXACT);
    assertEquals(List.of("side_mirrored", "top", "side"), whole.chains().get("rim"));
    assertEquals(names(whole), whole.chains().get("round"));
    assertEquals(List.of(), notices);
    Panel again = new Folded(whole, "top", "bottom", "fold").derive("half", notice -> {});
    same(half, again, EXACT);
    assertEquals(4, whole.marks().stream().filter(Mark.Notch.class::isInstance).count());
    assertEquals(2, again.marks().stream().filter(Mark.Notch.class::isInstance).count());
    assertEquals(3, whole.marks().stream().filter(PointMark.DrillPoint.class::isInstance).count());
    assertEquals(1, whole.marks().stream().filter(LineMark.Placement.class::isInstance).count());
    for (Mark mark : whole.marks()) {
      if (mark instanceof Mark.Notch notch && notch.edge().equals("top")) {
        double fromFold = Math.abs(notch.at() - length(half, "top"));
        assertEquals(10, fromFold, EXACT);
      }
    }
  }

  @Property(tries = 100, seed = "4102")
  void mirroringTwiceChangesNothing(
      @ForAll @DoubleRange(min = 40, max = 400) double width,
      @ForAll @DoubleRange(min = 0, max = 360) double turn) {
    Panel panel = half(width, 100, 0.3, placed(turn, width));
    Panel image = new Mirrored(panel).derive("image", notice -> {});
    assertEquals(area(panel), area(image), 1e-9 * area(panel));
    assertEquals(List.of("side", "top"), image.chains().get("rim"));
    Panel twice = new Mirrored(image).derive("half", notice -> {});
    same(panel, twice, 1e-9);
    assertEquals(names(panel), names(twice));
    assertEquals(panel.chains(), twice.chains());
  }

  @Property(tries = 100, seed = "4103")
  void partsMakeTheWhole(
      @ForAll @DoubleRange(min = 60, max = 400) double width,
      @ForAll @DoubleRange(min = 0, max = 360) double turn,
      @ForAll @DoubleRange(min = 0.3, max = 0.7) double from,
      @ForAll @DoubleRange(min = 0.3, max = 0.7) double to,
      @ForAll @DoubleRange(min = -0.1, max = 0.1) double bow) {
    Affine map = placed(turn, width);
    Panel panel = half(width, 120, 0.2, map);
    Path side = panel.line("side");
    Path fold = panel.line("fold");
    Point start = side.atLength(side.length() * from);
    Point end = fold.atLength(fold.length() * to);
    double sagitta = bow * start.distance(end);
    double radius =
        Math.abs(sagitta) < 0.01
            ? 0
            : (start.distance(end) * start.distance(end) / 4 + sagitta * sagitta)
                / (2 * Math.abs(sagitta));
    Curve line = Arc.fromEndpoints(start, radius, radius, 0, false, bow > 0, end);
    List<Mark> marks = new ArrayList<>(panel.marks());
    marks.add(new LineMark.StyleLine("yoke", new Path(List.of(line))));
    Panel marked = new Panel("front", panel.edges(), panel.chains(), marks);
    Panel upper = new Split(marked, "yoke", "top", "yoke").derive("upper", notice -> {});
    Panel lower = new Split(marked, "yoke", "bottom", "yoke").derive("lower", notice -> {});
    assertEquals(area(panel), area(upper) + area(lower), 1e-6 * area(panel));
    assertEquals(length(upper, "yoke"), length(lower, "yoke"), EXACT);
    assertEquals(length(panel, "side"), length(upper, "side") + length(lower, "side"), EXACT);
    assertEquals(List.of("top", "side"), upper.chains().get("rim"));
    int notches = 0;
    for (Panel part : List.of(upper, lower)) {
      for (Mark mark : part.marks()) {
        notches += mark instanceof Mark.Notch ? 1 : 0;
        if (mark instanceof Mark.Grainline grain) {
          assertTrue(new Inside(part.outline(), 0.01).has(grain.from()));
          assertTrue(new Inside(part.outline(), 0.01).has(grain.to()));
        }
      }
    }
    assertTrue(notches == 2 || Math.abs(length(upper, "side") - 12) < 2.6);
    // One is moved away before they are laid together again.
    Affine away = placed(123, 500);
    List<Edge> moved = new ArrayList<>();
    for (Edge edge : lower.edges()) {
      moved.add(new Edge(edge.name(), edge.from(), edge.to(), edge.path().transformed(away)));
    }
    Panel elsewhere = new Panel("lower", moved, lower.chains(), lower.marks());
    Panel whole = new Merged(upper, "yoke", elsewhere, "yoke").derive("half", notice -> {});
    same(panel, whole, 1e-4);
  }

  @Property(tries = 60, seed = "4104")
  void outAndInReturns(
      @ForAll @DoubleRange(min = 80, max = 300) double width,
      @ForAll @DoubleRange(min = 80, max = 300) double height,
      @ForAll @DoubleRange(min = 21, max = 39) double radius,
      @ForAll @DoubleRange(min = 0.5, max = 20) double distance,
      @ForAll @DoubleRange(min = 0, max = 360) double turn) {
    Panel panel = rounded(width, height, radius, placed(turn, width));
    Panel outer =
        new Beside(panel, true, all(panel, distance), Beside.Marks.ALL)
            .derive("outer", notices::add);
    same(
        panel,
        new Beside(outer, false, all(outer, distance), Beside.Marks.ALL).derive("b", notices::add),
        0.005);
    Panel inner =
        new Beside(panel, false, all(panel, distance), Beside.Marks.ALL)
            .derive("inner", notices::add);
    same(
        panel,
        new Beside(inner, true, all(inner, distance), Beside.Marks.ALL).derive("b", notices::add),
        0.005);
    double expected =
        area(panel) + distance * panel.outline().length() + Math.PI * distance * distance;
    assertEquals(expected, area(outer), 1e-6 * expected);
  }

  private static Panel rounded(double width, double height, double radius, Affine map) {
    double q = Math.PI / 2;
    Path outline =
        new Path(
                List.of(
                    new Line(new Point(radius, 0), new Point(width - radius, 0)),
                    Arc.ofCircle(new Point(width - radius, radius), radius, -q, q),
                    new Line(new Point(width, radius), new Point(width, height - radius)),
                    Arc.ofCircle(new Point(width - radius, height - radius), radius, 0, q),
                    new Line(new Point(width - radius, height), new Point(radius, height)),
                    Arc.ofCircle(new Point(radius, height - radius), radius, q, q),
                    new Line(new Point(0, height - radius), new Point(0, radius)),
                    Arc.ofCircle(new Point(radius, radius), radius, 2 * q, q)))
            .transformed(map);
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("p", map.apply(new Point(radius, 0)));
    corners.put("q", map.apply(new Point(width, height - radius)));
    return PanelBuilder.fromOutline("r", outline, corners, Map.of(), Map.of(), List.of());
  }

  /** A quadrilateral whose corners lie near those of a square. */
  private static Panel quad(int[] off) {
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", new Point(off[0], off[1]));
    corners.put("b", new Point(200 + off[2], off[3]));
    corners.put("c", new Point(200 + off[4], 200 + off[5]));
    corners.put("d", new Point(off[6], 200 + off[7]));
    List<Point> points = new ArrayList<>(corners.values());
    points.add(points.get(0));
    return PanelBuilder.fromOutline(
        "quad", Path.polyline(points), corners, Map.of(), Map.of(), List.of());
  }

  @Property(tries = 150, seed = "4105")
  void everyEdgeHasItsOwnDistance(
      @ForAll @IntRange(min = -40, max = 40) int a,
      @ForAll @IntRange(min = -40, max = 40) int b,
      @ForAll @IntRange(min = -40, max = 40) int c,
      @ForAll @IntRange(min = -40, max = 40) int d,
      @ForAll @DoubleRange(min = 0, max = 25) double first,
      @ForAll @DoubleRange(min = 0, max = 25) double second) {
    Panel panel = quad(new int[] {a, b, c, d, b, c, d, a});
    Map<String, Double> distances = all(panel, 3);
    distances.put("a-b", first);
    distances.put("b-c", second);
    Panel inner =
        new Beside(panel, false, distances, Beside.Marks.NONE).derive("inner", notices::add);
    assertEquals(names(panel), names(inner));
    for (Edge edge : inner.edges()) {
      Path old = panel.line(edge.name());
      Point along = old.tangentAtLength(0);

      for (Point point : List.of(edge.path().start(), edge.path().end())) {
        double aside = along.cross(point.minus(old.start()));
        assertEquals(distances.get(edge.name()), aside, 0.003, edge.name());
      }
      assertTrue(along.dot(edge.path().tangentAtLength(0)) > 0.999999);
    }
    assertEquals(
        panel.edges().stream().map(Edge::from).toList(),
        inner.edges().stream().map(Edge::from).toList());
  }

  @Property(tries = 100, seed = "4106")
  void aFacingHasOneWidth(
      @ForAll @IntRange(min = -40, max = 40) int a,
      @ForAll @IntRange(min = -40, max = 40) int b,
      @ForAll @IntRange(min = -40, max = 40) int c,
      @ForAll @DoubleRange(min = 5, max = 80) double width) {
    Panel panel = quad(new int[] {a, b, c, a, b, c, a, b});
    Panel band = new Facing(panel, "a-b", width, "inner").derive("facing", notice -> {});
    assertEquals(List.of("a-b", "b-c", "inner", "d-a"), sortedFrom(band, "a-b"));
    assertEquals(length(panel, "a-b"), length(band, "a-b"), 1e-9);
    Path outer = panel.line("a-b");
    Point along = outer.tangentAtLength(0);
    for (Point point : List.of(band.line("inner").start(), band.line("inner").end())) {
      assertEquals(width, along.cross(point.minus(outer.start())), 1e-4);
    }
    assertTrue(area(band) < area(panel));
  }

  private static List<String> sortedFrom(Panel panel, String first) {
    List<String> names = new ArrayList<>(names(panel));
    java.util.Collections.rotate(names, -names.indexOf(first));
    return names;
  }

  @Test
  void aFacingFollowsACurveAndACorner() {
    Panel half = half(150, 200, 0.2, Affine.IDENTITY);
    Panel band = new Facing(half, "rim", 30, "inner").derive("facing", notice -> {});
    assertEquals(
        new TreeSet<>(List.of("top", "side", "inner", "fold")), new TreeSet<>(names(band)));
    Path rim = half.line("rim");
    Path inner = band.line("inner");
    // At its lower end the outline turns inwards: the band ends square across there.
    assertEquals(30, half.line("bottom").start().distance(inner.atLength(30)), 1e-6);
    for (double at = 30; at <= inner.length(); at += 5) {
      assertEquals(30, rim.distance(inner.atLength(at)), 0.005, "at " + at);
    }
    assertThrows(
        PanelException.class,
        () -> new Facing(half, "rim", 250, "inner").derive("facing", notice -> {}));
  }

  @Test
  void anEdgeThatIsNotSquareToTheFoldIsSaid() {
    Panel quad = quad(new int[] {0, 0, 0, 20, 0, 0, 0, 0});
    new Unfolded(quad, "d-a", List.of()).derive("whole", notices::add);
    assertEquals(1, notices.size());
    assertEquals(PanelCode.UNFOLD_CORNER, notices.get(0).code());
    assertEquals("a-b", notices.get(0).arguments().get("edge"));
    notices.clear();
    Panel whole = new Unfolded(quad, "d-a", List.of("a-b")).derive("whole", notices::add);
    assertEquals(List.of(), notices);
    assertEquals(List.of("a-b", "b-c", "c-d", "b-c_mirrored", "a-b_mirrored"), names(whole));
    assertEquals("a", whole.edges().get(0).from());
  }

  @Test
  void aCircleIsHalvedAndMadeWholeAgain() {
    Panel circle = StatedShape.circle(100).panel("disc", Map.of(), Map.of());
    Panel half = new Folded(circle, "top", "bottom", "fold").derive("half", notice -> {});
    assertEquals(100, length(half, "fold"), 1e-9);
    assertEquals(List.of("top_right", "right_bottom", "fold"), names(half));
    assertEquals(List.of("top_right", "right_bottom"), half.chains().get("rim"));
    Panel whole = new Unfolded(half, "fold", List.of()).derive("whole", notices::add);
    assertEquals(Math.PI * 2500, area(whole), 1e-6);
    assertTrue(whole.outline().curves().stream().allMatch(Arc.class::isInstance));
    assertEquals(List.of(), notices);
  }

  /** A block with a half moon cut out of its right side. */
  private static Panel bitten() {
    Panel block = PanelBuilder.rectangle("block", 100, 200, false);
    Curve moon =
        Arc.fromEndpoints(new Point(100, 60), 25, 25, 0, false, false, new Point(100, 110));
    List<Mark> marks = new ArrayList<>(block.marks());
    marks.add(new LineMark.StyleLine("bite", new Path(List.of(moon))));
    marks.add(new Mark.Notch("right", 20, 1));
    marks.add(new Mark.Notch("right", 150, 1));
    Map<String, List<String>> chains = new LinkedHashMap<>();
    chains.put("around", List.of("right", "bottom"));
    chains.put("feet", List.of("bottom", "left"));
    Panel marked = new Panel("block", block.edges(), chains, marks);
    return new Split(marked, "bite", "left", "bite").derive("bitten", notices -> {});
  }

  @Test
  void anEdgeOfWhichTheMiddleIsTakenIsNumbered() {
    Panel bitten = bitten();
    assertEquals(
        List.of("bottom", "left", "top", "right_1", "bite", "right_2"),
        sortedFrom(bitten, "bottom"));
    assertEquals(60, length(bitten, "right_1"), EXACT);
    assertEquals(90, length(bitten, "right_2"), EXACT);
    assertEquals(List.of("right_1", "right_2"), bitten.chains().get("right"));
    for (String broken : List.of("right", "around")) {
      assertEquals(null, bitten.line(broken), broken);
      assertTrue(!bitten.isOneLine(broken), broken);
    }
    assertEquals("edge", bitten.inParts("right").arguments().get("what"));
    assertEquals("chain", bitten.inParts("around").arguments().get("what"));
    assertEquals("right_1, right_2, bottom", bitten.inParts("around").arguments().get("parts"));
    assertEquals(300, length(bitten, "feet"), EXACT);
    List<Mark.Notch> notches =
        bitten.marks().stream()
            .filter(Mark.Notch.class::isInstance)
            .map(Mark.Notch.class::cast)
            .toList();
    assertEquals(List.of("right_1", "right_2"), notches.stream().map(Mark.Notch::edge).toList());
    assertEquals(20, notches.get(0).at(), 1e-4);
    assertEquals(40, notches.get(1).at(), 1e-4);
  }

  @Test
  void marksFollowWhereAnEdgeDoesNotMove() {
    Panel half = half(150, 200, 0.2, Affine.IDENTITY);
    Panel same =
        new Beside(half, false, all(half, 0), Beside.Marks.OF_UNMOVED_EDGES)
            .derive("b", notices::add);
    assertEquals(half.marks(), same.marks());
    assertEquals(half.edges(), same.edges());
    assertEquals(List.of(), notices);
    Map<String, Double> top = all(half, 0);
    top.put("top", 5.0);
    Panel lower =
        new Beside(half, false, top, Beside.Marks.OF_UNMOVED_EDGES).derive("b", notices::add);
    assertEquals(
        List.of("side"),
        lower.marks().stream()
            .filter(Mark.Notch.class::isInstance)
            .map(mark -> ((Mark.Notch) mark).edge())
            .toList());
    assertEquals(1, notices.size());
    assertEquals(PanelCode.MARKS_NOT_STATED, notices.get(0).code());
    assertEquals(1, notices.get(0).arguments().get("kept"));
  }
}
