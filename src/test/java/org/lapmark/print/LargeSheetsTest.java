package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

class LargeSheetsTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();
  private static final GradedPattern PATTERN = GeneratedPatterns.pattern(12);

  static Stream<Paper> sheets() {
    return Stream.of(Paper.A0, Paper.ROLL36);
  }

  private static List<Path> paths(List<Item> items, String role) {
    return items.stream()
        .flatMap(
            item ->
                item instanceof Item.Group group
                    ? paths(group.items(), role).stream()
                    : item instanceof Item.Shape shape && shape.role().equals(role)
                        ? shape.paths().stream()
                        : Stream.empty())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void squaresOfTenCentimetresStandAtBothEndsInsideAFrame(Paper paper) {
    SheetPlan plan = PLANNER.plan(PATTERN, paper);
    assertEquals(1, plan.tiles().size());
    Drawing page = plan.tiles().get(0).page();
    List<Box> squares = paths(page.items(), "test-square").stream().map(Path::bounds).toList();
    assertEquals(2, squares.size());
    Box window = plan.paper().window();
    for (Box square : squares) {
      assertEquals(100, square.width(), 1e-9);
      assertEquals(100, square.height(), 1e-9);
      for (Path line : paths(page.items(), "cutting-line")) {
        assertFalse(square.contains(line.start()));
      }
    }
    assertTrue(squares.get(0).minY() < window.minY() + 6);
    // On a roll it is as far down as the pieces leave room, so that it costs no paper.
    assertTrue(
        paper == Paper.A0
            ? squares.get(1).maxY() > window.maxY() - 6
            : squares.get(1).minY() > window.centre().y());
    assertEquals(
        List.of(window), paths(page.items(), "sheet-frame").stream().map(Path::bounds).toList());
    assertEquals(page.height(), plan.paper().height(), 1e-9);
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void everyPieceLiesInsideTheFrame(Paper paper) {
    SheetPlan plan = PLANNER.plan(PATTERN, paper);
    assertEquals(PATTERN.pieces().size(), plan.pieces().size());
    Box window = plan.tiles().get(0).window();
    for (PlacedPiece placed : plan.pieces()) {
      assertTrue(window.contains(PieceArt.of(placed).bounds()));
    }
  }

  @Test
  void aRollIsAsLongAsNeededAndNoLonger() {
    SheetPlan plan = PLANNER.plan(PATTERN, Paper.ROLL36);
    assertEquals(914.4, plan.paper().width());
    double used =
        plan.pieces().stream()
            .mapToDouble(placed -> PieceArt.of(placed).bounds().maxY())
            .max()
            .orElseThrow();
    assertTrue(plan.paper().height() < used + 135, plan.paper().toString());
  }

  @Test
  void aRollIsSplitBelowTheLargestPage() {
    GradedPattern many = GeneratedPatterns.pattern(49, 300);
    SheetPlan plan = PLANNER.plan(many, Paper.ROLL36);
    assertTrue(plan.tiles().size() > 1, plan.quality().toString());
    for (Tile tile : plan.tiles()) {
      assertTrue(tile.page().height() * 72 / 25.4 <= 14_400.001);
      assertTrue(tile.page().width() * 72 / 25.4 <= 14_400);
    }
  }

  @Test
  void theProjectorHasThickLinesOnWhiteAndOnBlack() {
    SheetPlan plan = PLANNER.plan(PATTERN, Paper.PROJECTOR);
    assertEquals(2, plan.tiles().size());
    for (int i = 0; i < 2; i++) {
      String role = i == 0 ? "projector-" : "projector-inverted-";
      List<Item> items = plan.tiles().get(i).page().items();
      assertEquals(PATTERN.pieces().size(), paths(items, role + "cutting").size());
      assertEquals(i, paths(items, "projector-black").size());
      for (String line : List.of("cutting", "inner")) {
        double width = PLANNER.styles().style(role + line).strokeWidth();
        assertTrue(width >= 1 && width <= 1.5);
        assertTrue(PLANNER.styles().style(role + line).dash().isEmpty());
      }
      List<String> layers =
          items.stream()
              .filter(item -> item instanceof Item.Group)
              .map(item -> ((Item.Group) item).layer())
              .toList();
      assertEquals(List.of("10 cm grid", "5 in grid", "Size M"), layers);
      assertEquals(100, spacing(paths(items, role + "grid")), 1e-9);
      assertEquals(127, spacing(paths(items, role + "grid-inch")), 1e-9);
    }
  }

  private static double spacing(List<Path> lines) {
    Point first = lines.get(0).start();
    Point second = lines.get(1).start();
    return first.distance(second);
  }
}
