package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.paper.Correction;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

class CorrectionTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();

  private static List<Path> paths(Drawing page, String role) {
    return page.items().stream()
        .filter(item -> item instanceof Item.Shape shape && shape.role().equals(role))
        .flatMap(item -> ((Item.Shape) item).paths().stream())
        .toList();
  }

  private static boolean says(Drawing page, String text) {
    return page.items().stream()
        .anyMatch(item -> item instanceof Item.Lettering words && words.text().contains(text));
  }

  @ParameterizedTest
  @CsvSource({"178.6, 239.1", "184.2, 236", "170, 252"})
  void whatTheErringPrinterPrintsIsTrue(double across, double down) {
    Correction correction = new Correction(across, down);
    Paper paper = Paper.A4.corrected(correction);
    SheetPlan plan = PLANNER.plan(GeneratedPatterns.pattern(5), paper);
    Affine printer = Affine.scaling(across / 180, down / 240);
    assertTrue(plan.tiles().size() > 8);
    for (PlacedPiece placed : plan.pieces()) {
      Path line = placed.piece().shape().cuttingLine().path().transformed(placed.placement());
      double length = line.length();
      for (double at = 0; at < length; at += 11.3) {
        Point point = line.atLength(at);
        double nearest = Double.POSITIVE_INFINITY;
        for (Tile tile : plan.tiles()) {
          if (!tile.window().contains(point)) {
            continue;
          }
          // From a place on the sheet to one on the printed page.
          Point corner = printer.apply(new Point(10, 10));
          Point printed =
              point.minus(new Point(tile.window().minX(), tile.window().minY())).plus(corner);
          for (Path path : paths(tile.page(), "cutting-line")) {
            nearest = Math.min(nearest, path.transformed(printer).distance(printed));
          }
        }
        assertTrue(nearest < 1e-6, placed.piece().number() + " at " + at + ": " + nearest);
      }
    }
    Box window = Paper.A4.window().expanded(1e-6);
    for (Tile tile : plan.tiles()) {
      assertEquals(210, tile.page().width(), 1e-9);
      assertEquals(297, tile.page().height(), 1e-9);
      paths(tile.page(), "cutting-line").forEach(p -> assertTrue(window.contains(p.bounds())));
      assertTrue(says(tile.page(), "Only for a printer whose bars measured"), tile.code());
    }
    Box square = paths(plan.tiles().get(0).page(), "test-square").get(0).bounds();
    assertEquals(100 * 180 / across, square.width(), 1e-9);
    assertEquals(100 * 240 / down, square.height(), 1e-9);
  }

  @Test
  void barsAreCorrectedAndLetteringIsNot() {
    Drawing plain = PLANNER.printingPage(Paper.A4);
    Drawing page = PLANNER.printingPage(Paper.A4.corrected(new Correction(178.6, 239.1)));
    double widest =
        paths(page, "scale-bar").stream().mapToDouble(p -> p.bounds().width()).max().orElseThrow();
    double highest =
        paths(page, "scale-bar").stream().mapToDouble(p -> p.bounds().height()).max().orElseThrow();
    assertEquals(180 * 180 / 178.6, widest, 1e-9);
    assertEquals(240 * 240 / 239.1, highest, 1e-9);
    assertEquals(
        plain.items().stream().filter(item -> item instanceof Item.Lettering).count() > 0,
        says(page, "corrected for one printer"));
    assertFalse(says(plain, "corrected for one printer"));
    assertEquals(210, page.width(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"169, 240", "191, 240", "180, 225", "180, 255", "0, 240", "NaN, 240"})
  void implausibleMeasurementsAreRefused(double across, double down) {
    assertFalse(Correction.plausible(across, down));
    assertThrows(IllegalArgumentException.class, () -> new Correction(across, down));
  }

  @Test
  void aPrinterThatKeepsTheScaleChangesNothing() {
    assertFalse(Paper.A4.corrected(new Correction(180, 240)).isCorrected());
    assertEquals(Paper.A4, Paper.A4.corrected(new Correction(180, 240)));
  }
}
