package org.lapmark.panel.stated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder.CornerPair;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;

class StatedShapeTest {
  private static Panel panel(StatedShape shape) {
    return shape.panel("x", Map.of(), Map.of());
  }

  private static double length(Panel panel, String edge) {
    return panel.line(edge).length();
  }

  @Test
  void aCircleHasFourQuartersOfArcs() {
    Panel panel = panel(StatedShape.circle(100));
    assertEquals(100 * Math.PI, length(panel, "rim"), 1e-9);
    for (String quarter : List.of("top_right", "right_bottom", "bottom_left", "left_top")) {
      assertEquals(25 * Math.PI, length(panel, quarter), 1e-9);
      assertTrue(panel.line(quarter).curves().get(0) instanceof Arc arc && arc.isCircular());
    }
    assertEquals(2500 * Math.PI, panel.outline().signedArea(), 1e-6);
    Box box = panel.outline().bounds();
    assertEquals(0, box.minX(), 1e-9);
    assertEquals(0, box.minY(), 1e-9);
    assertEquals("top", panel.edges().get(0).from());
    assertEquals(50, panel.edges().get(0).path().start().x(), 1e-9);
    Mark.Grainline grain = (Mark.Grainline) panel.marks().get(0);
    assertEquals(grain.from().x(), grain.to().x(), 1e-9);
    assertEquals(15, grain.from().y(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"540, 1.2", "540, 0.8333333", "540, 1", "10, 30", "3000, 0.02"})
  void anOvalHasThePerimeterAndTheRatio(double perimeter, double ratio) {
    Panel panel = panel(StatedShape.oval(perimeter, ratio));
    assertEquals(perimeter, length(panel, "rim"), 1e-6);
    Box box = panel.outline().bounds();
    assertEquals(ratio, box.height() / box.width(), 1e-9);
  }

  /** Ramanujan's second formula is good to about h^5, with h as below, for nearly round ovals. */
  @Property(tries = 200)
  void theOvalsWidthAgreesWithAnApproximation(
      @ForAll @DoubleRange(min = 0.7, max = 1.4) double ratio) {
    Box box = StatedShape.oval(600, ratio).outline().bounds();
    double a = box.width() / 2;
    double b = box.height() / 2;
    double h = Math.pow((a - b) / (a + b), 2);
    double approximately = Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
    assertEquals(600, approximately, 1e-6);
  }

  @Test
  void aRingSectorsArcsHaveTheirLengths() {
    Panel panel = panel(StatedShape.ringSector(100, 70, 120));
    assertEquals(100 * Math.PI * 2 / 3, length(panel, "inner"), 1e-9);
    assertEquals(170 * Math.PI * 2 / 3, length(panel, "outer"), 1e-9);
    assertEquals(70, length(panel, "start"), 1e-9);
    assertEquals(70, length(panel, "end"), 1e-9);
    assertEquals(Math.PI / 3 * (170 * 170 - 100 * 100), panel.outline().signedArea(), 1e-6);
    assertEquals(StatedKind.RING_SECTOR.edges(), panel.edges().stream().map(Edge::name).toList());
    assertEquals(StatedKind.RING_SECTOR.corners(), panel.edges().stream().map(Edge::from).toList());
    // The start lies on the right.
    assertTrue(panel.line("start").start().x() > panel.line("end").start().x());
  }

  @ParameterizedTest
  @CsvSource({"600, 70, 35, 1", "600, 70, 35, 0.5", "540, 55.5, 1, 1", "540, 55.5, 80, 0.25"})
  void aBrimsInnerArcIsTheHead(double head, double width, double droop, double share) {
    Panel panel = panel(StatedShape.brim(head, width, droop, share));
    double cosine = Math.cos(Math.toRadians(droop));
    assertEquals(head * share, length(panel, "inner"), 1e-9);
    assertEquals((head + 2 * Math.PI * width * cosine) * share, length(panel, "outer"), 1e-9);
    Arc inner = (Arc) panel.line("inner").curves().get(0);
    assertEquals(360 * cosine * share, Math.toDegrees(Math.abs(inner.sweep())), 1e-9);
  }

  @Property(tries = 200)
  void aBandHasItsLengthsWhicheverWayItTapers(
      @ForAll @DoubleRange(min = 200, max = 900) double lower,
      @ForAll @DoubleRange(min = 200, max = 900) double upper,
      @ForAll @DoubleRange(min = 20, max = 200) double height,
      @ForAll @DoubleRange(min = 0.2, max = 1) double share) {
    double slant = StatedShape.slant(lower, upper, height);
    Panel panel = panel(StatedShape.coneBand(lower, upper, slant, share));
    assertEquals(lower * share, length(panel, "lower"), 1e-6);
    assertEquals(upper * share, length(panel, "upper"), 1e-6);
    assertEquals(slant, length(panel, "start"), 1e-6);
    assertEquals(slant, length(panel, "end"), 1e-6);
    // A cone's surface: mean length times slant.
    assertEquals((lower + upper) / 2 * slant * share, panel.outline().signedArea(), 1e-3);
    assertEquals(StatedKind.CONE_BAND.edges(), panel.edges().stream().map(Edge::name).toList());
    assertTrue(panel.line("start").start().x() > panel.line("end").start().x());
  }

  @ParameterizedTest
  @CsvSource({"540, 540", "540, 540.0000001", "540.0001, 540", "540, 540.01"})
  void aBandThatHardlyTapersIsStraightOrNearlySo(double lower, double upper) {
    Panel panel = panel(StatedShape.coneBand(lower, upper, 85, 1));
    assertEquals(lower, length(panel, "lower"), 1e-6);
    assertEquals(upper, length(panel, "upper"), 1e-6);
    assertEquals(85, length(panel, "start"), 1e-6);
    assertEquals(85, panel.outline().bounds().height(), 0.01);
  }

  @Test
  void edgesCanBeRenamedAndSpanCorners() {
    Panel panel =
        StatedShape.ellipse(80, 60)
            .panel(
                "x",
                Map.of(
                    "front",
                    new CornerPair("top", "right"),
                    "half",
                    new CornerPair("left", "right")),
                Map.of("most", List.of("half", "right_bottom")));
    assertEquals(List.of("left_top", "front"), panel.chains().get("half"));
    assertEquals(length(panel, "rim") * 3 / 4, length(panel, "most"), 1e-6);
    assertEquals(length(panel, "rim") / 4, length(panel, "front"), 1e-6);
  }

  @Test
  void impossibleNumbersAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> StatedShape.circle(0));
    assertThrows(IllegalArgumentException.class, () -> StatedShape.ringSector(10, 10, 360));
    assertThrows(IllegalArgumentException.class, () -> StatedShape.brim(600, 70, 90, 1));
    assertThrows(IllegalArgumentException.class, () -> StatedShape.coneBand(600, 300, 47, 1));
    assertThrows(IllegalArgumentException.class, () -> StatedShape.oval(Double.NaN, 1));
  }

  @Test
  void edgesKeepNoSliverOfTheirNeighbours() {
    for (int head = 500; head <= 700; head += 5) {
      for (Edge edge : panel(StatedShape.brim(head, 70, 35, 1)).edges()) {
        assertEquals(1, edge.path().curves().size(), edge.name() + " of " + head);
      }
    }
  }

  @Test
  void edgesWithoutAllowanceGoOnToTheNearEndOfARing() {
    for (int head = 500; head <= 700; head += 5) {
      Panel panel = panel(StatedShape.brim(head, 70, 35, 1));
      PieceShape shape =
          PieceShape.of(panel, Map.of("outer", 6.0, "end", 0.0, "inner", 10.0, "start", 0.0));
      // The slanted ends grow by both allowances.
      for (CuttingLine.Span span : shape.cuttingLine().spans()) {
        if (span.edge().equals("end") || span.edge().equals("start")) {
          assertEquals(86, span.path().length(), 1e-6, span.edge() + " of " + head);
        }
      }
    }
  }

  private static Panel marked(StatedShape shape, Mark mark) {
    Panel plain = panel(shape);
    return new Panel(plain.name(), plain.edges(), plain.chains(), List.of(mark));
  }

  @Test
  void aDoubleNotchMayStandWhereTwoQuartersMeet() {
    Panel panel = marked(StatedShape.oval(540, 1.2), new Mark.Notch("bottom_left", 0, 2));
    PieceShape shape =
        PieceShape.of(
            panel,
            Map.of("top_right", 10.0, "right_bottom", 10.0, "bottom_left", 10.0, "left_top", 10.0));
    assertEquals(2, shape.notches().size());
    double middle = panel.outline().bounds().centre().x();
    double first = shape.notches().get(0).end().x() - middle;
    double second = shape.notches().get(1).end().x() - middle;
    assertEquals(0, first + second, 1e-6);
    assertEquals(5, Math.abs(first - second), 0.5);
  }

  @Test
  void aDoubleNotchMayNotStandAtACorner() {
    Panel panel = marked(StatedShape.brim(600, 70, 35, 1), new Mark.Notch("end", 1, 2));
    Map<String, Double> allowances =
        Map.of("outer", 6.0, "end", 10.0, "inner", 10.0, "start", 10.0);
    assertThrows(PanelException.class, () -> PieceShape.of(panel, allowances));
  }
}
