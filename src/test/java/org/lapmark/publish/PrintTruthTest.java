package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.book.Plates;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.publish.request.Papers;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The tiles, put together again from the numbers in the PDF, are the pieces. */
class PrintTruthTest {
  private static final double TOLERANCE = 0.002;
  private static final double STEP = 1.7;
  private static final double HEAD = 5;

  @ParameterizedTest
  @CsvSource({
    "content/towpath-handlebar-bag, S, a4",
    "content/towpath-handlebar-bag, M, letter",
    "content/towpath-handlebar-bag, L, shared",
    "content/slipway-rain-hat, 58, a4",
    "src/test/resources/org/lapmark/publish/large, one, a4",
    "src/test/resources/org/lapmark/publish/large, one, letter"
  })
  void everyPointOfEveryCuttingLineIsWhereItBelongs(String folder, String size, String paperName)
      throws IOException {
    Paper paper =
        Papers.USUAL.stream().filter(each -> each.id().equals(paperName)).findFirst().get();
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(java.nio.file.Path.of(folder), findings);
    GradedPattern pattern = Grader.grade(source, Variant.ofSize(size), findings);
    assertEquals(List.of(), findings.sorted());
    DocumentWriter writer = new DocumentWriter(TemplateFolder.bundled());
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.UK), writer.styles(), writer.lettering());
    SheetPlan plan = planner.plan(pattern, paper);
    List<List<Path>> drawn = new ArrayList<>();
    try (PDDocument document =
        Loader.loadPDF(
            writer.write(new TilesDocument(pattern, plan, Plates.of(planner)), new Findings()))) {
      assertEquals(plan.tiles().size(), document.getNumberOfPages());
      for (int i = 0; i < plan.tiles().size(); i++) {
        Tile tile = plan.tiles().get(i);
        Point shift =
            new Point(
                tile.window().minX() - paper.window().minX(),
                tile.window().minY() - paper.window().minY());
        drawn.add(new TileTracer(document.getPage(i), shift).trace());
      }
    }
    int checked = 0;
    for (PlacedPiece placed : plan.pieces()) {
      Path whole = placed.piece().shape().cuttingLine().path();
      Path line =
          placed
              .piece()
              .half()
              .map(FoldedHalf::cuttingLine)
              .orElse(whole)
              .transformed(placed.placement());
      double length = line.length();
      for (double at = 0; at < length; at += STEP) {
        Point point = line.atLength(at);
        boolean shown = false;
        for (int i = 0; i < plan.tiles().size(); i++) {
          Tile tile = plan.tiles().get(i);
          if (!tile.pieces().contains(placed.piece().number()) || !tile.window().contains(point)) {
            continue;
          }
          double distance = distance(point, drawn.get(i));
          shown |= distance <= TOLERANCE;
          // The strip at the window's upper edge belongs to the lettering.
          if (tile.window().expanded(-HEAD).contains(point)) {
            assertTrue(
                distance <= TOLERANCE,
                distance + " mm: " + placed.piece().number() + " at " + at + " on " + tile.code());
          }
        }
        assertTrue(shown, placed.piece().number() + " at " + at + " is on no tile");
        checked++;
      }
    }
    assertTrue(checked > 300, "only " + checked + " points");
    // A shifted tile is told from a true one.
    PlacedPiece first = plan.pieces().get(0);
    Point off =
        first
            .piece()
            .half()
            .map(FoldedHalf::cuttingLine)
            .orElse(first.piece().shape().cuttingLine().path())
            .atLength(20);
    Point moved = first.placement().apply(off).plus(new Point(0.01, 0.01));
    assertFalse(drawn.stream().anyMatch(paths -> distance(moved, paths) <= TOLERANCE));
  }

  private static double distance(Point point, List<Path> paths) {
    double least = Double.MAX_VALUE;
    for (Path path : paths) {
      if (path.bounds().expanded(1).contains(point)) {
        least = Math.min(least, path.atLength(path.nearestLength(point)).distance(point));
      }
    }
    return least;
  }
}
