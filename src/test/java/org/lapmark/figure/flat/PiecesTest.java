package org.lapmark.figure.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

class PiecesTest {
  private static final PatternSource SOURCE = DemoFigures.source();
  private static final EvaluatedPattern PATTERN = DemoFigures.pattern(SOURCE, "M");

  /** Materials of one texture, one of them with a long name, and points marked on a panel. */
  private static final String FOLDER =
      """
      format: 1
      title: Tea cosy
      studio: Wren & Teasel
      language: en-GB
      edition: {name: "1", date: 2026-11-27}
      materials:
        shell: {name: "cotton twill, 240 g/m²", usable_width: 140 cm, thickness: 0.3 mm}
        wadding: {name: "cotton wadding, 5 mm", usable_width: 90 cm, thickness: 5 mm}
        board: {name: a stiff board as sold for brims of hats and bases of bags, usable_width: 50 cm, thickness: 1 mm}
      panels:
        side:
          rectangle: {width: w, height: 120 mm}
          drills: {tie: {edge: top, inset: 40 mm, count: 2, from: 20 mm, to: 140 mm}}
          matches: {ear: {edge: right, at: 0.5}}
      pieces:
        - {number: 1, name: Side, panel: side, allowance: 10 mm, cut: [{material: shell, count: 2}, {material: wadding, count: 1}]}
      """;

  @TempDir private Path folder;

  private static Canvas drawn(EvaluatedPattern pattern, String yaml) {
    return DemoFigures.drawn(DemoFigures.picture(yaml), pattern);
  }

  private EvaluatedPattern small() throws IOException {
    Files.writeString(folder.resolve("pattern.yaml"), FOLDER);
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,S\nw,mm,200\n");
    Files.writeString(
        Files.createDirectories(folder.resolve("steps")).resolve("010-cut.md"),
        "---\nid: cut\ntitle: Cut\nstage: Cutting\n---\nCut out.\n");
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    assertEquals("", DemoFigures.said(findings));
    return DemoFigures.pattern(source, "S");
  }

  private static Box thing(String thing) {
    String yaml = "pieces:\n- {piece: 2, things: [" + thing + "]}\n";
    List<Point> polygon = drawn(PATTERN, yaml).covered().get(1);
    Box box = Box.at(polygon.get(0).x(), polygon.get(0).y(), 0, 0);
    for (Point point : polygon) {
      box = box.union(Box.at(point.x(), point.y(), 0, 0));
    }
    return box;
  }

  private static void same(Box expected, Box box) {
    assertEquals(expected.minX(), box.minX(), 1e-6);
    assertEquals(expected.minY(), box.minY(), 1e-6);
    assertEquals(expected.maxX(), box.maxX(), 1e-6);
    assertEquals(expected.maxY(), box.maxY(), 1e-6);
  }

  /** Piece 3 is a rectangle, and lies where one of its size is placed. */
  @ParameterizedTest
  @ValueSource(strings = {"top", "right", "bottom", "left"})
  void aPieceIsPlacedAsARectangleIs(String edge) {
    String place = "edge: " + edge + ", along: 1/4, inside: 30 mm";
    String wide = "bag_width + 2 * allowance";
    String high = "rear_strip_depth + 2 * allowance";
    String strip = "{width: %s, length: %s, " + place + "}";
    same(thing(String.format(strip, wide, high)), thing("{piece: 3, " + place + "}"));
    // Turned about its place as well.
    String turned = "{width: %s, length: %s, turn: 90, " + place + "}";
    same(thing(String.format(turned, wide, high)), thing("{piece: 3, turn: 90, " + place + "}"));
  }

  /** Seen from its other side a piece is mirrored, but where its own coordinates place it. */
  @Test
  void aPieceThatIsTurnedOverIsMirrored() {
    String end = "{piece: 1, edge: top, along: 1/2, inside: 10 mm";
    String yaml = "pieces:\n- {piece: 2, things: [" + end + "%s}]}\n";
    List<Point> face = drawn(PATTERN, String.format(yaml, "")).covered().get(1);
    List<Point> back = drawn(PATTERN, String.format(yaml, ", side: wrong")).covered().get(1);
    double middle = thing(end + "}").centre().x();
    for (Point point : face) {
      Point image = new Point(2 * middle - point.x(), point.y());
      assertTrue(back.stream().anyMatch(one -> one.distance(image) < 1e-6), point.toString());
    }
  }

