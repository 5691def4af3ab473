package org.lapmark.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.panel.derivation.Unfolded;

class DartsTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** A block with a curved and slanted top edge, corners a, b, c, d clockwise from the top left. */
  private static Panel block(double rise, double bend, List<Mark> marks) {
    Path outline =
        new Path(
            List.of(
                new Cubic(p(0, 0), p(80, -bend), p(160, -bend), p(240, -rise)),
                new Line(p(240, -rise), p(240, 300)),
                new Line(p(240, 300), p(0, 300)),
                new Line(p(0, 300), p(0, 0))));
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", p(0, 0));
    corners.put("b", p(240, -rise));
    corners.put("c", p(240, 300));
    corners.put("d", p(0, 300));
    Panel bare = PanelBuilder.fromOutline("block", outline, corners, Map.of(), Map.of(), List.of());
    return new Panel(bare.name(), bare.edges(), bare.chains(), marks);
  }

  private static Map<String, Double> allowances(double top) {
    Map<String, Double> all = new LinkedHashMap<>();
    all.put("a-b", top);
    all.put("b-c", 10.0);
    all.put("c-d", 10.0);
    all.put("d-a", 10.0);
    return all;
  }

  private static Panel with(Panel panel, Mark... marks) {
    return new Panel(panel.name(), panel.edges(), panel.chains(), List.of(marks));
  }

  @Property(tries = 150, seed = "4711")
  void closingADartLeavesTheEdgeWithoutIt(
      @ForAll @DoubleRange(min = -40, max = 40) double rise,
      @ForAll @DoubleRange(min = -40, max = 40) double bend,
      @ForAll @DoubleRange(min = 60, max = 150) double at,
      @ForAll @DoubleRange(min = 4, max = 40) double width,
      @ForAll @DoubleRange(min = 50, max = 140) double length) {
    Panel bare = block(rise, bend, List.of());
    double whole = bare.line("a-b").length();
    Intake.Dart dart = Darts.stated(bare, "w", "a-b", at, width, length, Intake.Press.ONWARDS);
    Panel panel = with(bare, dart);
    ClosedLine line = ClosedLine.of(panel, "a-b");
    assertEquals(whole - width, line.length(), 1e-6);
    assertEquals(line.length(), line.path().length(), 1e-4);
    // The second leg, turned about the apex, is the first.
    Point from = bare.line("a-b").atLength(dart.from());
    Point to = bare.line("a-b").atLength(dart.to());
    Affine closing = dart.closing(from, to);
    assertEquals(0, closing.apply(to).distance(from), 1e-9);
    assertEquals(0, closing.apply(dart.apex()).distance(dart.apex()), 1e-9);
    // Places go there and back.
    for (double share : new double[] {0.05, 0.3, 0.5, 0.8, 1}) {
      double place = share * line.length();
      assertEquals(place, line.closed(line.open(place)), 1e-9);
      Point open = bare.line("a-b").atLength(line.open(place));
      Point expected = line.open(place) > dart.from() + 1e-6 ? closing.apply(open) : open;
      assertEquals(0, line.path().atLength(place).distance(expected), 1e-3);
    }
    assertEquals(List.of(dart.from()), line.closings());
  }

  @Property(tries = 150, seed = "4711")
  void thePressedDartLiesOnWhatIsCutBesideIt(
      @ForAll @DoubleRange(min = -40, max = 40) double rise,
      @ForAll @DoubleRange(min = -30, max = 30) double bend,
      @ForAll @DoubleRange(min = 90, max = 150) double at,
      @ForAll @DoubleRange(min = 4, max = 40) double width,
      @ForAll @DoubleRange(min = 60, max = 140) double length,
      @ForAll @DoubleRange(min = 0, max = 20) double allowance,
      @ForAll boolean onwards) {
    Panel bare = block(rise, bend, List.of());
    Intake.Press press = onwards ? Intake.Press.ONWARDS : Intake.Press.BACK;
    Intake.Dart dart = Darts.stated(bare, "w", "a-b", at, width, length, press);
    Path plain = PieceShape.of(bare, allowances(allowance)).cuttingLine().path();
    Path shaped = PieceShape.of(with(bare, dart), allowances(allowance)).cuttingLine().path();
    assertTrue(shaped.isClosed());
    assertTrue(shaped.selfCrossing().isEmpty());
    Point apex = dart.apex();
    Point first = bare.line("a-b").atLength(dart.from()).minus(apex);
    Point last = bare.line("a-b").atLength(dart.to()).minus(apex);
    Point axis = first.unit().plus(last.unit());
    double half = StrictMath.toDegrees(StrictMath.atan2(first.cross(last), first.dot(last))) / 2;
    int folded = 0;
    for (Point point : shaped.flattened(0.005)) {
      Point arm = point.minus(apex);
      boolean inside = first.cross(arm) > 1e-6 && arm.cross(last) > 1e-6;
      if (!inside) {
        // Elsewhere nothing has changed.
        assertTrue(plain.distance(point) < 0.01 || onRay(arm, onwards ? first : last));
        continue;
      }
      // Folded by hand: what lies before the axis goes round with the first leg, what lies
      // behind it is turned over along the leg.
      boolean before = axis.cross(arm) < 0;
      Point pressed;
      if (before == onwards) {
        pressed = turned(arm, onwards ? 2 * half : -2 * half);
      } else {
        pressed = over(arm, onwards ? last : first);
      }
      assertEquals(0, plain.distance(apex.plus(pressed)), 0.02);
      folded++;
    }
    assertTrue(folded > 0);
  }

  private static boolean onRay(Point arm, Point leg) {
    return Math.abs(leg.unit().cross(arm)) < 1e-3;
  }

  private static Point turned(Point arm, double degrees) {
    return Affine.rotation(degrees).applyVector(arm);
  }

  private static Point over(Point arm, Point leg) {
    Point along = leg.unit();
    return along.times(2 * along.dot(arm)).minus(arm);
  }

  @Property(tries = 100, seed = "4711")
  void mirroringAPanelMirrorsItsMarks(
      @ForAll @DoubleRange(min = -40, max = 40) double rise,
      @ForAll @DoubleRange(min = 60, max = 150) double at,
      @ForAll @DoubleRange(min = 4, max = 40) double width,
      @ForAll @DoubleRange(min = 4, max = 15) double gap) {
    Panel bare = block(rise, 10, List.of());
    NotchSet set = new NotchSet(3, List.of(4.0, gap), NotchSet.Cut.WEDGE);
    List<Mark> marks =
        List.of(
            Darts.stated(bare, "w", "a-b", at, width, 100, Intake.Press.BACK),
            Darts.pleat(bare, "p", "c-d", at, width, 50, Intake.PleatKind.KNIFE, true),
            new Mark.Notch("b-c", at, set),
            new PointMark.Buttonhole("h", p(30, 30), p(50, 30)),
            new PointMark.MatchPoint("m", p(10, 10)),
            new PointMark.DrillPoint("d", p(20, 20)));
    Panel panel = new Panel("block", bare.edges(), bare.chains(), marks);
    Affine mirror = new Affine(-1, 0, 0, 1, 0, 0);
    Panel image = mirrored(panel, mirror);
    PieceShape shape = PieceShape.of(panel, allowances(10));
    PieceShape other = PieceShape.of(image, allowances(10));
    Path expected = shape.cuttingLine().path().transformed(mirror);
    for (Point point : other.cuttingLine().path().flattened(0.01)) {
      assertEquals(0, expected.distance(point), 0.02);
    }
    assertEquals(shape.notches().size(), other.notches().size());
    for (Path notch : shape.notches()) {
      Point tip = mirror.apply(notch.curves().get(0).end());
      assertTrue(
          other.notches().stream().anyMatch(one -> one.curves().get(0).end().distance(tip) < 0.02));
    }
    for (String edge : List.of("a-b", "c-d")) {
      assertEquals(ClosedLine.of(panel, edge).length(), ClosedLine.of(image, edge).length(), 1e-6);
    }
    // Twice mirrored is where it was.
    Panel back = mirrored(image, mirror);
    for (int i = 0; i < marks.size(); i++) {
      assertEquals(rounded(marks.get(i)), rounded(back.marks().get(i)));
    }
  }

  private static String rounded(Mark mark) {
    String text = mark.toString();
    StringBuilder all = new StringBuilder();
    java.util.regex.Matcher number =
        java.util.regex.Pattern.compile("-?[0-9]+\\.[0-9]+(E-?[0-9]+)?").matcher(text);
    while (number.find()) {
      double value = Math.round(Double.parseDouble(number.group()) * 1e6) / 1e6;
      number.appendReplacement(all, Double.toString(value + 0.0));
    }
    number.appendTail(all);
    return all.toString();
  }

  private static Panel mirrored(Panel panel, Affine mirror) {
    List<Edge> edges = new ArrayList<>();
    for (int i = panel.edges().size() - 1; i >= 0; i--) {
      Edge edge = panel.edges().get(i);
      edges.add(
          new Edge(
              edge.name(), edge.to(), edge.from(), edge.path().transformed(mirror).reversed()));
    }
    return new Panel(
        panel.name(),
        edges,
        Map.of(),
        panel.marks().stream()
            .map(mark -> mark.transformed(mirror, edge -> panel.line(edge).length()))
            .toList());
  }

  @Test
  void setsReadBackwards() {
    NotchSet set = new NotchSet(3, List.of(5.0, 9.0), NotchSet.Cut.SLIT);
    assertFalse(set.agrees(set.reversed()));
    assertTrue(set.agrees(set.reversed().reversed()));
    assertTrue(NotchSet.of(3).agrees(NotchSet.of(3).reversed()));
    assertFalse(NotchSet.of(2).agrees(NotchSet.of(3)));
    assertTrue(NotchSet.of(2).agrees(NotchSet.of(2).cut(NotchSet.Cut.WEDGE)));
    assertEquals(List.of(-7.0, -2.0, 7.0), set.offsets());
  }

  @Test
  void aWedgeIsAsDeepAsASlit() {
    Panel bare = block(0, 0, List.of());
    Mark.Notch slit = new Mark.Notch("c-d", 100, NotchSet.of(1));
    Mark.Notch wedge = new Mark.Notch("c-d", 100, NotchSet.of(1).cut(NotchSet.Cut.WEDGE));
    Path one = PieceShape.of(with(bare, slit), allowances(10)).notches().get(0);
    Path two = PieceShape.of(with(bare, wedge), allowances(10)).notches().get(0);
    assertEquals(0, one.end().distance(two.curves().get(0).end()), 1e-9);
    assertEquals(0, two.start().distance(p(142, 310)), 1e-9);
    assertEquals(0, two.end().distance(p(138, 310)), 1e-9);
  }

  @Test
  void pleatsTakeUpWhatTheyAreToldTo() {
    Panel bare = block(0, 0, List.of());
    Intake.Pleat knife = Darts.pleat(bare, "k", "c-d", 60, 40, 80, Intake.PleatKind.KNIFE, true);
    Intake.Pleat box = Darts.pleat(bare, "b", "c-d", 180, 40, 80, Intake.PleatKind.BOX, true);
    assertEquals(2, knife.lines().size());
    assertEquals(3, box.lines().size());
    assertEquals(0, knife.lines().get(0).start().distance(p(180, 300)), 1e-9);
    assertEquals(0, knife.lines().get(0).end().distance(p(180, 220)), 1e-9);
    ClosedLine line = ClosedLine.of(with(bare, knife, box), "c-d");
    assertEquals(160, line.length(), 1e-9);
    assertEquals(160, line.path().length(), 1e-9);
    assertEquals(0, line.path().end().distance(p(80, 300)), 1e-9);
    assertEquals(60, line.closings().get(0), 1e-9);
    assertEquals(120, line.closings().get(1), 1e-9);
    assertEquals(2 + 3, PieceShape.of(with(bare, knife, box), allowances(10)).notches().size());
  }

  @Test
  void drawnDartsStandOnTheirOutline() {
    Panel bare = block(0, 0, List.of());
    Intake.Dart dart =
        Darts.drawn(bare, "w", p(140, 0), p(130.1, 90), p(120, 0), Intake.Press.NONE);
    assertEquals(
        rounded(new Intake.Dart("w", "a-b", 120, 140, p(130, 90), Intake.Press.NONE)),
        rounded(dart));
    refused(
        PanelCode.DART_LEGS_DIFFER,
        () -> Darts.drawn(bare, "w", p(140, 0), p(135, 90), p(120, 0), Intake.Press.NONE));
    refused(
        PanelCode.INTAKE_OFF_OUTLINE,
        () -> Darts.drawn(bare, "w", p(140, 1), p(130, 90), p(120, 0), Intake.Press.NONE));
    refused(
        PanelCode.INTAKE_ON_TWO_EDGES,
        () -> Darts.drawn(bare, "w", p(10, 0), p(20, 20), p(0, 10), Intake.Press.NONE));
    refused(
        PanelCode.MARK_OUTSIDE,
        () -> Darts.drawn(bare, "w", p(140, 0), p(130, -90), p(120, 0), Intake.Press.NONE));
  }

  @Test
  void whatCantBeDrawnIsSaid() {
    Panel bare = block(0, 0, List.of());
    refused(
        PanelCode.INTAKE_OFF_EDGE,
        () -> Darts.stated(bare, "w", "a-b", 5, 20, 90, Intake.Press.NONE));
    refused(
        PanelCode.INTAKE_OFF_EDGE,
        () -> Darts.stated(bare, "w", "a-z", 50, 20, 90, Intake.Press.NONE));
    refused(
        PanelCode.MARK_OUTSIDE,
        () -> Darts.pleat(bare, "k", "a-b", 50, 20, 390, Intake.PleatKind.BOX, true));
    Intake.Dart one = Darts.stated(bare, "one", "a-b", 50, 20, 90, Intake.Press.NONE);
    Intake.Dart two = Darts.stated(bare, "two", "a-b", 69, 20, 90, Intake.Press.NONE);
    Intake.Dart three = Darts.stated(bare, "three", "a-b", 70, 20, 90, Intake.Press.NONE);
    refused(PanelCode.INTAKES_OVERLAP, () -> PieceShape.of(with(bare, one, two), allowances(10)));
    PieceShape.of(with(bare, one, three), allowances(10));
    refused(
        PanelCode.NOTCH_IN_INTAKE,
        () -> PieceShape.of(with(bare, one, new Mark.Notch("a-b", 50, 1)), allowances(10)));
    PieceShape.of(with(bare, one, new Mark.Notch("a-b", 60, 1)), allowances(10));
    // A short, wide dart has no plain cutting line beside it on which it could lie.
    Intake.Dart wide = Darts.stated(bare, "wide", "a-b", 200, 70, 12, Intake.Press.ONWARDS);
    refused(PanelCode.DART_CAP, () -> PieceShape.of(with(bare, wide), allowances(10)));
    refused(
        PanelCode.NOTCH_GAP,
        () ->
            PieceShape.of(
                with(
                    bare,
                    new Mark.Notch("a-b", 50, new NotchSet(2, List.of(3.9), NotchSet.Cut.SLIT))),
                allowances(10)));
  }

  @Test
  void unfoldingGivesBothHalvesTheirMarks() {
    Panel bare = block(0, 0, List.of());
    NotchSet set = new NotchSet(3, List.of(5.0, 9.0), NotchSet.Cut.SLIT);
    Panel half =
        with(
            bare,
            Darts.stated(bare, "w", "a-b", 100, 20, 90, Intake.Press.ONWARDS),
            new Mark.Notch("b-c", 60, set),
            new PointMark.Buttonhole("h", p(30, 30), p(50, 30)));
    Panel whole = new Unfolded(half, "d-a", List.of()).derive("whole", notice -> {});
    List<Intake.Dart> darts = new ArrayList<>();
    List<NotchSet> sets = new ArrayList<>();
    for (Mark mark : whole.marks()) {
      if (mark instanceof Intake.Dart dart) {
        darts.add(dart);
        // The feet lie on the edge, equally far from the apex.
        Path edge = whole.line(dart.edge());
        assertEquals(
            dart.apex().distance(edge.atLength(dart.from())),
            dart.apex().distance(edge.atLength(dart.to())),
            1e-6);
        assertEquals(20, dart.width(), 1e-9);
      } else if (mark instanceof Mark.Notch notch) {
        sets.add(notch.set());
      }
    }
    assertEquals(2, darts.size());
    assertEquals(0, darts.get(0).apex().x() + darts.get(1).apex().x(), 1e-6);
    assertTrue(darts.get(0).press() != darts.get(1).press());
    assertEquals(2, sets.size());
    assertTrue(sets.get(0).agrees(sets.get(1).reversed()));
    assertEquals(2, whole.marks().stream().filter(PointMark.Buttonhole.class::isInstance).count());
  }

  private static void refused(PanelCode code, Runnable action) {
    PanelException problem = assertThrows(PanelException.class, action::run);
    assertEquals(code, problem.code(), problem.getMessage());
  }
}
