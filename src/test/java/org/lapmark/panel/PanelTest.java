package org.lapmark.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.PanelBuilder.CornerPair;
import org.lapmark.panel.cutting.Allowance;
import org.lapmark.panel.cutting.Allowances;
import org.lapmark.panel.cutting.CornerShape;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.panel.derivation.Beside;

class PanelTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** Flat behind, round in front; starts in the middle of the flat. */
  private static Path end() {
    return new Path(
        List.of(
            new Line(p(0, 0), p(0, -45)),
            Arc.ofCircle(p(25, -45), 25, Math.PI, Math.PI / 2),
            new Line(p(25, -70), p(55, -70)),
            new Cubic(p(55, -70), p(97, -70), p(125, -38.5), p(125, 0)),
            new Cubic(p(125, 0), p(125, 38.5), p(97, 70), p(55, 70)),
            new Line(p(55, 70), p(25, 70)),
            Arc.ofCircle(p(25, 45), 25, Math.PI / 2, Math.PI / 2),
            new Line(p(0, 45), p(0, 0))));
  }

  private static Map<String, Point> corners(Object... namesAndPoints) {
    Map<String, Point> corners = new LinkedHashMap<>();
    for (int i = 0; i < namesAndPoints.length; i += 2) {
      corners.put((String) namesAndPoints[i], (Point) namesAndPoints[i + 1]);
    }
    return corners;
  }

  private static final Map<String, Point> ENDS =
      corners("top", p(0, -45), "bottom", p(0, 45), "front", p(125, 0));

  private static Panel built(Path outline, Map<String, Point> corners, Mark... marks) {
    return PanelBuilder.fromOutline("end", outline, corners, Map.of(), Map.of(), List.of(marks));
  }

  private static Panel shape(Mark mark, double... coordinates) {
    List<Point> points = new ArrayList<>();
    Map<String, Point> corners = new LinkedHashMap<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(p(coordinates[i], coordinates[i + 1]));
      corners.put(String.valueOf((char) ('a' + i / 2)), points.get(i / 2));
    }
    points.add(points.get(0));
    return PanelBuilder.fromOutline(
        "shape",
        Path.polyline(points),
        corners,
        Map.of(),
        Map.of(),
        mark == null ? List.of() : List.of(mark));
  }

  private static PieceShape piece(Panel panel, double allowance) {
    Map<String, Double> allowances = new LinkedHashMap<>();
    panel.edges().forEach(edge -> allowances.put(edge.name(), allowance));
    return PieceShape.of(panel, allowances);
  }

  private static List<String> names(Panel panel) {
    return panel.edges().stream().map(Edge::name).toList();
  }

  private static void refused(PanelCode code, Runnable work) {
    PanelException thrown = assertThrows(PanelException.class, work::run);
    assertEquals(code, thrown.code(), thrown.getMessage());
    // Its English names every argument it is given a place for.
    Map<String, Object> arguments = new LinkedHashMap<>(thrown.arguments());
    arguments.put("size", "M"); // Whoever evaluates the panel knows it.
    Finding finding = new Finding(code, Position.ofFile("pattern.yaml"), arguments);
    String text = FindingText.message(finding) + FindingText.hint(finding);
    assertFalse(text.contains("{"), text);
    assertFalse(text.contains("null"), text);
  }

  @Test
  void outlineIsCutAtItsCorners() {
    Map<String, CornerPair> stated = new LinkedHashMap<>();
    stated.put("rear", new CornerPair("bottom", "top"));
    stated.put("rim", new CornerPair("top", "bottom"));
    Map<String, List<String>> chains = new LinkedHashMap<>();
    chains.put("all", List.of("rim", "rear"));
    Panel panel = PanelBuilder.fromOutline("end", end(), ENDS, stated, chains, List.of());
    assertEquals(List.of("top-front", "front-bottom", "rear"), names(panel));
    assertEquals(List.of("top-front", "front-bottom"), panel.chains().get("rim"));
    assertEquals(List.of("top-front", "front-bottom", "rear"), panel.chains().get("all"));
    assertEquals(90, panel.line("rear").length(), 1e-9);
    assertEquals(449.89 - 90, panel.line("rim").length(), 0.005);
    assertEquals(449.89, panel.outline().length(), 0.005);
    assertEquals(p(0, -45), panel.outline().start());
    assertEquals(
        new Edge("rear", "bottom", "top", panel.edges().get(2).path()), panel.edges().get(2));
    assertNull(panel.line("side"));
  }

  @Test
  void directionIsTurnedClockwiseAndNamesKeepTheirMeaning() {
    Panel drawn = built(end(), ENDS);
    Panel turned = built(end().reversed(), ENDS);
    assertEquals(new TreeSet<>(names(drawn)), new TreeSet<>(names(turned)));
    assertTrue(turned.outline().signedArea() > 0);
    for (String name : names(drawn)) {
      assertEquals(0, drawn.line(name).start().distance(turned.line(name).start()), 1e-9);
      assertEquals(drawn.line(name).length(), turned.line(name).length(), 1e-6);
    }
  }

  @Test
  void cornerWithinACurvePartsItExactly() {
    Path outline = end();
    Curve front = outline.curves().get(3);
    Point inside = front.at(0.3);
    Panel panel = built(outline, corners("a", inside, "b", p(0, 45)));
    assertEquals(0, panel.edges().get(0).path().start().distance(inside), 1e-6);
    assertEquals(outline.length(), panel.outline().length(), 1e-6);
    assertEquals(outline.signedArea(), panel.outline().signedArea(), 1e-6);
    assertTrue(panel.edges().get(0).path().curves().get(0) instanceof Cubic);
    // Aside by less than the tolerance is still on the outline.
    Point aside = inside.plus(front.tangent(0.3).quarterTurn().times(0.049));
    assertEquals(2, built(outline, corners("a", aside, "b", p(0, 45))).edges().size());
  }

  @Test
  void noCornerOrOneLeavesOneEdge() {
    assertEquals(List.of("outline"), names(built(end(), Map.of())));
    Panel one =
        PanelBuilder.fromOutline(
            "end",
            end(),
            corners("front", p(125, 0)),
            Map.of("rim", new CornerPair("front", "front")),
            Map.of(),
            List.of());
    assertEquals(List.of("rim"), names(one));
    assertEquals(449.89, one.line("rim").length(), 0.005);
    assertEquals(p(125, 0), one.outline().start());
    Panel three =
        PanelBuilder.fromOutline(
            "end",
            end(),
            ENDS,
            Map.of("rim", new CornerPair("front", "front")),
            Map.of(),
            List.of());
    assertEquals(449.89, three.line("rim").length(), 0.005);
    assertEquals(p(125, 0), three.line("rim").start());
  }

  @Test
  void outlinesAreChecked() {
    Path open = end().part(0, 400);
    refused(PanelCode.OUTLINE_OPEN, () -> built(open, Map.of()));
    refused(PanelCode.OUTLINE_CROSSES_ITSELF, () -> shape(null, 0, 0, 50, 40, 50, 0, 0, 30));
    refused(PanelCode.OUTLINE_WITHOUT_AREA, () -> shape(null, 0, 0, 50, 0));
    shape(null, 0, 0, 50, 0, 50, 0.1);
    refused(PanelCode.CORNER_OFF_OUTLINE, () -> built(end(), corners("a", p(0.051, 0))));
    built(end(), corners("a", p(0.049, 0)));
    refused(
        PanelCode.CORNERS_TOGETHER, () -> built(end(), corners("a", p(0, 10), "b", p(0, 10.04))));
    built(end(), corners("a", p(0, 10), "b", p(0, 10.06)));
  }

  @Test
  void edgesAndChainsAreChecked() {
    CornerPair rear = new CornerPair("bottom", "top");
    Map<String, List<String>> none = Map.of();
    refused(
        PanelCode.EDGE_CORNER_UNKNOWN,
        () -> cut(Map.of("rear", new CornerPair("bottom", "tip")), none));
    Map<String, CornerPair> twice = new LinkedHashMap<>();
    twice.put("rear", rear);
    twice.put("back", rear);
    refused(PanelCode.EDGE_STATED_TWICE, () -> cut(twice, none));
    refused(
        PanelCode.EDGE_NAME_TAKEN,
        () -> cut(Map.of("rear", rear), Map.of("rear", List.of("rear"))));
    refused(PanelCode.EDGE_NAME_TAKEN, () -> cut(Map.of("top-front", rear), none));
    refused(PanelCode.PANEL_EDGE_UNKNOWN, () -> cut(Map.of(), Map.of("c", List.of("side"))));
    refused(PanelCode.PANEL_EDGE_UNKNOWN, () -> cut(Map.of(), Map.of("c", List.of("c"))));
    refused(
        PanelCode.CHAIN_BROKEN,
        () -> cut(Map.of(), Map.of("c", List.of("front-bottom", "top-front"))));
    refused(
        PanelCode.CHAIN_BROKEN,
        () -> cut(Map.of(), Map.of("c", List.of("top-front", "top-front"))));
    assertEquals(
        2,
        cut(Map.of("rear", rear), Map.of("c", List.of("rear", "top-front")))
            .chains()
            .get("c")
            .size());
  }

  /** Beside what is refused, what is only just in order. */
  @Test
  void nearMissesPass() {
    // An outline that comes near itself, against one that touches itself.
    refused(
        PanelCode.OUTLINE_CROSSES_ITSELF, () -> shape(null, 0, 0, 100, 0, 100, 60, 50, 0, 0, 60));
    assertEquals(5, shape(null, 0, 0, 100, 0, 100, 60, 50, 0.01, 0, 60).edges().size());
    // A gap that counts as rounding, against one that doesn't.
    assertEquals(1, built(almostClosed(0.9e-6), Map.of()).edges().size());
    refused(PanelCode.OUTLINE_OPEN, () -> built(almostClosed(2e-6), Map.of()));
    // Edges between known corners; the same corners the other way round are another edge.
    Map<String, CornerPair> both = new LinkedHashMap<>();
    both.put("rear", new CornerPair("bottom", "top"));
    both.put("rim", new CornerPair("top", "bottom"));
    assertEquals(3, cut(both, Map.of()).edges().size());
    // A name that differs by its case; the name that the stretch would have had anyway.
    Map<String, CornerPair> rear = Map.of("rear", new CornerPair("bottom", "top"));
    assertEquals(1, cut(rear, Map.of("Rear", List.of("rear"))).chains().size());
    Map<String, CornerPair> own = Map.of("bottom-top", new CornerPair("bottom", "top"));
    assertEquals("bottom-top", cut(own, Map.of()).edges().get(2).name());
    // A chain through the first corner, and one by way of another chain.
    assertEquals(
        List.of("bottom-top", "top-front"),
        cut(Map.of(), Map.of("c", List.of("bottom-top", "top-front"))).chains().get("c"));
    Map<String, List<String>> nested = new LinkedHashMap<>();
    nested.put("c", List.of("d", "bottom-top"));
    nested.put("d", List.of("top-front", "front-bottom"));
    assertEquals(3, cut(Map.of(), nested).chains().get("c").size());
    // Notches once and twice; an allowance of nothing, also of minus nothing.
    double[] square = {0, 0, 100, 0, 100, 80, 0, 80};
    assertEquals(1, piece(shape(new Mark.Notch("a-b", 50, 1), square), 10).notches().size());
    assertEquals(2, piece(shape(new Mark.Notch("a-b", 50, 2), square), 10).notches().size());
    refused(PanelCode.NOTCH_COUNT, () -> shape(new Mark.Notch("a-b", 50, 0), square));
    assertEquals(new Box(0, 0, 100, 80), piece(shape(null, square), -0.0).bounds());
    // A circle keeps a dot at just less than its radius.
    Panel round = built(Path.circle(p(0, 0), 20), Map.of());
    assertEquals(0.1, inset("dot", round, 19.9).outline().bounds().maxX(), 1e-6);
    refused(PanelCode.INSET_NOTHING_LEFT, () -> inset("dot", round, 20));
  }

  private static Path almostClosed(double gap) {
    return new Path(
        List.of(
            new Line(p(0, 0), p(50, 0)),
            new Line(p(50, 0), p(50, 40)),
            new Line(p(50, 40), p(0, gap))));
  }

  private static Panel cut(Map<String, CornerPair> edges, Map<String, List<String>> chains) {
    return PanelBuilder.fromOutline("end", end(), ENDS, edges, chains, List.of());
  }

  @Test
  void rectangleHasItsNames() {
    Panel strip = PanelBuilder.rectangle("strip", 300, 40, false);
    assertEquals(List.of("top", "right", "bottom", "left"), names(strip));
    assertEquals(12000, strip.outline().signedArea(), 1e-9);
    assertEquals("bottom_right", strip.edges().get(1).to());
    Mark.Grainline grain = (Mark.Grainline) strip.marks().get(0);
    assertEquals(grain.from().x(), grain.to().x());
    Mark.Grainline bias =
        (Mark.Grainline) PanelBuilder.rectangle("strip", 300, 40, true).marks().get(0);
    assertEquals(bias.to().x() - bias.from().x(), bias.to().y() - bias.from().y(), 1e-9);
    refused(PanelCode.RECTANGLE_WITHOUT_SIZE, () -> PanelBuilder.rectangle("strip", 300, 0, false));
    PanelBuilder.rectangle("strip", 300, 0.1, false);
  }

  @Test
  void cuttingLineOfASquareIsALargerOne() {
    PieceShape piece = piece(PanelBuilder.rectangle("square", 100, 100, false), 10);
    assertEquals(new Box(-10, -10, 110, 110), piece.bounds());
    assertEquals(4, piece.cuttingLine().spans().size());
    assertEquals(
        List.of("top", "right", "bottom", "left"),
        piece.cuttingLine().spans().stream().map(CuttingLine.Span::edge).toList());
    assertEquals(120 * 120, piece.cuttingLine().path().signedArea(), 1e-9);
    for (CuttingLine.Span span : piece.cuttingLine().spans()) {
      assertEquals(120, span.path().length(), 1e-9);
    }
  }

  @Test
  void edgesWithoutAllowanceKeepTheirStitchingLine() {
    Panel panel = built(end(), ENDS);
    PieceShape bare = piece(panel, 0);
    assertEquals(panel.outline(), bare.cuttingLine().path());
    Map<String, Double> folded = new LinkedHashMap<>();
    folded.put("top-front", 10.0);
    folded.put("front-bottom", 10.0);
    folded.put("bottom-top", 0.0);
    // A raw edge ends where it ends: its neighbours' allowances step beside it.
    assertEquals(-10, PieceShape.of(panel, folded).bounds().minX(), 1e-6);
    Map<String, Allowance> onFold = new LinkedHashMap<>(Allowances.of(folded).edges());
    onFold.put("bottom-top", Allowance.FOLD);
    PieceShape piece = PieceShape.of(panel, new Allowances(onFold, CornerShape.USUAL, Map.of()));
    assertTrue(piece.isFold("bottom-top") && !piece.isFold("top-front"));
    // The straight edge goes on until it meets the line around the rounded corner: 35 from the
    // corner's centre, which is 25 aside.
    double on = Math.sqrt(35 * 35 - 25 * 25);
    assertEquals(0, piece.bounds().minX(), 1e-9);
    CuttingLine.Span rear = piece.cuttingLine().spans().get(2);
    assertEquals("bottom-top", rear.edge());
    assertEquals(90 + 2 * on, rear.path().length(), 1e-6);
    assertEquals(0, rear.path().end().distance(p(0, -45 - on)), 1e-6);
    assertEquals(135, piece.bounds().maxX(), 0.01);
    assertThrows(
        IllegalArgumentException.class, () -> PieceShape.of(panel, Map.of("top-front", 10.0)));
    folded.put("bottom-top", -0.1);
    refused(PanelCode.EDGE_ALLOWANCE_NEGATIVE, () -> PieceShape.of(panel, folded));
  }

  private static PieceShape onFold(double... coordinates) {
    Panel panel = shape(null, coordinates);
    Map<String, Double> allowances = new LinkedHashMap<>();
    panel.edges().forEach(edge -> allowances.put(edge.name(), 10.0));
    Map<String, Allowance> edges = new LinkedHashMap<>(Allowances.of(allowances).edges());
    edges.put(panel.edges().get(0).name(), Allowance.FOLD);
    return PieceShape.of(panel, new Allowances(edges, CornerShape.USUAL, Map.of()));
  }

  /** Folds run up the paper at x 0; unfolded pieces must not reach past them, nor fall short. */
  @Test
  void allowancesEndOnTheFoldsLine() {
    // Square corners; obtuse ones, whose allowance would pass the fold; sharp ones; the near miss
    // of
    // a smooth join, turned by 5 degrees.
    List<PieceShape> pieces =
        List.of(
            onFold(0, 80, 0, 0, 60, 0, 60, 80),
            onFold(0, 80, 0, 0, 30, -40, 60, 0, 60, 80),
            onFold(0, 80, 0, 0, 60, 40, 60, 80),
            onFold(0, 80, 0, 0, 17.5, -200, 60, 0, 60, 80));
    double slant = 5.0 / 3 * 10;
    double[] tops = {-10, -slant, -10 * Math.sqrt(52) / 6, -10 * Math.hypot(17.5, 200) / 17.5};
    for (int i = 0; i < pieces.size(); i++) {
      PieceShape piece = pieces.get(i);
      assertEquals(0, piece.bounds().minX(), 1e-9, "piece " + i);
      Path fold = piece.cuttingLine().spans().get(0).path();
      assertEquals(0, fold.end().distance(p(0, tops[i])), 1e-6, "piece " + i);
      assertEquals(0, fold.start().distance(p(0, 90)), 1e-6, "piece " + i);
    }
    // A neighbour that bends away from the panel isn't met: its allowance ends square to the fold.
    PieceShape flared = onFold(0, 80, 0, 0, -30, -40, 60, -40, 60, 80);
    assertEquals(0, flared.cuttingLine().spans().get(0).path().end().distance(p(0, 0)), 1e-6);
    Path next = flared.cuttingLine().spans().get(1).path();
    assertEquals(0, next.curves().get(0).end().distance(p(-8, 6)), 1e-6);
  }

  @Test
  void cuttingLineOfTheEndIsItsParallel() {
    Panel panel = built(end(), ENDS);
    PieceShape piece = piece(panel, 10);
    Path line = piece.cuttingLine().path();
    assertTrue(line.isClosed());
    assertEquals(panel.outline().length() + 20 * Math.PI, line.length(), 0.02);
    for (int i = 0; i < 500; i++) {
      assertEquals(10, panel.outline().distance(line.atLength(i * line.length() / 500)), 0.005);
    }
    // Arcs stay arcs.
    assertEquals(2, line.curves().stream().filter(curve -> curve instanceof Arc).count());
  }

  @Test
  void allowanceThatCannotBeDrawnNamesItsEdge() {
    // A slot 20 wide: open at 9.5, its floor covered at 10.5.
    refused(
        PanelCode.ALLOWANCE_COVERS_EDGE,
        () ->
            piece(shape(null, 0, 0, 40, 0, 40, 60, 60, 60, 60, 0, 100, 0, 100, 100, 0, 100), 10.5));
    piece(shape(null, 0, 0, 40, 0, 40, 60, 60, 60, 60, 0, 100, 0, 100, 100, 0, 100), 9.5);
    double[] keyhole = {
      0, 0, 40, 0, 40, 20, 20, 20, 20, 80, 80, 80, 80, 20, 60, 20, 60, 0, 100, 0, 100, 100, 0, 100
    };
    refused(PanelCode.ALLOWANCE_CLOSES_RING, () -> piece(shape(null, keyhole), 10.5));
    piece(shape(null, keyhole), 9.5);
  }

  @Test
  void notchesRunInwardsFromTheCuttingLine() {
    Panel panel = shape(new Mark.Notch("a-b", 30, 1), 0, 0, 100, 0, 100, 80, 0, 80);
    Path wide = piece(panel, 12).notches().get(0);
    assertEquals(0, wide.start().distance(p(30, -12)), 1e-9);
    assertEquals(0, wide.end().distance(p(30, -7)), 1e-9);
    Path narrow = piece(panel, 6).notches().get(0);
    assertEquals(0, narrow.end().distance(p(30, -3)), 1e-9);
    Path none = piece(panel, 0).notches().get(0);
    assertEquals(0, none.start().distance(p(30, 0)), 1e-9);
    assertEquals(0, none.end().distance(p(30, 3)), 1e-9);
    Panel twice = shape(new Mark.Notch("b-c", 30, 2), 0, 0, 100, 0, 100, 80, 0, 80);
    List<Path> both = piece(twice, 10).notches();
    assertEquals(2, both.size());
    assertEquals(0, both.get(0).start().distance(p(110, 27.5)), 1e-9);
    assertEquals(0, both.get(1).start().distance(p(110, 32.5)), 1e-9);
  }

  @Test
  void notchesOfACurveStartOnItsCuttingLine() {
    for (int i = 0; i <= 20; i++) {
      double at = 180.0 * i / 20;
      Panel panel = built(end(), ENDS, new Mark.Notch("top-front", Math.min(at, 179), 1));
      PieceShape piece = piece(panel, 10);
      Path notch = piece.notches().get(0);
      assertEquals(5, notch.length(), 0.005);
      assertEquals(0, piece.cuttingLine().path().distance(notch.start()), 1e-6);
      assertEquals(5, panel.outline().distance(notch.end()), 0.01);
    }
  }

  @Test
  void notchesAreChecked() {
    double[] square = {0, 0, 100, 0, 100, 80, 0, 80};
    refused(PanelCode.NOTCH_OFF_EDGE, () -> shape(new Mark.Notch("a-b", 100.1, 1), square));
    refused(PanelCode.NOTCH_OFF_EDGE, () -> shape(new Mark.Notch("a-b", -0.1, 1), square));
    refused(PanelCode.NOTCH_OFF_EDGE, () -> shape(new Mark.Notch("a-b", 98, 2), square));
    assertEquals(1, piece(shape(new Mark.Notch("a-b", 100, 1), square), 10).notches().size());
    assertEquals(1, piece(shape(new Mark.Notch("a-b", 0, 1), square), 10).notches().size());
    assertEquals(2, piece(shape(new Mark.Notch("a-b", 97.5, 2), square), 10).notches().size());
    refused(PanelCode.NOTCH_COUNT, () -> shape(new Mark.Notch("a-b", 50, 5), square));
    refused(PanelCode.PANEL_EDGE_UNKNOWN, () -> shape(new Mark.Notch("a-c", 50, 1), square));
    double[] corner = {0, 0, 100, 0, 100, 50, 50, 50, 50, 100, 0, 100};
    refused(
        PanelCode.NOTCH_WITHOUT_CUTTING_LINE,
        () -> piece(shape(new Mark.Notch("d-e", 9, 1), corner), 10));
    assertEquals(1, piece(shape(new Mark.Notch("d-e", 11, 1), corner), 10).notches().size());
  }

  @Test
  void notchOnAChainFallsOnItsEdge() {
    Panel panel =
        PanelBuilder.fromOutline(
            "end",
            end(),
            ENDS,
            Map.of("rim", new CornerPair("top", "bottom")),
            Map.of(),
            List.of(new Mark.Notch("rim", 200, 1)));
    double first = panel.line("top-front").length();
    Mark.Notch notch = (Mark.Notch) panel.marks().get(0);
    assertEquals("front-bottom", notch.edge());
    assertEquals(200 - first, notch.at(), 1e-9);
    refused(
        PanelCode.NOTCH_OFF_EDGE,
        () ->
            PanelBuilder.fromOutline(
                "end",
                end(),
                ENDS,
                Map.of("rim", new CornerPair("top", "bottom")),
                Map.of(),
                List.of(new Mark.Notch("rim", 360, 1))));
  }

  @Test
  void insetKeepsNamesAndGrain() {
    Panel panel =
        PanelBuilder.fromOutline(
            "end",
            end(),
            ENDS,
            Map.of("rim", new CornerPair("top", "bottom")),
            Map.of(),
            List.of(
                new Mark.Notch("rim", 20, 1),
                new Mark.Grainline(p(60, -30), p(60, 30)),
                new PointMark.DrillPoint("stud", p(40, 0))));
    Panel inset = inset("foam", panel, 3);
    assertEquals("foam", inset.name());
    assertEquals(names(panel), names(inset));
    assertEquals(panel.chains(), inset.chains());
    assertEquals(1, inset.marks().size());
    assertEquals(449.89 - 6 * Math.PI, inset.outline().length(), 0.01);
    assertEquals(
        panel.outline().signedArea() - 3 * panel.outline().length() + 9 * Math.PI,
        inset.outline().signedArea(),
        0.5);
    assertEquals("top", inset.edges().get(0).from());
    assertEquals("bottom", inset.edges().get(2).from());
    assertEquals(panel.edges(), inset("foam", panel, 0).edges());
    // Past the corners' radius, and past the middle.
    assertEquals(names(panel), names(inset("foam", panel, 30)));
    refused(PanelCode.INSET_NOTHING_LEFT, () -> inset("foam", panel, 70));
    inset("foam", panel, 60);
    assertThrows(IllegalArgumentException.class, () -> inset("foam", panel, -1));
  }

  @Test
  void zigzagTooFineForAnAllowanceIsRefused() {
    PieceShape wide = piece(zigzag(40), 10);
    assertFalse(wide.cuttingLine().spans().isEmpty());
    refused(PanelCode.OUTLINE_TOO_INTRICATE, () -> piece(zigzag(1500), 10));
  }

  private static Panel zigzag(int teeth) {
    List<Point> points = new ArrayList<>(List.of(p(0, 100), p(0, 0), p(100, 0)));
    for (int i = 1; i < 2 * teeth; i++) {
      points.add(p(100 - 90.0 * i / (2 * teeth), i % 2 == 0 ? 100 : 60));
    }
    points.add(points.get(0));
    Map<String, Point> corners = corners("a", p(0, 100), "b", p(0, 0), "c", p(100, 0));
    return built(Path.polyline(points), corners);
  }

  @Test
  void insetThatFallsApartIsRefused() {
    Panel glass = shape(null, 0, 0, 50, 40, 100, 0, 100, 100, 50, 60, 0, 100);
    refused(PanelCode.INSET_FALLS_APART, () -> inset("foam", glass, 14));
    inset("foam", glass, 7);
  }

  @Test
  void edgeThatVanishesInsideIsLeftOut() {
    Panel cut = shape(null, 0, 0, 95, 0, 100, 5, 100, 80, 0, 80);
    Panel inset = inset("foam", cut, 20);
    assertEquals(List.of("a-b", "c-d", "d-e", "e-a"), names(inset));
    assertEquals("c", inset.edges().get(0).to());
    assertEquals(60 * 40, inset.outline().signedArea(), 1e-6);
  }

  @Test
  void shapesFollowTurns() {
    Panel panel = built(end(), ENDS);
    Affine turn = Affine.rotation(31);
    Map<String, Point> turned = new LinkedHashMap<>();
    ENDS.forEach((name, point) -> turned.put(name, turn.apply(point)));
    Panel image = built(end().transformed(turn), turned);
    assertEquals(
        piece(panel, 10).cuttingLine().path().signedArea(),
        piece(image, 10).cuttingLine().path().signedArea(),
        0.05);
  }

  private static Panel inset(String name, Panel panel, double distance) {
    Map<String, Double> distances = new LinkedHashMap<>();
    panel.edges().forEach(edge -> distances.put(edge.name(), distance));
    return new Beside(panel, false, distances, Beside.Marks.NONE).derive(name, notice -> {});
  }
}
