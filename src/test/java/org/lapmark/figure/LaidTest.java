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
}
