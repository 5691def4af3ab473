package org.lapmark.panel.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/** Hems turned back, corners by their kind, folds, and the guard against crossings. */
class TurnedBackTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** A panel on a level hem whose sides slant and bend. */
  private static Panel panel(double left, double right, double bend) {
    Point a = p(left, 0);
    Point b = p(200 - right, 0);
    Point c = p(200, 150);
    Point d = p(0, 150);
    Path outline =
        new Path(
            List.of(
                new Line(a, b),
                new Cubic(b, b.towards(c, 0.3).plus(p(bend, 0)), b.towards(c, 0.7), c),
                new Line(c, d),
                new Cubic(d, d.towards(a, 0.3).plus(p(bend, 0)), d.towards(a, 0.7), a)));
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", a);
    corners.put("b", b);
    corners.put("c", c);
    corners.put("d", d);
    return PanelBuilder.fromOutline("trial", outline, corners, Map.of(), Map.of(), List.of());
  }

  private static Allowances allowances(Panel panel, double seam, double hem, int folds) {
    Map<String, Allowance> edges = new LinkedHashMap<>();
    panel.edges().forEach(edge -> edges.put(edge.name(), Allowance.of(seam)));
    edges.put("c-d", Allowance.of(hem));
    CornerShape turned = new CornerShape.TurnedBack("c-d", folds);
    Map<String, CornerShape> corners = new LinkedHashMap<>();
    corners.put("c", turned);
    corners.put("d", turned);
    return new Allowances(edges, CornerShape.USUAL, corners);
  }

  @Property(tries = 150, seed = "20240501")
  void foldedHemsLieOnTheirPanel(
      @ForAll @DoubleRange(min = -60, max = 60) double left,
      @ForAll @DoubleRange(min = -60, max = 60) double right,
      @ForAll @DoubleRange(min = -15, max = 15) double bend,
      @ForAll @DoubleRange(min = 3, max = 20) double seam,
      @ForAll @DoubleRange(min = 5, max = 50) double hem,
      @ForAll @IntRange(min = 1, max = 2) int folds) {
    Panel panel = panel(left, right, bend);
    PieceShape shape = PieceShape.of(panel, allowances(panel, seam, hem, folds));
    Path line = shape.cuttingLine().path();
    assertTrue(line.selfCrossing().isEmpty());
    double depth = hem / folds;
    int ends = 0;
    for (CuttingLine.Span span : shape.cuttingLine().spans()) {
      for (int i = 0; i <= 200; i++) {
        Point at = span.path().atLength(span.path().length() * i / 200);
        double below = at.y() - 150;
        if (below > 0) {
          double up = below > depth ? 2 * depth - below : below;
          Point folded = p(at.x(), 150 - up);
          assertTrue(line.encloses(folded) || line.distance(folded) < 0.01, () -> "at " + at);
          if (below < hem - 0.01) {
            ends++;
            assertTrue(line.distance(folded) < 0.01, () -> "short at " + at);
          }
        }
      }
    }
    assertTrue(ends > 4);
  }

  @Test
  void cornersThatCannotBeTurnedBackSayWhy() {
    Panel panel = panel(0, 0, 0);
    PieceShape.of(panel, allowances(panel, 10, 140, 1));
    assertEquals("short", reason(panel, allowances(panel, 10, 165, 1)));
    Panel wide = panel(-800, 0, 0);
    assertEquals("far", reason(wide, allowances(wide, 30, 20, 1)));
    Allowances plain = allowances(panel, 10, 30, 1);
    Map<String, Allowance> edges = new LinkedHashMap<>(plain.edges());
    edges.put("c-d", new Allowance(20, 30, false));
    assertEquals("uneven", reason(panel, new Allowances(edges, plain.corner(), plain.corners())));
    Map<String, CornerShape> others = Map.of("a", new CornerShape.Square("c-d"));
    PanelException other =
        assertThrows(
            PanelException.class,
            () -> PieceShape.of(panel, new Allowances(plain.edges(), plain.corner(), others)));
    assertEquals(PanelCode.CORNER_KIND_OF_OTHER_EDGE, other.code());
    Map<String, CornerShape> nowhere = Map.of("z", CornerShape.BLUNT);
    PanelException none =
        assertThrows(
            PanelException.class,
            () -> PieceShape.of(panel, new Allowances(plain.edges(), plain.corner(), nowhere)));
    assertEquals(PanelCode.CORNER_KIND_NOWHERE, none.code());
  }

  private static Object reason(Panel panel, Allowances allowances) {
    PanelException thrown =
        assertThrows(PanelException.class, () -> PieceShape.of(panel, allowances));
    assertEquals(PanelCode.CORNER_KIND_UNDRAWN, thrown.code());
    return thrown.arguments().get("reason");
  }

  @Property(tries = 100, seed = "20240501")
  void halvesOnAFoldUnfoldToTheWhole(
      @ForAll @DoubleRange(min = 30, max = 120) double top,
      @ForAll @DoubleRange(min = -40, max = 40) double slant,
      @ForAll @DoubleRange(min = -30, max = 30) double bend,
      @ForAll @DoubleRange(min = 1, max = 25) double seam) {
    Point a = p(0, slant);
    Point b = p(top, 0);
    Point c = p(100, 150);
    Point d = p(0, 150 + slant / 2);
    Affine mirror = Affine.scaling(-1, 1);
    Path right =
        new Path(
            List.of(
                new Line(a, b),
                new Cubic(b, b.towards(c, 0.3).plus(p(bend, 0)), b.towards(c, 0.7), c),
                new Line(c, d)));
    Path half = right.then(new Path(List.of(new Line(d, a))));
    Path whole = right.then(right.transformed(mirror).reversed());
    if (half.selfCrossing().isPresent() || whole.selfCrossing().isPresent()) {
      return;
    }
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", a);
    corners.put("b", b);
    corners.put("c", c);
    corners.put("d", d);
    Panel folded = PanelBuilder.fromOutline("half", half, corners, Map.of(), Map.of(), List.of());
    Map<String, Allowance> edges = new LinkedHashMap<>();
    folded.edges().forEach(edge -> edges.put(edge.name(), Allowance.of(seam)));
    edges.put("d-a", Allowance.FOLD);
    Path one =
        PieceShape.of(folded, new Allowances(edges, CornerShape.USUAL, Map.of()))
            .cuttingLine()
            .path();
    Panel full = PanelBuilder.fromOutline("whole", whole, Map.of(), Map.of(), Map.of(), List.of());
    Path both = PieceShape.of(full, Map.of("outline", seam)).cuttingLine().path();
    // A tip on the fold that is blunted, or a valley, is met otherwise by a half than by a whole.
    if (slant > 0 && slant < 15) {
      return;
    }
    assertEquals(both.signedArea(), 2 * one.signedArea(), 0.01 * both.length());
    for (int i = 0; i < 200; i++) {
      Point at = one.atLength(one.length() * i / 200);
      if (at.x() > 0.01) {
        assertEquals(0, both.distance(at), 0.02);
        assertEquals(0, both.distance(mirror.apply(at)), 0.02);
      }
    }
  }

  @Test
  void lineThatCrossesItselfIsRefusedAtItsPlace() {
    Panel panel = panel(0, 0, 0);
    Contour.checkCrossing(panel, panel.outline());
    Path spike =
        Path.polyline(
            List.of(
                p(-10, -10),
                p(120, -10),
                p(120, -20),
                p(110, 0),
                p(210, -10),
                p(210, 160),
                p(-10, 160),
                p(-10, -10)));
    PanelException thrown =
        assertThrows(PanelException.class, () -> Contour.checkCrossing(panel, spike));
    assertEquals(PanelCode.CUTTING_LINE_CROSSES_ITSELF, thrown.code());
    assertEquals("a-b", thrown.arguments().get("edge"));
    assertEquals(115, (Double) thrown.arguments().get("at"), 0.01);
    assertFalse(spike.selfCrossing().isEmpty());
  }
}
