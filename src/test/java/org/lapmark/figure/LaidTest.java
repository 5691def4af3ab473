package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.drawing.Item;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** What lies on pieces is seen where it lies, and only there. */
class LaidTest {
  private static PatternSource source;
  private static EvaluatedPattern pattern;

  @BeforeAll
  static void read() throws IOException {
    Findings findings = new Findings();
    source =
        PatternReader.read(
            Path.of("src", "test", "resources", "org/lapmark/figure/laid"), findings);
    assertEquals("", DemoFigures.said(findings));
    pattern = DemoFigures.pattern(source, "M");
  }

  /** A shape, what of it is seen, and its role. */
  private record Ink(String role, List<org.lapmark.geometry.Path> paths, List<Seen> clips) {
    boolean covers(Point point) {
      return clips.stream().allMatch(clip -> clip.path.encloses(point))
          && paths.stream()
                      .filter(org.lapmark.geometry.Path::isClosed)
                      .filter(path -> path.encloses(point))
                      .count()
                  % 2
              == 1;
    }
  }

  private record Seen(org.lapmark.geometry.Path path) {}

  private static void collect(List<Item> items, Affine map, List<Seen> clips, List<Ink> into) {
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        Affine own = map.after(group.map());
        List<Seen> all = new ArrayList<>(clips);
        if (group.clip() != null) {
          all.add(new Seen(group.clip().transformed(map)));
        }
        collect(group.items(), own, all, into);
      } else if (item instanceof Item.Shape shape) {
        into.add(
            new Ink(
                shape.role(),
                shape.paths().stream().map(path -> path.transformed(map)).toList(),
                clips));
      }
    }
  }

  /** In the true size, in the first piece's own coordinates. */
  private static List<Ink> drawn(String piece) {
    return drawn(piece, Affine.IDENTITY);
  }

  private static List<Ink> drawn(String piece, Affine map) {
    Canvas canvas =
        DemoFigures.drawn(DemoFigures.picture("pieces:\n- {name: no, " + piece + "}\n"), pattern);
    List<Ink> all = new ArrayList<>();
    collect(canvas.items(), map, List.of(), all);
    return all;
  }

  /** The role of what is filled last over a point. */
  private static String top(List<Ink> all, Point point) {
    String top = "";
    for (Ink ink : all) {
      if (DemoFigures.styles().style(ink.role).fillGrey() >= 0 && ink.covers(point)) {
        top = ink.role;
      }
    }
    return top;
  }

  private static List<Ink> of(List<Ink> all, String role) {
    return all.stream().filter(ink -> ink.role.equals(role)).toList();
  }

  private static Box box(Ink ink) {
    return ink.paths.stream()
        .map(org.lapmark.geometry.Path::bounds)
        .reduce(Box::union)
        .orElseThrow();
  }

  private static String found(String piece) {
    Findings findings = new Findings();
    FigureSource.parse(DemoFigures.block("pieces:\n- {name: no, " + piece + "}\n"), findings)
        .ifPresent(
            figure ->
                DemoFigures.drawer().draw(figure, pattern, source.masthead().form(), findings));
    return String.join(
        ", ", findings.sorted().stream().map(finding -> finding.code().id()).toList());
  }

  private static Point from(Box box, double right, double down) {
    return new Point(box.minX() + right, box.minY() + down);
  }

  @Test
  void aBandIsCroppedWithItsPiece() {
    List<Ink> all =
        drawn(
            "piece: 1, edge: bottom, cropped: 100 mm, things: [{band: rim, width: 10 mm, cloth: bias}]");
    Box piece = box(of(all, "figure-main").get(0));
    assertEquals(100, piece.height(), 1e-6);
    for (Ink ink : of(all, "figure-binding")) {
      assertTrue(piece.expanded(1e-6).contains(box(ink)));
    }
    assertEquals("figure-binding", top(all, from(piece, 5, 50)));
    assertEquals("figure-binding", top(all, from(piece, 280, 95)));
    assertEquals("figure-main", top(all, from(piece, 280, 50)));
    assertEquals("figure-main", top(all, from(piece, 280, 1)));
  }

  /** The top has 25 mm, the others 12 mm. */
  @Test
  void aBandFollowsEachRawEdgeWhereAllowancesDiffer() {
    List<Ink> all = drawn("piece: 2, things: [{band: all, width: 10 mm, cloth: bias}]");
    Box piece = box(of(all, "figure-main").get(0));
    for (Point point :
        List.of(
            from(piece, 100, 5),
            from(piece, 5, 100),
            from(piece, 209, 100),
            from(piece, 107, 217),
            from(piece, 20, 192))) {
      assertEquals("figure-binding", top(all, point), point.toString());
    }
    assertEquals("figure-main", top(all, from(piece, 100, 15)));
    assertEquals("figure-main", top(all, from(piece, 15, 100)));
    assertEquals("figure-main", top(all, from(piece, 107, 207)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"top", "under", "corner"})
  void aBandLiesAlongAnEdgeOrAChain(String edge) {
    List<Ink> all = drawn("piece: 2, things: [{band: " + edge + ", width: 10 mm, cloth: bias}]");
    Box piece = box(of(all, "figure-main").get(0));
    assertEquals(
        edge.equals("under") ? "figure-main" : "figure-binding", top(all, from(piece, 100, 5)));
    assertEquals(
        edge.equals("under") ? "figure-binding" : "figure-main", top(all, from(piece, 107, 217)));
    assertEquals(
        edge.equals("corner") ? "figure-binding" : "figure-main", top(all, from(piece, 209, 100)));
    assertEquals("figure-main", top(all, from(piece, 5, 100)));
    assertEquals("figure-main", top(all, from(piece, 100, 100)));
  }

  @Test
  void aBandWiderThanThePieceIsTold() {
    assertEquals(
        "figure-line-impossible",
        found("piece: 2, things: [{band: all, width: 150 mm, cloth: bias}]"));
    assertEquals("", found("piece: 2, things: [{band: all, width: 50 mm, cloth: bias}]"));
  }

  /** White stitches on the dark band, and the band still there. */
  @Test
  void stitchesOnADarkBandLeaveItDark() {
    List<Ink> all =
        drawn(
            "piece: 1, things: [{band: rim, width: 10 mm, cloth: bias}],"
                + " lines: [{topstitch: rim, distance: 8 mm}]");
    Ink white = of(all, "figure-topstitch-on-dark").get(0);
    assertEquals(1, DemoFigures.styles().style(white.role).strokeGrey(), 1e-9);
    Box piece = box(of(all, "figure-main").get(0));
    assertTrue(white.clips.get(0).path.encloses(from(piece, 280, 675)));
    assertFalse(white.clips.get(0).path.encloses(from(piece, 280, 600)));
    assertTrue(all.stream().noneMatch(ink -> ink.role.contains("halo")));
  }

  /** The corners of the arms lie 260 mm from the bib and 420 mm from the bottom. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "edge: bib, cropped: 259.9 mm",
        "edge: bib, cropped: 260 mm",
        "edge: bib, cropped: 260.1 mm",
        "edge: bottom, cropped: 419.9 mm",
        "edge: bottom, cropped: 420 mm",
        "edge: bottom, cropped: 420.1 mm"
      })
  void aPieceIsCroppedAtACornerAsBesideIt(String crop) {
    List<Ink> all = drawn("piece: 1, " + crop);
    double kept = Double.parseDouble(crop.replaceAll(".*: (.*) mm", "$1"));
    assertEquals(kept, box(of(all, "figure-main").get(0)).height(), 1e-6);
    List<Ink> breaks = of(all, "figure-break");
    assertEquals(1, breaks.size());
    assertTrue(box(breaks.get(0)).width() > 450, box(breaks.get(0)).toString());
  }

  /** Along the line run two edges as well, at whose ends nothing is broken off. */
  @Test
  void aBreakLineEndsWhereTheEdgeBegins() {
    List<Ink> all = drawn("piece: 2, turned: all, edge: bottom, cropped: 25 mm");
    assertEquals(25, box(of(all, "figure-main").get(0)).height(), 1e-6);
    assertEquals(140, box(of(all, "figure-break").get(0)).width(), 1e-6);
    List<Ink> higher = drawn("piece: 2, turned: all, edge: bottom, cropped: 26 mm");
    assertEquals(190, box(of(higher, "figure-break").get(0)).width(), 1e-6);
  }

  /** Of 200 mm from the bib upwards, 40 mm lie on the apron. */
  @Test
  void whatLiesOnTheOtherSideIsBehind() {
    List<Ink> right = drawn("piece: 1, things: [{attachment: neck_strap}]");
    Box piece = box(of(right, "figure-main").get(0));
    assertEquals("figure-webbing", top(right, from(piece, 185, 20)));
    assertEquals("figure-webbing", top(right, from(piece, 185, -100)));
    assertEquals(List.of(), of(right, "figure-under"));
    List<Ink> wrong = drawn("piece: 1, side: wrong, things: [{attachment: neck_strap}]");
    piece = box(of(wrong, "figure-main-wrong").get(0));
    assertEquals("figure-main-wrong", top(wrong, from(piece, 560 - 185, 20)));
    assertEquals("figure-webbing", top(wrong, from(piece, 560 - 185, -100)));
    assertEquals(25, box(of(wrong, "figure-under").get(0)).width(), 1e-6);
    List<Ink> inner = drawn("piece: 1, things: [{attachment: inner_strap}]");
    assertEquals("figure-main", top(inner, from(box(of(inner, "figure-main").get(0)), 260, 60)));
    List<Ink> over = drawn("piece: 1, side: wrong, things: [{attachment: inner_strap}]");
    piece = box(of(over, "figure-main-wrong").get(0));
    assertEquals("figure-webbing", top(over, from(piece, 300, 60)));
  }

  @Test
  void whatIsBehindIsSaidToBe() {
    assertTrue(
        said("piece: 1, side: wrong, things: [{attachment: strap_ring}]").contains("Behind it: "));
    assertTrue(said("piece: 1, things: [{attachment: strap_ring}]").contains("On it: "));
  }

  private static String said(String piece) {
    Findings findings = new Findings();
    return FigureSource.parse(DemoFigures.block("pieces:\n- {name: no, " + piece + "}\n"), findings)
        .flatMap(
            figure ->
                DemoFigures.drawer().draw(figure, pattern, source.masthead().form(), findings))
        .orElseThrow()
        .alternative();
  }

  /** 164 mm wide at the top, 70 mm high in its middle, 45 mm at its sides. */
  @Test
  void anAttachedPieceHasItsOwnShape() {
    List<Ink> all =
        drawn("piece: 1, things: [{attachment: pocket_flap, cloth: drill, side: wrong}]");
    Box piece = box(of(all, "figure-main").get(0));
    assertEquals("figure-main-wrong", top(all, from(piece, 392, 345 + 69)));
    assertEquals("figure-main-wrong", top(all, from(piece, 312, 345 + 40)));
    assertEquals("figure-main", top(all, from(piece, 312, 345 + 60)));
    assertEquals("figure-main", top(all, from(piece, 392, 344)));
    List<Ink> cropped =
        drawn("piece: 1, things: [{attachment: pocket_flap, side: wrong, cropped: 30 mm}]");
    assertEquals("figure-main-wrong", top(cropped, from(piece, 392, 345 + 29)));
    assertEquals("figure-main", top(cropped, from(piece, 392, 345 + 31)));
    // Made up to another width, it isn't as it is cut.
    List<Ink> pocket = drawn("piece: 1, things: [{attachment: pouch_pocket, side: wrong}]");
    assertEquals("figure-main-wrong", top(pocket, from(piece, 345, 345 + 149)));
    assertEquals("figure-main", top(pocket, from(piece, 339, 345 + 149)));
  }

  @Test
  void anAttachedPieceHasItsStitching() {
    List<Ink> all =
        drawn(
            "piece: 1, things: [{attachment: pocket_flap, lines: [{topstitch: [left, right], distance: 4 mm}]}]");
    Box piece = box(of(all, "figure-main").get(0));
    for (Ink line : of(all, "figure-topstitch-now")) {
      assertTrue(from(box(line), 0, 0).y() >= from(piece, 0, 344.9).y());
      assertTrue(box(line).maxX() <= from(piece, 474, 0).x());
    }
    assertEquals(
        "figure-key-idle",
        found("piece: 1, things: [{attachment: neck_strap, lines: [{sew: all}]}]"));
  }

  /** 120 mm of elastic on an edge of 190 mm. */
  @Test
  void whatIsShorterThanItsEdgeReachesFromEndToEnd() {
    List<Ink> open = drawn("piece: 2, side: wrong, things: [{trim: pouch_elastic}]");
    Box piece = box(of(open, "figure-main-wrong").get(0));
    assertEquals(190, box(of(open, "figure-symbol").get(0)).width(), 1e-6);
    assertEquals(25 + 9.5, box(of(open, "figure-symbol").get(0)).centre().y() - piece.minY(), 1e-6);
    List<Ink> left = drawn("piece: 2, things: [{trim: left_elastic}]");
    assertEquals(160, box(of(left, "figure-symbol").get(0)).height(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"side: right", "turned: [top]", "side: wrong, turned: [top]"})
  void whatIsInACasingIsHidden(String how) {
    List<Ink> all = drawn("piece: 2, " + how + ", things: [{trim: pouch_elastic}]");
    Box elastic = box(of(all, "figure-under").get(0));
    assertEquals(190, elastic.width(), 1e-6);
    assertFalse(top(all, elastic.centre()).startsWith("figure-symbol"));
  }

  @Test
  void aTrimOfAMaterialIsABand() {
    assertEquals("figure-trim-of-cloth", found("piece: 1, things: [{trim: rim_binding}]"));
  }

  /** Hardware whose kind is webbing looks like webbing. */
  @Test
  void webbingAmongTheHardwareLooksLikeWebbing() {
    List<Ink> all = drawn("piece: 1, things: [{attachment: hanger}]");
    assertEquals("figure-webbing", top(all, from(box(of(all, "figure-main").get(0)), 280, 30)));
  }

  /** With its right half over its left, the right edge lies at the left, and goes with that. */
  @Test
  void aSecondFoldIsJudgedAsThePieceLiesByThen() {
    String first = "{from_edge: top, from: 95 mm, to_edge: bottom, to: 70 mm, over: right}";
    for (String over : List.of("left", "right")) {
      String second =
          "{from_edge: top, from: 60 mm, to_edge: bottom, to: 105 mm, over: " + over + "}";
      List<Ink> all = drawn("piece: 2, folds: [" + first + ", " + second + "]");
      // What stays lies between 60 and 95 mm; what goes over reaches 12 mm further to the right.
      Box piece = of(all, "figure-outline").stream().map(LaidTest::box).reduce(Box::union).get();
      assertEquals(95 - 60 + (60 + 12 - (95 - 60)), piece.width(), 1e-6, over);
      assertEquals(piece.minX() + 35, box(of(all, "figure-main").get(0)).maxX(), 1e-6, over);
    }
  }

  @Test
  void anAllowanceFoldsOverAtItsStitchingLine() {
    List<Ink> all = drawn("piece: 2, folds: [{edge: top}]");
    assertEquals(185 + 12, box(of(all, "figure-main").get(0)).height(), 1e-6);
    assertEquals(25, box(of(all, "figure-main-wrong").get(0)).height(), 1e-6);
    assertEquals("figure-fold-impossible", found("piece: 1, folds: [{edge: bib}]"));
  }

  @Test
  void aCroppedPieceIsFolded() {
    List<Ink> all =
        drawn("piece: 1, edge: bottom, cropped: 200 mm, folds: [{edge: bottom, inset: 30 mm}]");
    assertEquals(170, box(of(all, "figure-main").get(0)).height(), 1e-6);
    assertEquals(30, box(of(all, "figure-main-wrong").get(0)).height(), 1e-6);
    assertEquals(560, box(of(all, "figure-break").get(0)).width(), 1e-6);
  }

  /** On what is folded over, its marks show as well. */
  @Test
  void aFoldedPieceShowsItsMarks() {
    String fold = "folds: [{edge: top, inset: 80 mm}]";
    List<Ink> plain = drawn("piece: 2, " + fold);
    assertEquals(List.of(), of(plain, "figure-stitching"));
    List<Ink> all = drawn("piece: 2, show: [stitching], " + fold);
    assertEquals(2, of(all, "figure-stitching").size());
    List<Ink> flap =
        drawn("piece: 3, show: [marks], folds: [{edge: top, inset: 40 mm, over: point_r}]");
    assertTrue(of(flap, "figure-mark").size() == 1, "the drill point where it lies folded");
  }

  @Test
  void aPieceIsNamedByTheSideThatIsSeen() {
    assertTrue(
        named("folds: [{from_edge: top, to_edge: bottom, over: right}]").contains("wrong side"));
    assertTrue(named("folds: [{edge: top, inset: 30 mm}]").contains("right side"));
  }

  private static String named(String keys) {
    Canvas canvas =
        DemoFigures.drawn(DemoFigures.picture("pieces:\n- {piece: 2, " + keys + "}\n"), pattern);
    return canvas.wishes().stream().map(Canvas.Wish::text).toList().toString();
  }

  /** The strap's end lies under the bars of the slide, over which the strap itself goes. */
  @Test
  void whatComesBackGoesUnderTheSlide() {
    for (String back : List.of("back: 120 mm", "back_to: slide")) {
      List<Ink> all =
          drawn(
              "piece: 1, things: [{width: 25 mm, length: 200 mm, edge: bib, cloth: webbing, through:"
                  + " [{hardware: slide, at: 100 mm}, {hardware: ring, "
                  + back
                  + "}]}]");
      Box piece = box(of(all, "figure-main").get(0));
      // The middle bar ends at 100 mm; the slots are 5.5 mm wide, the bars 3 mm thick.
      assertEquals("figure-symbol", top(all, from(piece, 280, 100 + 7)), "the last bar");
      assertEquals("figure-symbol", top(all, from(piece, 280, 100 - 10)), "the first bar");
      assertEquals("figure-webbing", top(all, from(piece, 280, 98.5)), "over the middle bar");
      assertEquals("figure-webbing", top(all, from(piece, 280, 150)), "the end on the strap");
    }
    assertEquals(
        "figure-back-to-unpassed",
        found(
            "piece: 1, things: [{width: 25 mm, length: 200 mm, edge: bib, through: [{hardware: ring, back_to: slide}]}]"));
    assertEquals(
        "figure-strap-end-left-out",
        found(
            "piece: 1, things: [{width: 25 mm, length: 200 mm, cropped: 90 mm, edge: bib, through: [ring]}]"));
  }

  /** Turned half round about its place, it lies on the other side of that. */
  @Test
  void aPieceIsTurnedAboutItsPlace() {
    for (String turn : List.of("0", "180")) {
      List<Ink> all =
          drawn(
              "piece: 1, things: [{piece: 3, side: wrong, turned: all, mark: flap, turn: "
                  + turn
                  + "}]");
      Box piece = box(of(all, "figure-main").get(0));
      String below = top(all, from(piece, 392, 345 + 30));
      String above = top(all, from(piece, 392, 345 - 30));
      assertEquals(turn.equals("0") ? "figure-main-wrong" : "figure-main", below);
      assertEquals(turn.equals("0") ? "figure-main" : "figure-main-wrong", above);
    }
  }

  /** 160 mm wide and 180 mm high, open at the top. */
  @Test
  void rowsRunInsideAPlacementLine() {
    List<Ink> all =
        drawn("piece: 1, lines: [{topstitch: bellows, distance: 3 mm, rows: 2, apart: 5 mm}]");
    List<org.lapmark.geometry.Path> rows =
        of(all, "figure-topstitch-now").stream().flatMap(ink -> ink.paths.stream()).toList();
    assertEquals(2, rows.size());
    assertEquals(154, rows.get(0).bounds().width(), 1e-6);
    assertEquals(177, rows.get(0).bounds().height(), 1e-6);
    assertEquals(144, rows.get(1).bounds().width(), 1e-6);
    assertEquals(
        "figure-line-impossible", found("piece: 1, lines: [{sew: bellows, distance: 90 mm}]"));
  }

  /** The next piece lies beyond what hangs out of the one before. */
  @Test
  void whatLiesMostlyBesideItsPieceIsTold() {
    String elastic = "piece: 2, things: [{hardware: elastic, edge: left, along: 80 mm, length: ";
    assertEquals("figure-length-beside", found(elastic + "450 mm}]"));
    assertEquals("", found(elastic + "400 mm}]"));
    assertEquals("", found(elastic + "150 mm}]"));
  }

  @Test
  void aPieceLiesClearOfWhatHangsOutOfItsNeighbour() {
    List<Ink> all =
        drawn(
            "piece: 2, things: [{hardware: elastic, edge: left, along: 80 mm, length: 400 mm}]}\n"
                + "- {name: no, piece: 2");
    List<Ink> pieces = of(all, "figure-main");
    assertTrue(box(of(all, "figure-symbol").get(0)).maxX() < box(pieces.get(1)).minX());
  }

  @Test
  void aDimensionStandsClearOfTheNextPiece() {
    List<Ink> all =
        drawn(
            "piece: 2}\n- {name: no, piece: 2, lines: [{sew: left, gaps: [{from: 40 mm, to: 80 mm}]}]");
    double first = box(of(all, "figure-main").get(0)).maxX();
    for (Ink line : of(all, "figure-dimension")) {
      assertTrue(box(line).minX() > first + 10, first + " " + box(line));
    }
  }

  @Test
  void aUnitMadeOfItselfIsTold() {
    assertEquals("figure-unit-within", found("unit: loop"));
  }

  /** From 175 mm of the top to 15 mm of the right edge: 30 mm, round a corner. */
  @Test
  void theDimensionOfAGapRoundACornerIsTrue() {
    List<Ink> all = drawn("piece: 2, lines: [{sew: corner, gaps: [{from: 175 mm, to: 205 mm}]}]");
    Box piece = box(of(all, "figure-main").get(0));
    Box line = box(of(all, "figure-dimension").get(0));
    // 12 mm of allowance and 25 mm lie outside, and so far again the line stands off.
    double off = Canvas.dimensionAt(0);
    assertEquals(15 + 25 + off, line.width(), 1e-6);
    assertEquals(15 + 25 + off, line.height(), 1e-6);
    assertEquals(piece.maxX() + 13 + off, line.maxX(), 1e-6);
    List<Ink> straight =
        drawn("piece: 2, lines: [{sew: corner, gaps: [{from: 20 mm, to: 50 mm}]}]");
    assertTrue(
        of(straight, "figure-dimension").stream()
            .anyMatch(ink -> Math.abs(box(ink).width() - 30) < 1e-6));
  }

  /** No line of a dimension runs through the words below a section. */
  @Test
  void theNoteOfASectionStandsBelowItsDimensions() {
    String yaml =
        """
        section:
          layers:
          - {cloth: drill, up: right, line: [[0 mm, 0], [60 mm, 0]]}
          dimensions: [{from: 20 mm, to: 40 mm, beside: below}]
        """;
    Canvas canvas = DemoFigures.drawn(DemoFigures.picture(yaml), pattern);
    Box note = canvas.texts().get(canvas.texts().size() - 1);
    assertTrue(canvas.texts().size() > 1);
    assertTrue(
        canvas.lines().stream().noneMatch(line -> Polygons.crosses(note, line.from(), line.to())));
  }
}
