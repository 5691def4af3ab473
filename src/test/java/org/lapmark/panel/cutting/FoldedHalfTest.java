package org.lapmark.panel.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;

class FoldedHalfTest {
  /** A trapezium, symmetrical about x = 0, turned as a whole. */
  private static PieceShape trapezium(
      double top, double bottom, double height, double turn, double allowance, double hem) {
    Affine map = Affine.rotation(turn);
    List<Point> at =
        List.of(
                new Point(-top / 2, 0),
                new Point(top / 2, 0),
                new Point(bottom / 2, height),
                new Point(-bottom / 2, height))
            .stream()
            .map(map::apply)
            .toList();
    List<Edge> edges =
        List.of(
            edge("top", "a", "b", at.get(0), at.get(1)),
            edge("right", "b", "c", at.get(1), at.get(2)),
            edge("bottom", "c", "d", at.get(2), at.get(3)),
            edge("left", "d", "a", at.get(3), at.get(0)));
    Panel panel = new Panel("front", edges, Map.of(), List.of());
    Map<String, Double> allowances = new LinkedHashMap<>();
    edges.forEach(edge -> allowances.put(edge.name(), allowance));
    allowances.put("bottom", hem);
    return PieceShape.of(panel, allowances);
  }

  private static Edge edge(String name, String from, String to, Point start, Point end) {
    return new Edge(name, from, to, new Path(List.of(new Line(start, end))));
  }

  @Property(tries = 200, seed = "4711")
  void twoHalvesAreTheWhole(
      @ForAll @DoubleRange(min = 40, max = 400) double top,
      @ForAll @DoubleRange(min = 40, max = 400) double bottom,
      @ForAll @DoubleRange(min = 40, max = 400) double height,
      @ForAll @DoubleRange(min = 0, max = 360) double turn,
      @ForAll @DoubleRange(min = 0, max = 15) double allowance,
      @ForAll @DoubleRange(min = 0, max = 30) double hem) {
    PieceShape whole = trapezium(top, bottom, height, turn, allowance, hem);
    FoldedHalf half = FoldedHalf.of(whole, "top", "bottom");
    double area = whole.cuttingLine().path().signedArea();
    assertEquals(area / 2, half.outline().signedArea(), 1e-6 * area);
    assertEquals(whole.cuttingLine().path().length(), 2 * half.cuttingLine().length(), 1e-6);
    assertEquals(half.fold().start().distance(half.fold().end()), height + allowance + hem, 1e-6);
  }

  @Test
  void anAllowanceWiderThanThePieceIsFoldedToo() {
    FoldedHalf half = FoldedHalf.of(trapezium(100, 100, 20, 30, 5, 40), "top", "bottom");
    assertEquals(20 + 5 + 40, half.fold().start().distance(half.fold().end()), 1e-6);
  }

  @Test
  void theHalfFollowsTheFirstPlaceClockwise() {
    PieceShape whole = trapezium(100, 160, 80, 0, 10, 10);
    assertEquals(0, FoldedHalf.of(whole, "top", "bottom").outline().bounds().minX(), 1e-6);
    assertEquals(0, FoldedHalf.of(whole, "bottom", "top").outline().bounds().maxX(), 1e-6);
  }

  @Test
  void anEdgeWithoutAllowanceHasNoStitchingLine() {
    FoldedHalf half = FoldedHalf.of(trapezium(100, 160, 80, 0, 10, 0), "top", "bottom");
    assertEquals(2, half.stitching().size());
    assertEquals(50, half.stitching().get(0).length(), 1e-9);
  }

  @Test
  void linesAcrossTheFoldEndThereAndAGrainlineOnItIsMovedAside() {
    PieceShape plain = trapezium(100, 100, 80, 0, 10, 10);
    Path across = new Path(List.of(new Line(new Point(-30, 40), new Point(30, 40))));
    List<Mark> marks =
        List.of(
            new Mark.Grainline(new Point(0, 10), new Point(0, 70)),
            new LineMark.Placement("pocket", across),
            new PointMark.DrillPoint("stud", new Point(0, 20)));
    Panel panel = new Panel("front", plain.panel().edges(), Map.of(), marks);
    FoldedHalf half = FoldedHalf.of(PieceShape.of(panel, plain.allowances()), "top", "bottom");
    assertEquals(3, half.marks().size());
    Mark.Grainline grain = (Mark.Grainline) half.marks().get(0);
    assertTrue(grain.from().x() > 7 && grain.to().x() == grain.from().x());
    LineMark.Placement pocket = (LineMark.Placement) half.marks().get(1);
    assertEquals(30, pocket.path().length(), 1e-6);
    assertEquals(0, pocket.path().bounds().minX(), 1e-6);
  }

  @Test
  void refusesWhatIsNotSymmetrical() {
    PieceShape whole = trapezium(100, 160, 80, 0, 10, 10);
    assertEquals(
        PanelCode.FOLD_HALVES_DIFFER,
        assertThrows(PanelException.class, () -> FoldedHalf.of(whole, "a", "c")).code());
    assertEquals(
        PanelCode.FOLD_PLACE_UNKNOWN,
        assertThrows(PanelException.class, () -> FoldedHalf.of(whole, "top", "botom")).code());
    assertEquals(
        PanelCode.FOLD_WITHOUT_LENGTH,
        assertThrows(PanelException.class, () -> FoldedHalf.of(whole, "top", "top")).code());
  }
}
