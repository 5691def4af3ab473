package org.lapmark.panel.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

class FollowingIntakesTest {
  private static final double EXACT = 1e-4;

  private final List<PanelException> notices = new ArrayList<>();

  private static Panel skirt(Curve top) {
    Point b = new Point(200, 0);
    Point c = new Point(200, 100);
    Point d = new Point(0, 100);
    Path outline =
        new Path(List.of(top, new Line(b, c), new Line(c, d), new Line(d, new Point(0, 0))));
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", new Point(0, 0));
    corners.put("b", b);
    corners.put("c", c);
    corners.put("d", d);
    Map<String, PanelBuilder.CornerPair> edges = new LinkedHashMap<>();
    edges.put("top", new PanelBuilder.CornerPair("a", "b"));
    edges.put("right", new PanelBuilder.CornerPair("b", "c"));
    edges.put("bottom", new PanelBuilder.CornerPair("c", "d"));
    edges.put("left", new PanelBuilder.CornerPair("d", "a"));
    Panel plain = PanelBuilder.fromOutline("skirt", outline, corners, edges, Map.of(), List.of());
    List<Mark> marks = new ArrayList<>();
    marks.add(Darts.stated(plain, "dart", "top", 50, 24, 60, Intake.Press.BACK));
    marks.add(Darts.pleat(plain, "pleat", "top", 140, 30, 60, Intake.PleatKind.BOX, true));
    return new Panel("skirt", plain.edges(), plain.chains(), marks);
  }

  private static Panel straight() {
    return skirt(new Line(new Point(0, 0), new Point(200, 0)));
  }

  private Panel inset(Panel panel, double distance) {
    return new Beside(panel, false, top(distance), Beside.Marks.ALL).derive("lining", notices::add);
  }

  private static Map<String, Double> top(double distance) {
    return Map.of("top", distance, "right", 0.0, "bottom", 0.0, "left", 0.0);
  }

  private static Intake intake(Panel panel, String name) {
    return Darts.intakes(panel).stream().filter(one -> one.name().equals(name)).findFirst().get();
  }

  @Test
  void aDartGetsNarrowerAsItsEdgeMovesTowardsTheApex() {
    Panel lining = inset(straight(), 15);
    Intake.Dart dart = (Intake.Dart) intake(lining, "dart");
    assertEquals(24 * 45 / 60.0, dart.width(), EXACT);
    assertEquals(0, dart.apex().distance(new Point(50, 60)), EXACT);
    assertEquals(Intake.Press.BACK, dart.press());
    assertEquals(200 - 18 - 30, ClosedLine.of(lining, "top").path().length(), EXACT);
    assertTrue(notices.isEmpty());
  }

  @Test
  void aPleatKeepsItsWidth() {
    Intake.Pleat pleat = (Intake.Pleat) intake(inset(straight(), 15), "pleat");
    assertEquals(30, pleat.width(), EXACT);
    for (Line line : pleat.lines()) {
      assertEquals(45, line.length(), EXACT);
    }
  }

  @Test
  void linesAreDrawnOnToAnEdgeFartherOut() {
    Panel larger =
        new Beside(straight(), true, top(30), Beside.Marks.ALL).derive("larger", notices::add);
    assertEquals(24 * 90 / 60.0, intake(larger, "dart").width(), EXACT);
    assertEquals(30, intake(larger, "pleat").width(), EXACT);
  }

  @Test
  void legsStayEquallyLongOnACurvedEdge() {
    Point from = new Point(0, 0);
    Point to = new Point(200, 0);
    Panel lining = inset(skirt(Arc.fromEndpoints(from, 260, 260, 0, false, true, to)), 15);
    Intake.Dart dart = (Intake.Dart) intake(lining, "dart");
    Path top = lining.line("top");
    assertEquals(
        dart.apex().distance(top.atLength(dart.from())),
        dart.apex().distance(top.atLength(dart.to())),
        1e-9);
    assertTrue(dart.width() > 15 && dart.width() < 24, "" + dart.width());
    double closed = ClosedLine.of(lining, "top").path().length();
    assertEquals(top.length() - dart.width() - intake(lining, "pleat").width(), closed, EXACT);
  }

  @Test
  void whatAnEdgeBeyondTheApexLosesIsTold() {
    Panel lining = inset(straight(), 70);
    assertTrue(Darts.intakes(lining).isEmpty());
    assertEquals(
        List.of(PanelCode.INTAKE_LEFT_OUT, PanelCode.INTAKE_LEFT_OUT),
        notices.stream().map(PanelException::code).toList());
  }

  @Test
  void aFacingHasTheDartsThatLieInIt() {
    Panel deep = new Facing(straight(), "top", 70, "inner").derive("facing", notices::add);
    assertEquals(2, Darts.intakes(deep).size());
    assertTrue(notices.isEmpty());
    Panel shallow = new Facing(straight(), "top", 50, "inner").derive("facing", notices::add);
    assertTrue(Darts.intakes(shallow).isEmpty());
    assertEquals(2, notices.size());
  }

  @Test
  void aPartHasItsOwnDartsWithoutAWord() {
    Panel whole = straight();
    List<Mark> marks = new ArrayList<>(whole.marks());
    marks.add(
        new LineMark.StyleLine(
            "yoke", new Path(List.of(new Line(new Point(0, 80), new Point(200, 80))))));
    Panel lined = new Panel("skirt", whole.edges(), whole.chains(), marks);
    Panel upper = new Split(lined, "yoke", "a", "yoke").derive("upper", notices::add);
    Panel lower = new Split(lined, "yoke", "d", "yoke").derive("lower", notices::add);
    assertEquals(2, Darts.intakes(upper).size());
    assertTrue(Darts.intakes(lower).isEmpty());
    assertTrue(notices.isEmpty());
  }
}
