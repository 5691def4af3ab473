package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

class BlankTilesTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();
  private static final Piece CURTAIN = SamplePatterns.rectangle(1, "Curtain", 907, 1308);

  private static GradedPattern pattern(Piece... pieces) {
    return SamplePatterns.pattern("M", List.of(pieces));
  }

  private static Set<String> blank(SheetPlan plan) {
    Set<String> codes = new TreeSet<>();
    plan.tiles().stream().filter(Tile::blank).forEach(tile -> codes.add(tile.code()));
    return codes;
  }

  /** Tiles that no line of a piece touches, told from the sheet itself. */
  private static Set<String> withoutLine(SheetPlan plan) {
    Set<String> codes = new TreeSet<>();
    for (Tile tile : plan.tiles()) {
      boolean line = false;
      for (PlacedPiece placed : plan.pieces()) {
        for (PieceArt.Stroke stroke : PieceArt.of(placed).strokes()) {
          line |= !CurveClip.inside(stroke.path(), tile.core()).isEmpty();
        }
      }
      if (!line && tile != plan.tiles().get(0)) {
        codes.add(tile.code());
      }
    }
    return codes;
  }

  @Test
  void pagesThatNoLineRunsOverAreToldFromTheOthers() {
    SheetPlan plan = PLANNER.plan(pattern(CURTAIN), Paper.A4);
    assertTrue(blank(plan).size() >= 8, blank(plan).toString());
    assertEquals(withoutLine(plan), blank(plan));
    assertEquals(blank(plan).size(), plan.quality().blankPages());
    for (Tile tile : plan.tiles()) {
      List<String> words = words(tile);
      assertEquals(
          tile.blank(), words.stream().anyMatch(text -> text.startsWith("No line of the pattern")));
      assertEquals(tile.blank(), tile.alternative().contains("no line at all"));
      for (String code : tile.joined()) {
        boolean said = words.stream().anyMatch(text -> text.contains(code + " (has no line)"));
        assertEquals(blank(plan).contains(code), said, tile.code() + " to " + code);
      }
    }
    // What everybody needs to read is on a page that everybody prints.
    Tile named =
        plan.tiles().stream()
            .filter(tile -> words(tile).stream().anyMatch(text -> text.startsWith("Cut 1 in")))
            .findFirst()
            .orElseThrow();
    assertFalse(named.blank());
  }

  private static List<String> words(Tile tile) {
    List<String> words = new ArrayList<>();
    for (Item item : tile.page().items()) {
      if (item instanceof Item.Lettering text) {
        words.add(text.text());
      }
    }
    return words;
  }

  @Test
  void whatIsLeftOutIsMissedByNothing() {
    SheetPlan all = PLANNER.plan(pattern(CURTAIN), Paper.A4);
    SheetPlan plan = PLANNER.withoutBlankTiles().plan(pattern(CURTAIN), Paper.A4);
    assertEquals(all.pieces(), plan.pieces());
    assertEquals(all.arranged(), plan.arranged());
    int blank = blank(all).size();
    assertEquals(all.tiles().size() - blank, plan.tiles().size());
    assertEquals(plan.tiles().size(), plan.quality().pages());
    assertEquals(blank, plan.quality().leftOutPages());
    Set<String> codes = new LinkedHashSet<>();
    plan.tiles().forEach(tile -> codes.add(tile.code()));
    Map<String, List<String>> joined = new LinkedHashMap<>();
    int sides = 0;
    for (Tile tile : plan.tiles()) {
      assertFalse(tile.blank());
      assertTrue(codes.containsAll(tile.joined()), tile.code() + tile.joined());
      joined.put(tile.code(), tile.joined());
      sides += tile.joined().size();
      for (String text : words(tile)) {
        assertFalse(text.contains("no line"), text);
        for (String code : blank(all)) {
          assertFalse(text.matches(".*\\b" + code + "\\b.*"), tile.code() + ": " + text);
        }
      }
    }
    assertEquals(sides, 2 * plan.quality().joins());
    assertEquals(codes, reached(plan.tiles().get(0).code(), joined));
    assertHalvesMeet(plan);
    assertChecksRunThrough(plan);
    // The map has no such page either.
    String map = PLANNER.pageMap(plan, Map.of(), 170, 120).toString();
    blank(all).forEach(code -> assertFalse(map.contains("text=" + code + ","), code));
  }

  private static Set<String> reached(String start, Map<String, List<String>> joined) {
    Set<String> reached = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      String code = open.poll();
      if (reached.add(code)) {
        open.addAll(joined.get(code));
      }
    }
    // In the order of the tiles, to be compared.
    Set<String> sorted = new LinkedHashSet<>(joined.keySet());
    sorted.retainAll(reached);
    return sorted;
  }

  /** Every half mark of a number has another half on one other page, at the same place. */
  private static void assertHalvesMeet(SheetPlan plan) {
    Map<String, Integer> halves = new LinkedHashMap<>();
    for (Tile tile : plan.tiles()) {
      for (Path path : paths(tile, plan, "join-mark")) {
        Point middle = path.start().towards(path.end(), 0.5);
        String place = Math.round(middle.x() * 100) + " " + Math.round(middle.y() * 100);
        halves.merge(place, 1, Integer::sum);
      }
    }
    assertTrue(halves.size() >= plan.quality().joins());
    halves.forEach((place, count) -> assertEquals(2, count, place));
  }

  /** A check line is drawn wherever it runs, from end to end. */
  private static void assertChecksRunThrough(SheetPlan plan) {
    long ends = 0;
    for (Tile tile : plan.tiles()) {
      ends += paths(tile, plan, "check-end").size();
      for (Path dash : paths(tile, plan, "check-line")) {
        assertTrue(tile.window().expanded(1e-6).contains(dash.bounds()));
      }
    }
    assertTrue(ends > 0 && ends % 2 == 0, ends + " ends of check lines");
  }

  private static List<Path> paths(Tile tile, SheetPlan plan, String role) {
    Point shift =
        new Point(tile.window().minX(), tile.window().minY())
            .minus(new Point(plan.paper().window().minX(), plan.paper().window().minY()));
    var map = org.lapmark.geometry.Affine.translation(shift.x(), shift.y());
    List<Path> paths = new ArrayList<>();
    for (Item item : tile.page().items()) {
      if (item instanceof Item.Shape shape && shape.role().equals(role)) {
        shape.paths().forEach(path -> paths.add(path.transformed(map)));
      }
    }
    return paths;
  }

  /** A mark in the middle of a piece is held to its edge by pages without a line. */
  @Test
  void aPageThatHoldsOthersTogetherIsNeeded() {
    Panel panel = CURTAIN.shape().panel();
    Mark point = new PointMark.DrillPoint("ring", new Point(453, 654));
    Piece marked =
        new Piece(
            1,
            "Curtain",
            new PieceShape(
                new Panel(panel.name(), panel.edges(), Map.of(), List.of(point)),
                CURTAIN.shape().allowances(),
                CURTAIN.shape().cuttingLine(),
                List.of()),
            CURTAIN.cuts(),
            CURTAIN.statedSize());
    SheetPlan all = PLANNER.plan(pattern(marked), Paper.A4);
    Set<String> held = new TreeSet<>(withoutLine(all));
    held.removeAll(blank(all));
    assertFalse(held.isEmpty());
    assertTrue(blank(all).size() >= 6, blank(all).toString());
    SheetPlan plan = PLANNER.withoutBlankTiles().plan(pattern(marked), Paper.A4);
    Map<String, List<String>> joined = new LinkedHashMap<>();
    plan.tiles().forEach(tile -> joined.put(tile.code(), tile.joined()));
    assertEquals(joined.keySet(), reached(plan.tiles().get(0).code(), joined));
  }

  @Test
  void smallPiecesHaveNoSuchPage() {
    SheetPlan plan = PLANNER.plan(GeneratedPatterns.pattern(9), Paper.A4);
    assertEquals(Set.of(), blank(plan));
    assertEquals(
        plan.tiles(),
        PLANNER.withoutBlankTiles().plan(GeneratedPatterns.pattern(9), Paper.A4).tiles());
  }
}
