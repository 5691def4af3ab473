package org.lapmark.panel.spreading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
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
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
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
import org.lapmark.panel.spreading.Slash.Hinge;
import org.lapmark.panel.stated.StatedShape;

class SpreadingTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Slash slash(String name, Point from, Point to, double open, Hinge hinge) {
    return new Slash(name, new Path(List.of(new Line(from, to))), open, hinge);
  }

  private static Slash slash(Point from, Point to, double open, Hinge hinge) {
    return slash("s", from, to, open, hinge);
  }

  private static Panel spread(Panel panel, List<Slash> slashes) {
    return Spreading.spread(panel, slashes, notice -> {});
  }

  private static Panel rectangle(double width, double height) {
    return PanelBuilder.rectangle("r", width, height, false);
  }

  private static Panel with(Panel panel, Mark... marks) {
    List<Mark> all = new ArrayList<>(panel.marks());
    all.addAll(List.of(marks));
    return new Panel(panel.name(), panel.edges(), panel.chains(), all);
  }

  private static Panel without(Panel panel) {
    return new Panel(panel.name(), panel.edges(), panel.chains(), List.of());
  }

  /** A brim of head 570, 70 wide, with 35 degrees of droop. */
  private static Panel brim() {
    return StatedShape.brim(570, 70, 35, 1).panel("brim", Map.of(), Map.of());
  }

  private static Point middle(Panel panel, String edge) {
    return panel.line(edge).atLength(panel.line(edge).length() / 2);
  }

  private static double length(Panel panel, String edge) {
    return panel.line(edge).length();
  }

  /** Where a line turns by more than a tenth of a degree, as angles in degrees. */
  private static List<Double> turns(Path line) {
    List<Double> turns = new ArrayList<>();
    for (int i = 1; i < line.curves().size(); i++) {
      Point before = line.curves().get(i - 1).tangent(1);
      Point after = line.curves().get(i).tangent(0);
      double turn = StrictMath.toDegrees(StrictMath.atan2(before.cross(after), before.dot(after)));
      if (Math.abs(turn) > 0.1) {
        turns.add(turn);
      }
    }
    return turns;
  }

  @Property(tries = 100, seed = "20260511")
  void anOpeningOfNothingChangesNothing(
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double from,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double to) {
    Panel panel = rectangle(200, 100);
    Slash none = slash(p(200 * from, 0), p(200 * to, 100), 0, Hinge.TO);
    assertSame(panel, spread(panel, List.of(none)));
    assertSame(panel, spread(panel, List.of()));
  }

  @Property(tries = 200, seed = "20260511")
  void aParallelSpreadWidensARectangleExactly(
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double at,
      @ForAll @DoubleRange(min = -15, max = 60) double open) {
    Panel panel = rectangle(200, 100);
    Panel wider =
        spread(panel, List.of(slash(p(200 * at, -3), p(200 * at, 104), open, Hinge.NONE)));
    assertEquals(200 + open, wider.outline().bounds().width(), 1e-9);
    assertEquals(100, wider.outline().bounds().height(), 1e-9);
    assertEquals(200 + open, length(wider, "top"), 1e-9);
    assertEquals(200 + open, length(wider, "bottom"), 1e-9);
    assertEquals(100, length(wider, "left"), 1e-9);
    assertEquals((200 + open) * 100, wider.outline().signedArea(), 1e-6);
    for (Edge edge : wider.edges()) {
      assertEquals(1, edge.path().curves().size());
      assertTrue(edge.path().curves().get(0) instanceof Line);
    }
  }

  @Property(tries = 200, seed = "20260511")
  void aStraightEdgeStaysStraightAlthoughTheSlashIsSlanted(
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double from,
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double to,
      @ForAll @DoubleRange(min = 1, max = 30) double open) {
    Panel panel = rectangle(200, 100);
    Panel wider =
        spread(panel, List.of(slash(p(200 * from, 0), p(200 * to, 100), open, Hinge.NONE)));
    Point across = p(200 * (to - from), 100).unit();
    assertEquals(1, wider.line("top").curves().size());
    assertEquals(100, length(wider, "left"), 1e-9);
    assertEquals(100, length(wider, "right"), 1e-9);
    Point shift = wider.line("top").end().minus(wider.line("top").start());
    assertEquals(200 + open * across.y(), shift.x(), 1e-9);
    assertEquals(open * across.x(), -shift.y(), 1e-9);
  }

  @Property(tries = 200, seed = "20260511")
  void aHingedEdgeKeepsItsLengthAndTheOtherGrowsByTheChord(
      @ForAll @DoubleRange(min = 0.25, max = 0.75) double at,
      @ForAll @DoubleRange(min = -12, max = 25) double open) {
    Panel panel = rectangle(300, 100);
    Panel opened = spread(panel, List.of(slash(p(300 * at, 0), p(300 * at, 100), open, Hinge.TO)));
    assertEquals(300, length(opened, "bottom"), 1e-6);
    assertEquals(100, length(opened, "left"), 1e-6);
    assertEquals(100, length(opened, "right"), 1e-6);
    // What is redrawn, three openings and 10 mm long, cuts two turns of half the angle.
    double angle = 2 * StrictMath.asin(open / 200);
    double bound = (3 * Math.abs(open) + 10) * angle * angle / 8 + 1e-9;
    assertEquals(300 + open, length(opened, "top"), bound);
    assertEquals(List.of(), turns(opened.line("top")));
    // No smooth line between straight ones is as long as they are.
    if (Math.abs(angle) > 0.01) {
      assertEquals(1, turns(opened.line("bottom")).size());
    }
    // The wedge, but for what the smooth line cuts off or fills.
    double wedge = open * StrictMath.sqrt(100 * 100 - open * open / 4) / 2;
    double reach = 1.5 * Math.abs(open) + 5;
    double area = opened.outline().signedArea();
    assertEquals(300 * 100 + wedge, area, reach * reach * Math.abs(angle) / 2 + 1e-6);
  }

  @Test
  void severalSlashesShareAnOpening() {
    Panel panel = rectangle(300, 100);
    List<Slash> slashes = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      slashes.add(slash("s" + i, p(50 * i, 0), p(50 * i, 100), 8, Hinge.TO));
    }
    Panel opened = spread(panel, slashes);
    assertEquals(300, length(opened, "bottom"), 1e-6);
    assertEquals(340, length(opened, "top"), 0.5);
    assertEquals(List.of(), turns(opened.line("top")));
    double angle = 2 * StrictMath.asin(8.0 / 200);
    Point left = opened.line("left").start().minus(opened.line("left").end()).unit();
    Point right = opened.line("right").end().minus(opened.line("right").start()).unit();
    // The grain lies on the line in the middle, so that both sides turn alike.
    assertEquals(left.x(), -right.x(), 1e-12);
    assertEquals(5 * angle, StrictMath.acos(left.dot(right)), 1e-9);
    assertEquals(panel.marks(), opened.marks());
    List<Slash> backwards = new ArrayList<>(slashes);
    java.util.Collections.reverse(backwards);
    assertEquals(
        opened.outline().signedArea(), spread(panel, backwards).outline().signedArea(), 1e-9);
  }

  @Property(tries = 60, seed = "20260511")
  void theBrimOfTheLongerBackKeepsItsHead(
      @ForAll @DoubleRange(min = -15, max = 45) double open,
      @ForAll @IntRange(min = 1, max = 4) int n) {
    Panel brim = brim();
    List<Slash> slashes = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      double share = i / (n + 1.0);
      Path outer = brim.line("outer");
      Path inner = brim.line("inner");
      slashes.add(
          slash(
              "s" + i,
              outer.atLength(outer.length() * share),
              inner.atLength(inner.length() * (1 - share)),
              open / n,
              Hinge.TO));
    }
    Panel opened = spread(brim, slashes);
    assertEquals(length(brim, "inner"), length(opened, "inner"), 0.005);
    assertEquals(
        length(brim, "outer") + open, length(opened, "outer"), 0.02 * Math.abs(open) + 1e-6);
    assertEquals(List.of(), turns(opened.line("outer")));
    if (open > 0) {
      assertEquals(List.of(), turns(opened.line("inner")), () -> "open " + open + " by " + n);
    }
    assertEquals(
        brim.edges().stream().map(Edge::name).toList(),
        opened.edges().stream().map(Edge::name).toList());
    assertEquals(brim.chains(), opened.chains());
    // An opening that adds to a ring's outer arc goes on round it.
    double grown = opened.outline().signedArea() - brim.outline().signedArea();
    assertEquals(open * 70 / 2, grown, 0.03 * 70 * Math.abs(open) + 0.1);
  }

  @Test
  void aCircleIsOpenedThroughCornersAtWhichItDoesNotTurn() {
    Panel circle = StatedShape.circle(200).panel("tip", Map.of(), Map.of());
    Edge first = circle.edges().get(0);
    Point across = p(100, 100).times(2).minus(first.path().start());
    Panel opened = spread(circle, List.of(slash(first.path().start(), across, 20, Hinge.NONE)));
    assertEquals(200 * Math.PI + 40, opened.outline().length(), 1.5);
    List<Curve> twice = new ArrayList<>(opened.outline().curves());
    twice.addAll(opened.outline().curves());
    assertEquals(List.of(), turns(new Path(twice)));
    assertEquals(4, opened.edges().size());
    assertEquals(10000 * Math.PI + 4000, opened.outline().signedArea(), 120);
    for (Edge edge : opened.edges()) {
      assertEquals(50 * Math.PI + 10, edge.path().length(), 0.5, edge.name());
    }
  }

  @Test
  void marksGoWithTheirPart() {
    Path pocket = Path.rectangle(new org.lapmark.geometry.Box(210, 20, 250, 60));
    Path level = Path.polyline(List.of(p(20, 50), p(280, 50)));
    Panel panel =
        with(
            rectangle(300, 100),
            new PointMark.DrillPoint("left", p(30, 40)),
            new PointMark.DrillPoint("right", p(280, 40)),
            new LineMark.Placement("pocket", pocket),
            new LineMark.FoldLine("level", level),
            new LineMark.StyleLine("yoke", level),
            new PointMark.MatchPoint("x", p(250, 50)),
            new PointMark.Buttonhole("b", p(260, 50), p(280, 50)),
            new Mark.Notch("top", 40, 1),
            new Mark.Notch("top", 290, 2),
            new Mark.Notch("bottom", 20, 1));
    Panel opened = spread(panel, List.of(slash(p(200, 0), p(200, 100), 15, Hinge.NONE)));
    assertEquals(
        List.of(
            panel.marks().get(0),
            new PointMark.DrillPoint("left", p(30, 40)),
            new PointMark.DrillPoint("right", p(295, 40)),
            new LineMark.Placement(
                "pocket", Path.rectangle(new org.lapmark.geometry.Box(225, 20, 265, 60))),
            new LineMark.FoldLine("level", Path.polyline(List.of(p(20, 50), p(295, 50)))),
            new LineMark.StyleLine("yoke", Path.polyline(List.of(p(20, 50), p(295, 50)))),
            new PointMark.MatchPoint("x", p(265, 50)),
            new PointMark.Buttonhole("b", p(275, 50), p(295, 50)),
            new Mark.Notch("top", 40, 1),
            new Mark.Notch("top", 305, 2),
            new Mark.Notch("bottom", 20, 1)),
        opened.marks());
  }

  @Test
  void withoutGrainTheFirstEdgesStartStays() {
    Panel panel = without(rectangle(300, 100));
    Panel opened = spread(panel, List.of(slash(p(50, 0), p(50, 100), 15, Hinge.NONE)));
    assertEquals(p(0, 0), opened.outline().start());
    // With its grainline, the wider part stays.
    Panel grain = spread(rectangle(300, 100), List.of(slash(p(50, 0), p(50, 100), 15, Hinge.NONE)));
    assertEquals(p(-15, 0), grain.outline().start());
  }

  @Test
  void aHingeMayBeAtACornerAndLinesMayFanOut() {
    Panel panel = without(rectangle(300, 100));
    Panel opened =
        spread(
            panel,
            List.of(
                slash("one", p(300, 100), p(100, 0), 10, Hinge.FROM),
                slash("two", p(300, 100), p(200, 0), 10, Hinge.FROM)));
    assertEquals(300, length(opened, "bottom"), 1e-9);
    assertEquals(100, length(opened, "right"), 1e-9);
    // Of each chord the edge gets what runs along it, and a little for the bend.
    assertEquals(300 + 10 * 100 / 223.6 + 10 * Math.sqrt(0.5), length(opened, "top"), 3);
    assertEquals(List.of(), turns(opened.line("top")));
  }

  private static void refused(PanelCode code, Panel panel, Slash... slashes) {
    PanelException thrown =
        assertThrows(PanelException.class, () -> spread(panel, List.of(slashes)));
    assertEquals(code, thrown.code(), thrown.getMessage());
    Map<String, Object> arguments = new LinkedHashMap<>(thrown.arguments());
    arguments.put("size", "M");
    Finding finding = new Finding(code, Position.ofFile("pattern.yaml"), arguments);
    String text = FindingText.message(finding) + FindingText.hint(finding);
    assertFalse(text.contains("{") || text.contains("null"), text);
    assertTrue(thrown.arguments().containsKey("slash"));
  }

  private static void taken(Panel panel, Slash... slashes) {
    spread(panel, List.of(slashes));
  }

  /** Three lines 2 mm apart. */
  private static Slash[] threeSlanted(double aside, double open) {
    Slash[] slashes = new Slash[3];
    for (int i = 0; i < 3; i++) {
      slashes[i] = slash("s" + i, p(100 + 2 * i, 0), p(100 + aside + 2 * i, 100), open, Hinge.TO);
    }
    return slashes;
  }

  @Test
  void whatCannotBeOpenedIsRefused() {
    Panel panel = rectangle(300, 100);
    refused(PanelCode.SLASH_NOT_ACROSS, panel, slash(p(90, 0), p(90, 99), 5, Hinge.NONE));
    taken(panel, slash(p(90, 0), p(90, 99.96), 5, Hinge.NONE));
    refused(PanelCode.SLASH_NOT_ACROSS, panel, slash(p(90, 20), p(90, 80), 5, Hinge.NONE));
    refused(PanelCode.SLASH_NOT_ACROSS, panel, slash(p(20, 0), p(90, 0), 5, Hinge.NONE));
    Slash upright = slash("a", p(90, 0), p(90, 100), 5, Hinge.TO);
    refused(
        PanelCode.SLASHES_CROSS, panel, upright, slash("b", p(60, 0), p(120, 100), 5, Hinge.TO));
    refused(PanelCode.SLASHES_CROSS, panel, upright, slash("b", p(90, 0), p(90, 100), 5, Hinge.TO));
    taken(panel, upright, slash("b", p(91, 0), p(120, 100), 5, Hinge.TO));
    refused(PanelCode.SLASH_AT_CORNER, panel, slash(p(0, 0), p(90, 100), 5, Hinge.NONE));
    taken(panel, slash(p(0, 0), p(90, 100), 5, Hinge.FROM));
    refused(PanelCode.SLASH_TOO_WIDE, panel, slash(p(90, 0), p(90, 100), 101, Hinge.TO));
    refused(PanelCode.SLASH_NOT_SMOOTH, panel, threeSlanted(190, 30));
    taken(panel, threeSlanted(190, 1));
    taken(panel, threeSlanted(90, 30));
    taken(panel, slash(p(150, 0), p(150, 100), 99, Hinge.TO));
    refused(PanelCode.SLASH_TURNS_BACK, panel, slash(p(40, 0), p(40, 100), -300, Hinge.NONE));
    Panel narrow = rectangle(60, 100);
    refused(PanelCode.SLASH_TURNS_BACK, narrow, slash(p(30, 0), p(30, 100), -70, Hinge.TO));
    taken(narrow, slash(p(30, 0), p(30, 100), -20, Hinge.TO));
    taken(panel, slash(p(40, 0), p(40, 100), -20, Hinge.NONE));
  }

  @Test
  void aPanelFoldedOverItselfIsRefused() {
    // A narrow hook that closes into a ring and beyond.
    Path outline =
        Path.polyline(
            List.of(
                p(0, 0),
                p(400, 0),
                p(400, 20),
                p(200, 20),
                p(20, 20),
                p(20, 60),
                p(400, 60),
                p(400, 80),
                p(0, 80),
                p(0, 0)));
    Panel panel =
        PanelBuilder.fromOutline("hook", outline, Map.of(), Map.of(), Map.of(), List.of());
    refused(PanelCode.SLASH_FOLDS, panel, slash(p(250, 0), p(250, 20), 8, Hinge.TO));
    taken(panel, slash(p(250, 0), p(250, 20), 3, Hinge.TO));
  }

  @Test
  void anArcIsReplacedOnlyBesideTheOpening() {
    Panel brim = brim();
    Path outer = brim.line("outer");
    Path inner = brim.line("inner");
    Panel opened =
        spread(
            brim,
            List.of(
                slash(
                    outer.atLength(outer.length() / 2),
                    inner.atLength(inner.length() / 2),
                    20,
                    Hinge.TO)));
    List<Curve> curves = opened.line("outer").curves();
    assertEquals(3, curves.size());
    assertTrue(curves.get(0) instanceof Arc && curves.get(2) instanceof Arc);
    assertEquals(outer.length() / 2 - 25, curves.get(0).length(), 1e-6);
    // Both halves turn alike about a grain that lies along the slash.
    assertEquals(curves.get(0).length(), curves.get(2).length(), 1e-6);
    assertEquals(brim.marks(), opened.marks());
    double axis = brim.outline().bounds().centre().x();
    assertEquals(axis, opened.outline().bounds().centre().x(), 1e-6);
    assertEquals(axis, middle(opened, "inner").x(), 1e-6);
  }

  /** An edge called top that is rounded outwards, on a block 300 wide. */
  private static Panel rounded(int kind, double height) {
    Point from = p(0, 0);
    Point to = p(300, 0);
    double radius = (150 * 150 + height * height) / (2 * height);
    Curve top =
        switch (kind) {
          case 0 -> Arc.fromEndpoints(from, radius, radius, 0, false, true, to);
          case 1 -> Arc.fromEndpoints(from, 150, height, 0, false, true, to);
          case 2 -> new Cubic(from, p(60, -1.3 * height), p(240, -1.3 * height), to);
          case 3 -> new Cubic(from, p(30, -1.6 * height), p(180, -height), to);
          default -> new Cubic(from, p(140, -1.5 * height), p(160, -1.5 * height), to);
        };
    Path outline =
        new Path(
            List.of(
                top,
                new Line(to, p(300, 200)),
                new Line(p(300, 200), p(0, 200)),
                new Line(p(0, 200), from)));
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", from);
    corners.put("b", to);
    corners.put("c", p(300, 200));
    corners.put("d", p(0, 200));
    return PanelBuilder.fromOutline(
        "front",
        outline,
        corners,
        Map.of("top", new PanelBuilder.CornerPair("a", "b")),
        Map.of(),
        List.of());
  }

  /** The most by which a line turns to the left between points that lie close together. */
  private static double mostToTheLeft(Path line) {
    double most = 0;
    int steps = 1000;
    Point before = line.tangentAtLength(0);
    for (int i = 1; i <= steps; i++) {
      Point here = line.tangentAtLength(line.length() * i / steps);
      most = Math.max(most, -StrictMath.atan2(before.cross(here), before.dot(here)));
      before = here;
    }
    return most;
  }

  @Property(tries = 400, seed = "20261127")
  void aRoundedEdgeStaysRoundedAcrossAParallelOpening(
      @ForAll @IntRange(min = 0, max = 4) int kind,
      @ForAll @DoubleRange(min = 15, max = 90) double height,
      @ForAll @DoubleRange(min = 0.25, max = 0.75) double at,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double slant,
      @ForAll @DoubleRange(min = -8, max = 30) double open) {
    Panel panel = rounded(kind, height);
    Path old = panel.line("top");
    double cut = old.length() * at;
    Point from = old.atLength(cut);
    // From square to the edge, turned by up to 17 degrees.
    Point square = old.tangentAtLength(cut).quarterTurn();
    Point along = square.plus(old.tangentAtLength(cut).times(slant)).unit();
    Point to = from.plus(along.times((200 - from.y()) / along.y()));
    Assume.that(to.x() > 10 && to.x() < 290);
    List<PanelException> notices = new ArrayList<>();
    Panel opened =
        Spreading.spread(panel, List.of(slash(from, to, open, Hinge.NONE)), notices::add);
    Path top = opened.line("top");
    // Beyond the neighbourhood both parts are what they were.
    double near = 4 * (Math.abs(open) + 5) + 1e-6;
    for (int i = 0; i <= 50; i++) {
      double here = old.length() * i / 50;
      if (here < cut - near) {
        assertEquals(0, old.atLength(here).distance(top.atLength(here)), 1e-6);
      } else if (here > cut + near) {
        double shifted = top.length() - (old.length() - here);
        Point moved = top.atLength(shifted).minus(top.end()).plus(old.end());
        assertEquals(0, old.atLength(here).distance(moved), 1e-6);
      }
    }
    assertEquals(List.of(), turns(top));
    double cosine = 1 / Math.sqrt(1 + slant * slant);
    if (notices.isEmpty()) {
      assertEquals(0, mostToTheLeft(top), 2e-5, () -> "bends back: " + top);
      // What lies aslant can't be shorter than straight.
      double aside = open * slant * cosine;
      double more = top.length() - (old.length() + open * cosine);
      double most = aside * aside / (2 * Math.max(10, Math.abs(open)));
      assertTrue(more > -0.05 - most && more < most + 0.02, () -> "longer by " + more);
    } else {
      assertEquals(PanelCode.SLASH_BENDS_BACK, notices.get(0).code());
      assertTrue(Math.abs(slant) > 0.02, () -> "square to the edge: " + notices);
    }
  }

  @Property(tries = 200, seed = "20261128")
  void anOpeningSquareToARoundedEdgeIsAddedToItsLength(
      @ForAll @IntRange(min = 0, max = 4) int kind,
      @ForAll @DoubleRange(min = 15, max = 90) double height,
      @ForAll @DoubleRange(min = 0.35, max = 0.65) double at,
      @ForAll @DoubleRange(min = 1, max = 30) double open) {
    Panel panel = rounded(kind, height);
    Path old = panel.line("top");
    Point from = old.atLength(old.length() * at);
    Point along = old.tangentAtLength(old.length() * at).quarterTurn();
    Point to = from.plus(along.times((200 - from.y()) / along.y()));
    Assume.that(to.x() > 10 && to.x() < 290);
    List<PanelException> notices = new ArrayList<>();
    Panel opened =
        Spreading.spread(panel, List.of(slash(from, to, open, Hinge.NONE)), notices::add);
    assertEquals(List.of(), notices);
    assertEquals(old.length() + open, length(opened, "top"), 0.005);
    assertEquals(0, mostToTheLeft(opened.line("top")), 2e-5);
  }

  @Test
  void anEdgeTooStraightForTheSlantOfAnOpeningIsTold() {
    // Straight in the middle, rounded at both ends.
    Path outline =
        new Path(
            List.of(
                Arc.ofCircle(p(40, 40), 40, Math.PI, Math.PI / 2),
                new Line(p(40, 0), p(260, 0)),
                Arc.ofCircle(p(260, 40), 40, -Math.PI / 2, Math.PI / 2),
                new Line(p(300, 40), p(300, 200)),
                new Line(p(300, 200), p(0, 200)),
                new Line(p(0, 200), p(0, 40))));
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", p(0, 40));
    corners.put("b", p(300, 40));
    corners.put("c", p(300, 200));
    Panel panel =
        PanelBuilder.fromOutline("front", outline, corners, Map.of(), Map.of(), List.of());
    List<PanelException> notices = new ArrayList<>();
    Spreading.spread(panel, List.of(slash(p(150, 0), p(190, 200), 10, Hinge.NONE)), notices::add);
    assertEquals(1, notices.size());
    assertEquals("a-b", notices.get(0).arguments().get("edge"));
    notices.clear();
    Spreading.spread(panel, List.of(slash(p(150, 0), p(150, 200), 10, Hinge.NONE)), notices::add);
    assertEquals(List.of(), notices);
  }
}
