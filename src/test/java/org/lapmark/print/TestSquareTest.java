package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

/** The test square never costs a page, and lies on no line. */
class TestSquareTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();

  /** Lines keep 2 mm from a square; so far in both directions at once they may not be. */
  private static final double APART = 1.35;

  static Stream<Paper> papers() {
    return Stream.of(Paper.A4, Paper.LETTER, Paper.A0);
  }

  @ParameterizedTest
  @MethodSource("papers")
  void noPageHasTheSquareAlone(Paper paper) {
    Map<String, Integer> said = new TreeMap<>();
    RealPatterns.all()
        .forEach(
            (name, pattern) -> {
              SheetPlan plan = PLANNER.plan(pattern, paper);
              for (Tile tile : plan.tiles()) {
                assertFalse(tile.pieces().isEmpty(), name + ": " + tile.alternative());
              }
              if (!plan.tiles().isEmpty()) {
                said.merge(checked(name, plan), 1, Integer::sum);
              }
            });
    assertTrue(said.get("100") > 10, said.toString());
    if (paper == Paper.A4) {
      assertTrue(said.get("100 inside") > 2 && said.get("50") > 2, said.toString());
    }
  }

  /** Where the square lies on the first page, after a look at what is around it. */
  private static String checked(String name, SheetPlan plan) {
    Tile first = plan.tiles().get(0);
    Box square = squares(first).get(0);
    Point toSheet =
        new Point(first.window().minX(), first.window().minY())
            .minus(new Point(plan.paper().window().minX(), plan.paper().window().minY()));
    Box onSheet = square.moved(toSheet);
    boolean inside = false;
    for (PlacedPiece placed : plan.pieces()) {
      PieceArt art = PieceArt.of(placed);
      for (PieceArt.Stroke stroke : art.strokes()) {
        List<Path> near = CurveClip.inside(stroke.path(), onSheet.expanded(APART));
        assertEquals(List.of(), near, name + ": " + stroke.role());
      }
      inside |= art.polygon().intersects(Cell.polygon(onSheet));
    }
    assertEquals(square.width(), square.height(), 1e-9, name);
    long side = Math.round(square.width());
    List<String> words = new ArrayList<>();
    for (Item item : first.page().items()) {
      if (item instanceof Item.Lettering text && text.role().startsWith("test-square")) {
        words.add(text.text());
      }
    }
    String text = String.join(" ", words);
    assertTrue(text.contains(side / 10 + " cm test square"), text);
    assertTrue(text.contains("(" + side + " mm)"), text);
    assertEquals(inside, text.contains("no part of the piece"), text);
    assertTrue(
        first.alternative().contains("a test square of " + side / 10 + " cm"), first.alternative());
    return side + (inside ? " inside" : "");
  }

  private static List<Box> squares(Tile tile) {
    List<Box> squares = new ArrayList<>();
    for (Item item : tile.page().items()) {
      if (item instanceof Item.Shape shape && shape.role().equals("test-square")) {
        squares.add(shape.paths().get(0).bounds());
      }
    }
    return squares;
  }

  /** One that fills its page but for its inside, where the square goes. */
  @Test
  void aSquareInsideAPieceStaysThereInALaterEdition() {
    List<Piece> pieces = new ArrayList<>(List.of(SamplePatterns.rectangle(1, "Back", 180, 260)));
    GradedPattern pattern = SamplePatterns.pattern("M", pieces);
    SheetPlan plan = PLANNER.plan(pattern, Paper.A4);
    assertEquals("100 inside", checked("Back", plan));
    assertEquals(1, plan.tiles().size());
    assertEquals(plan, PLANNER.plan(pattern, Paper.A4, plan.arranged()));

    pieces.add(SamplePatterns.rectangle(2, "Tab", 60, 40));
    SheetPlan later = PLANNER.plan(SamplePatterns.pattern("M", pieces), Paper.A4, plan.arranged());
    assertEquals(squares(plan.tiles().get(0)), squares(later.tiles().get(0)));
    assertEquals(2, later.tiles().size());

    // A hole where the square was: it moves, and no page is added for it.
    pieces.set(0, SamplePatterns.hollow(1, "Back", 180, 260, 80));
    SheetPlan changed =
        PLANNER.plan(SamplePatterns.pattern("M", pieces), Paper.A4, plan.arranged());
    checked("Back", changed);
    assertEquals(2, changed.tiles().size());
  }

  @Test
  void aPatternWithoutRoomForAnySquareHasAPageForIt() {
    SheetPlan plan =
        PLANNER.plan(SamplePatterns.pattern("M", List.of(comb())), Paper.A4, Optional.empty());
    assertEquals(2, plan.tiles().size());
    assertEquals("100", checked("Comb", plan));
  }

  /** Fills a page with teeth too narrow for a square, in gaps too narrow for one. */
  private static Piece comb() {
    List<Point> outline = new ArrayList<>(List.of(new Point(0, 0), new Point(184, 0)));
    outline.add(new Point(184, 265));
    for (int tooth = 3; tooth >= 0; tooth--) {
      double x = 48 * tooth;
      outline.add(new Point(x, 265));
      if (tooth > 0) {
        outline.add(new Point(x, 10));
        outline.add(new Point(x - 8, 10));
        outline.add(new Point(x - 8, 265));
      }
    }
    return SamplePatterns.straight(1, "Comb", outline, null);
  }
}
