package org.lapmark.figure.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.drawing.Item;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureSource;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** Stitching is drawn where it is stated, as long as it is, and said in words. */
class StitchingTest {
  private static final java.nio.file.Path FOLDER =
      java.nio.file.Path.of("src", "test", "resources", "org/lapmark/specimens/bench");

  private static PatternSource source;
  private static EvaluatedPattern small;
  private static EvaluatedPattern large;

  @BeforeAll
  static void read() throws IOException {
    Findings findings = new Findings();
    source = PatternReader.read(FOLDER, findings);
    assertEquals("", DemoFigures.said(findings));
    small = DemoFigures.pattern(source, "S");
    large = DemoFigures.pattern(source, "L");
  }

  private static Canvas drawn(EvaluatedPattern pattern, String keys) {
    String yaml = "pieces:\n- {piece: 1, name: no, " + keys + "}\n";
    return DemoFigures.drawn(DemoFigures.picture(yaml), pattern);
  }

  private static List<Path> strokes(List<Item> items, String role) {
    List<Path> found = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        found.addAll(strokes(group.items(), role));
      } else if (item instanceof Item.Shape shape && shape.role().equals(role)) {
        found.addAll(shape.paths());
      }
    }
    return found;
  }

  /** Millimetres on paper for one of cloth, told by the outline's width. */
  private static double scale(Canvas canvas, double width) {
    return strokes(canvas.items(), "figure-outline").stream()
            .mapToDouble(path -> path.bounds().width())
            .max()
            .orElseThrow()
        / width;
  }

  private static List<Long> lengths(EvaluatedPattern pattern, String keys, double width) {
    Canvas canvas = drawn(pattern, keys);
    double scale = scale(canvas, width);
    return strokes(canvas.items(), "figure-sew-now").stream()
        .map(path -> Math.round(path.length() / scale * 100))
        .toList();
  }

  /** The raw edges lie 10 mm outside: 170 mm from one to the other in the small size. */
  @Test
  void aLineReachesFromPlaceToPlace() {
    assertEquals(
        List.of(6000L), lengths(small, "lines: [{sew: top, from: 20 mm, to: 80 mm}]", 170));
    assertEquals(List.of(7500L), lengths(small, "lines: [{sew: top, from: 1/4, to: 3/4}]", 170));
    assertEquals(List.of(9500L), lengths(large, "lines: [{sew: top, from: 1/4, to: 3/4}]", 210));
    assertEquals(
        List.of(6000L),
        lengths(small, "lines: [{sew: top, distance: 5 mm, from: 20 mm, to: 80 mm}]", 170));
    // From the raw edge at the corner.
    assertEquals(List.of(3000L), lengths(small, "lines: [{sew: top, to: 20 mm}]", 170));
  }

  @Test
  void gapsAreLeftOpenAndMeasured() {
    String keys = "lines: [{sew: top, from: 20 mm, to: 80 mm, gaps: [{from: 30 mm, to: 1/3}]}]";
    assertEquals(List.of(1000L, 3000L), lengths(small, keys, 170));
    assertEquals(List.of(1000L, 1667L), lengths(large, keys, 210));
    assertTrue(lettered(drawn(small, keys)).contains("20 mm (3/4 in)"));
    assertFalse(lettered(drawn(small, keys.replace("1/3", "1/3, measured: no"))).contains("20 mm"));
  }

  private static String lettered(Canvas canvas) {
    return canvas.items().stream()
        .filter(Item.Lettering.class::isInstance)
        .map(item -> ((Item.Lettering) item).text())
        .toList()
        .toString()
        .replace('\u00a0', ' ');
  }

  @Test
  void severalLinesAreSewnAndAllAreSaid() {
    String sewn = "lines: [{sew: [pocket, flap]}]";
    assertEquals(2, strokes(drawn(small, sewn).items(), "figure-sew-now").size());
    assertTrue(said(sewn).contains("on the placement line “pocket, flap”"), said(sewn));
    String edges = "lines: [{topstitch: [left, bottom, right], distance: 3 mm}]";
    assertTrue(
        said(edges).contains("along the left edge, the bottom edge, the right edge,"), said(edges));
  }

  private static String said(String keys) {
    Findings findings = new Findings();
    return FigureSource.parse(
            DemoFigures.block("pieces:\n- {piece: 1, name: no, " + keys + "}\n"), findings)
        .flatMap(
            figure -> DemoFigures.drawer().draw(figure, small, source.masthead().form(), findings))
        .orElseThrow()
        .alternative();
  }

  @Test
  void rowsLieInsideOneAnother() {
    Canvas canvas = drawn(small, "lines: [{sew: top, rows: 3, apart: 4 mm}]");
    List<Path> rows = strokes(canvas.items(), "figure-sew-now");
    assertEquals(3, rows.size());
    double scale = scale(canvas, 170);
    for (int i = 0; i < 3; i++) {
      double y = rows.get(i).bounds().minY() - canvas.bounds().minY();
      assertEquals((10 + 4 * i) * scale, y, 1e-6);
    }
  }

  @Test
  void aPlacementLineIsSewnAsItRuns() {
    assertEquals(List.of(15000L), lengths(small, "lines: [{sew: pocket}]", 170));
    assertEquals(List.of(4500L), lengths(small, "lines: [{sew: pocket, to: 45 mm}]", 170));
  }

  /** Also of a piece that is turned over a whip stitch begins inside it. */
  @ParameterizedTest
  @ValueSource(strings = {"right", "wrong"})
  void whatGoesOverAnEdgeBeginsInside(String side) {
    Canvas canvas =
        drawn(small, "side: " + side + ", turned: [top], lines: [{hand: top, stitch: whip}]");
    List<Point> outline = canvas.covered().get(0);
    List<Path> strokes = strokes(canvas.items(), "figure-whip-now");
    assertTrue(strokes.size() > 20);
    for (Path stroke : strokes.subList(1, strokes.size() - 1)) {
      assertTrue(Polygons.inside(outline, stroke.start()));
      assertFalse(Polygons.inside(outline, stroke.end()));
    }
  }

  @Test
  void aBoxLiesWhereItIsPlaced() {
    Canvas canvas =
        drawn(small, "tacks: [{box: 20 mm, height: 30 mm, cross: yes, edge: top, inside: 15 mm}]");
    List<Path> lines = strokes(canvas.items(), "figure-sew-now");
    double scale = scale(canvas, 170);
    assertEquals(3, lines.size());
    assertEquals(20 * scale, lines.get(0).bounds().width(), 1e-6);
    assertEquals(30 * scale, lines.get(0).bounds().height(), 1e-6);
    double left = canvas.bounds().minX();
    double top = canvas.bounds().minY();
    assertEquals(left + 85 * scale, lines.get(0).bounds().centre().x(), 1e-6);
    assertEquals(top + 15 * scale, lines.get(0).bounds().minY(), 1e-6);
    assertEquals(Math.hypot(20, 30) * scale, lines.get(1).length(), 1e-6);
  }

  @Test
  void everyStitchIsSaidInASentence() {
    for (EvaluatedPattern pattern : List.of(small, large)) {
      StringBuilder all = new StringBuilder();
      for (var block : DemoFigures.blocks(source).values()) {
        Findings findings = new Findings();
        Figure figure =
            DemoFigures.drawer()
                .draw(
                    FigureSource.parse(block, findings).orElseThrow(),
                    pattern,
                    source.masthead().form(),
                    findings)
                .orElseThrow();
        assertEquals("", DemoFigures.said(findings));
        all.append(figure.alternative().replace('\u00a0', ' ')).append(' ');
      }
      for (String sentence :
          List.of(
              "A gap of 50 mm (2 in) stays open.",
              "Its ends are backstitched.",
              "There are 2 rows, 4 mm apart.",
              "Slip stitches by hand along the top edge.",
              "Whip stitches by hand over the right edge.",
              "Ladder stitches by hand along the bottom edge. Its ends are knotted.",
              "Topstitching on the placement line “pocket”.",
              "A box of stitches with a cross, 22 mm",
              "A bar tack, 14 mm")) {
        assertTrue(all.toString().contains(sentence), sentence + "\n" + all);
      }
      assertFalse(all.toString().matches("(?s).*[{}_].*"), all.toString());
    }
  }
}
