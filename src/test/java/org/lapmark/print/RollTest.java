package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.TestSquare;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Sheets off a roll are as short as what lies on them allows, and few are cut. */
class RollTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();
  private static final Paper ROLL = Paper.ROLL36;

  /** What frames, caption and gaps take of a sheet's length, in millimetres. */
  private static final double AROUND = 25;

  private static SheetPlan plan(List<Piece> pieces) {
    return PLANNER.plan(SamplePatterns.pattern("M", pieces), ROLL);
  }

  private static double length(SheetPlan plan) {
    return plan.tiles().stream().mapToDouble(tile -> tile.page().height()).sum();
  }

  /**
   * No sheets are shorter: pieces and square cover so much, each piece reaches so far in one of its
   * turns, and of those more than half as wide as the roll however they are turned, no two lie side
   * by side; these count where they are rectangles.
   */
  private static double bound(SheetPlan plan) {
    double across = ROLL.window().width();
    double area = TestSquare.SIDE * TestSquare.SIDE;
    double longest = TestSquare.SIDE;
    double below = 0;
    for (PlacedPiece placed : plan.pieces()) {
      Polygon shape = PieceArt.shape(placed.piece());
      Envelope box = shape.getEnvelopeInternal();
      double shorter = Math.min(box.getWidth(), box.getHeight());
      double longer = Math.max(box.getWidth(), box.getHeight());
      double reach = longer <= across ? shorter : longer;
      area += shape.getArea();
      longest = Math.max(longest, reach(shape));
      if (shape.getArea() > 0.999 * box.getWidth() * box.getHeight()) {
        below += shorter > across / 2 ? reach : 0;
      }
    }
    return AROUND + Math.max(area / across, Math.max(longest, below));
  }

  /** The least that a shape reaches along the roll, turned so that it fits across. */
  private static double reach(Polygon shape) {
    double least = Double.POSITIVE_INFINITY;
    for (int angle = 0; angle < 180; angle++) {
      Envelope box =
          AffineTransformation.rotationInstance(Math.toRadians(angle))
              .transform(shape)
              .getEnvelopeInternal();
      // Between two of these angles it may be a little narrower.
      if (box.getWidth() <= ROLL.window().width() * 1.01) {
        least = Math.min(least, 0.99 * box.getHeight());
      }
    }
    return Double.isInfinite(least) ? 0 : least;
  }

  @Test
  void allSheetsTogetherAreNearTheShortestThatCanBe() {
    Map<String, GradedPattern> patterns = new LinkedHashMap<>(RealPatterns.all());
    for (int i = 3; i < GeneratedPatterns.COUNT; i += 9) {
      patterns.put("generated " + i, GeneratedPatterns.pattern(i));
    }
    List<Double> ratios = new ArrayList<>();
    patterns.forEach(
        (name, pattern) -> {
          SheetPlan plan = PLANNER.plan(pattern, ROLL);
          if (!plan.tiles().isEmpty()) {
            double ratio = length(plan) / bound(plan);
            assertTrue(ratio < 1.9, name + ": " + ratio);
            ratios.add(ratio);
            assertEquals(1, plan.tiles().size(), name);
            assertTight(plan);
          }
        });
    double mean = ratios.stream().mapToDouble(ratio -> ratio).average().orElseThrow();
    assertTrue(mean < 1.25, "on average " + mean);
  }

  /** Every sheet ends below the lowest thing on it, and beside it is no sheet without a piece. */
  private static void assertTight(SheetPlan plan) {
    for (Tile tile : plan.tiles()) {
      assertTrue(!tile.pieces().isEmpty(), tile.alternative());
      double lowest = tile.window().minY() + TestSquare.SIDE + 4.5;
      for (PlacedPiece placed : plan.pieces()) {
        PieceArt art = PieceArt.of(placed);
        var part = art.polygon().intersection(Cell.polygon(tile.window()));
        lowest = part.isEmpty() ? lowest : Math.max(lowest, part.getEnvelopeInternal().getMaxY());
      }
      for (Item item : tile.page().items()) {
        if (item instanceof Item.Shape shape && shape.role().equals("test-square")) {
          Box square = shape.paths().get(0).bounds();
          lowest = Math.max(lowest, square.maxY() - ROLL.window().minY() + tile.window().minY());
        }
      }
      double spare = tile.window().maxY() - lowest;
      assertTrue(spare >= 0 && spare < 1.6, tile.code() + ": " + spare + " mm too long");
      assertEquals(tile.window().height() + 20, tile.page().height(), 1e-9);
    }
  }

  /** Turned, it takes two sheets of its shorter side; upright they would be a third longer. */
  @Test
  void aPieceWiderThanTheRollLiesAsItIsShortest() {
    SheetPlan plan = plan(List.of(SamplePatterns.rectangle(1, "Curtain", 907, 1308)));
    assertEquals(2, plan.tiles().size());
    assertTrue(length(plan) < 2 * (907 + AROUND + 5), length(plan) + " mm");
    assertTight(plan);
    assertEquals(1, plan.quality().joins());
  }

  @Test
  void twoOfThemShareThreeSheetsAndSmallPiecesLieBesideThem() {
    Piece one = SamplePatterns.rectangle(1, "Curtain", 907, 1308);
    Piece other = SamplePatterns.rectangle(2, "Curtain lining", 907, 1308);
    SheetPlan both = plan(List.of(one, other));
    assertEquals(3, both.tiles().size());
    assertTrue(length(both) < 3 * (907 + AROUND + 5), length(both) + " mm");
    SheetPlan beside = plan(List.of(one, SamplePatterns.rectangle(3, "Valance", 507, 308)));
    assertEquals(2, beside.tiles().size());
    assertTrue(length(beside) < 2 * (907 + AROUND + 5), length(beside) + " mm");
    assertTight(beside);
  }

  @Test
  void whatIsLongerThanAPageMayBeIsDividedAndEachSheetEndsWithItsPieces() {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 1; i <= 9; i++) {
      pieces.add(SamplePatterns.rectangle(i, "Panel", 600, 860));
    }
    SheetPlan plan = plan(pieces);
    assertEquals(2, plan.tiles().size());
    assertTight(plan);
    // 600 mm each, with gaps, and one frame more.
    assertTrue(length(plan) < 9 * 602 + 2 * AROUND + 110, length(plan) + " mm");
    for (Tile tile : plan.tiles()) {
      assertTrue(tile.page().height() * 72 / 25.4 <= 14_400.001);
    }
    assertEquals(plan, plan(pieces));
  }

  @Test
  void aLaterEditionLeavesPiecesWhereTheyAre() {
    List<Piece> pieces = new ArrayList<>(GeneratedPatterns.pattern(5).pieces());
    GradedPattern pattern = SamplePatterns.pattern("M", pieces);
    SheetPlan first = PLANNER.plan(pattern, ROLL);
    SheetPlan again = PLANNER.plan(pattern, ROLL, first.arranged());
    assertEquals(first.pieces(), again.pieces());
    assertEquals(length(first), length(again), 1e-9);
  }
}