  private static List<Item.Shape> shapes(List<Item> items, String role) {
    List<Item.Shape> shapes = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        shapes.addAll(shapes(group.items(), role));
      } else if (item instanceof Item.Shape shape && shape.role().equals(role)) {
        shapes.add(shape);
      }
    }
    return shapes;
  }

  @Test
  void aTurnedAllowanceIsSeenOnTheWrongSideAlone() {
    String turned = "pieces:\n- {piece: 3, side: %s, turned: [bottom]}\n";
    Canvas wrong = drawn(PATTERN, String.format(turned, "wrong"));
    List<Item.Shape> flaps = shapes(wrong.items(), "figure-main");
    assertEquals(1, flaps.size());
    Box flap = flaps.get(0).paths().get(0).bounds();
    assertEquals(10, flap.height(), 1e-6);
    assertEquals(wrong.bounds().maxY(), flap.maxY(), 1e-6);
    assertEquals(wrong.bounds().width(), flap.width(), 1e-6);
    Canvas right = drawn(PATTERN, String.format(turned, "right"));
    assertEquals(1, shapes(right.items(), "figure-main").size());
    assertEquals(wrong.bounds().height(), right.bounds().height(), 1e-6);
    Box whole = shapes(right.items(), "figure-main").get(0).paths().get(0).bounds();
    assertEquals(right.bounds().height(), whole.height(), 1e-6);
  }

  @Test
  void anAllowanceTurnedAllRoundIsARing() {
    Canvas canvas = drawn(PATTERN, "pieces:\n- {piece: 1, side: wrong, turned: [all]}\n");
    List<Item.Shape> flaps = shapes(canvas.items(), "figure-main");
    assertEquals(1, flaps.size());
    Box flap = flaps.get(0).paths().get(0).bounds();
    assertEquals(canvas.bounds().width(), flap.width(), 0.1);
    assertEquals(canvas.bounds().height(), flap.height(), 0.1);
    assertTrue(
        Math.abs(flaps.get(0).paths().get(0).signedArea()) < flap.width() * flap.height() / 2);
  }

  @Test
  void marksHaveTheirDrillPointsAndMatchPoints() throws IOException {
    String shown = "pieces:\n- {piece: 1, show: [%s]}\n";
    EvaluatedPattern pattern = small();
    List<Item.Shape> points =
        shapes(drawn(pattern, String.format(shown, "marks")).items(), "figure-mark");
    assertEquals(3, points.size());
    assertEquals(3, points.get(0).paths().size());
    double apart =
        points
            .get(0)
            .paths()
            .get(0)
            .bounds()
            .centre()
            .distance(points.get(1).paths().get(0).bounds().centre());
    assertEquals(120, apart, 1e-6);
    assertEquals(
        0, shapes(drawn(pattern, String.format(shown, "grain")).items(), "figure-mark").size());
  }

  @Test
  void anEmphasisedEdgeEndsWhereThePieceIsCropped() {
    Canvas canvas =
        drawn(PATTERN, "pieces:\n- {piece: 2, edge: top, cropped: 80 mm, lines: [{edge: left}]}\n");
    Box edge = shapes(canvas.items(), "figure-edge-now").get(0).paths().get(0).bounds();
    assertEquals(90, edge.height(), 0.3);
  }

  private static List<String> words(List<Item> items) {
    List<String> words = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        words.addAll(words(group.items()));
      } else if (item instanceof Item.Lettering lettering) {
        words.add(lettering.text());
      }
    }
    return words;
  }

  /** One entry a texture, each material by its own name, broken into lines that keep apart. */
  @Test
  void theKeyCallsMaterialsByTheirNames() throws IOException {
    Drawing key = DemoFigures.drawer().key(small());
    List<String> words = words(key.items());
    assertEquals(
        List.of("main (cotton twill), right side", "main (cotton twill), wrong side"),
        words.subList(0, 2));
    assertEquals(
        "cotton wadding, a stiff board as sold for brims of hats and bases of bags",
        String.join(" ", words.subList(2, words.size())));
    assertTrue(words.size() > 3, words.toString());
  }
}
