package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.lapmark.drawing.Item;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.source.read.PatternReader;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** An edge stated to lie on a fold looks as the fold of a half does. */
class FoldedEdgeTest {
  private static GradedPattern pattern;

  @BeforeAll
  static void read() throws IOException {
    Findings findings = new Findings();
    java.nio.file.Path folder =
        java.nio.file.Path.of("src", "test", "resources", "org", "lapmark", "grade", "corners");
    pattern = Grader.grade(PatternReader.read(folder, findings), Variant.ofSize("M"), findings);
    assertEquals(List.of(), findings.sorted());
  }

  private static Piece piece(int number) {
    return pattern.pieces().stream()
        .filter(each -> each.number() == number)
        .findFirst()
        .orElseThrow();
  }

  private static List<Path> paths(PieceArt art, String role) {
    return art.strokes().stream()
        .filter(stroke -> stroke.role().equals(role))
        .map(PieceArt.Stroke::path)
        .toList();
  }

  private static org.locationtech.jts.geom.Point point(Point point) {
    return new GeometryFactory().createPoint(new Coordinate(point.x(), point.y()));
  }

  @Test
  void aFoldAndACutGoRoundThePieceTogether() {
    Piece piece = piece(5);
    Path whole = piece.shape().cuttingLine().path();
    PieceArt art = PieceArt.of(new PlacedPiece(piece, Affine.IDENTITY));
    Path fold = paths(art, "on-fold").get(0);
    assertEquals(1, paths(art, "on-fold").size());
    assertEquals(1, paths(art, "cutting-line").size());
    Path cut = paths(art, "cutting-line").get(0);
    assertEquals(0, cut.end().distance(fold.start()), 1e-9);
    assertEquals(0, fold.end().distance(cut.start()), 1e-9);
    assertEquals(whole.length(), cut.length() + fold.length(), 1e-6);
    assertEquals(fold.start().distance(fold.end()), fold.length(), 1e-9);
  }

  @Test
  void theSignOfAFoldLiesInThePiece() {
    PieceArt art = PieceArt.of(new PlacedPiece(piece(5), Affine.IDENTITY));
    List<Path> signs = paths(art, "on-fold-sign");
    assertEquals(3, signs.size());
    for (Path sign : signs) {
      assertTrue(art.polygon().buffer(1e-6).contains(point(sign.atLength(sign.length() / 2))));
    }
  }

  @Test
  void whatIsRawOrCutByAMachineIsCutAllRound() {
    for (PieceArt art :
        List.of(
            PieceArt.of(new PlacedPiece(piece(6), Affine.IDENTITY)),
            PieceArt.whole(new PlacedPiece(piece(5), Affine.IDENTITY)))) {
      assertEquals(List.of(), paths(art, "on-fold"));
      assertEquals(1, paths(art, "cutting-line").size());
      Path cut = paths(art, "cutting-line").get(0);
      assertEquals(0, cut.start().distance(cut.end()), 1e-9);
    }
  }

  @Test
  void thePieceSaysWhatItsDashDottedEdgeIs() {
    SheetPlan plan = SamplePatterns.planner().plan(pattern, Paper.A4);
    long said =
        plan.tiles().stream()
            .flatMap(tile -> tile.page().items().stream())
            .filter(
                item ->
                    item instanceof Item.Lettering words && words.text().contains("dash-dotted"))
            .count();
    assertEquals(1, said);
  }
}
