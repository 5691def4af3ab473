package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.grade.StatedSize;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.map.MapRows;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

class SheetPlannerTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();
  private static final List<String> INNER_LINES =
      List.of(
          "cutting-line",
          "stitching-line",
          "notch",
          "grainline",
          "fold-line",
          "placement-line",
          "drill-point",
          "test-square");

  private static final List<Arguments> PLANS = planAll();

  static Stream<Arguments> plans() {
    return PLANS.stream();
  }

  private static List<Arguments> planAll() {
    return SamplePatterns.all().entrySet().stream()
        .flatMap(
            entry ->
                Stream.of(Paper.A4, Paper.SHARED)
                    .map(
                        paper ->
                            Arguments.of(
                                entry.getKey() + " on " + paper.id(),
                                entry.getValue(),
                                PLANNER.plan(entry.getValue(), paper))))
        .toList();
  }

  private static Point toSheet(Tile tile, Paper paper) {
    return new Point(
        tile.window().minX() - paper.window().minX(), tile.window().minY() - paper.window().minY());
  }

  private static List<Path> paths(Drawing drawing, String role) {
    return drawing.items().stream()
        .filter(item -> item instanceof Item.Shape shape && shape.role().equals(role))
        .flatMap(item -> ((Item.Shape) item).paths().stream())
        .toList();
  }

  private static List<Item.Lettering> letterings(Drawing drawing) {
    return drawing.items().stream()
        .filter(item -> item instanceof Item.Lettering)
        .map(item -> (Item.Lettering) item)
        .toList();
  }

  /** Where ink can be: from the descent to the height of capitals. */
  private static Box box(Item.Lettering text) {
    Style style = PLANNER.styles().style(text.role());
    double width = PLANNER.lettering().width(text.text(), style);
    double below = 0.2 * style.fontSize() * 25.4 / 72;
    double above = 0.72 * style.fontSize() * 25.4 / 72;
    double start =
        switch (text.alignment()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    Point a = text.anchor();
    if (text.angle() == 0) {
      return new Box(a.x() + start, a.y() - above, a.x() + start + width, a.y() + below);
    }
    assertEquals(270, text.angle());
    return new Box(a.x() - above, a.y() - start - width, a.x() + below, a.y() - start);
  }

  private static boolean meets(Box box, Path path) {
    if (!box.overlaps(path.bounds().expanded(1e-6))) {
      return false;
    }
    return path.flattened(0.02).stream().anyMatch(box::contains)
        || !CurveClip.inside(path, box).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void tilesPutTogetherShowEveryPointOfTheCuttingLine(
      String name, GradedPattern pattern, SheetPlan plan) {
    for (PlacedPiece placed : plan.pieces()) {
      Path line = placed.piece().shape().cuttingLine().path().transformed(placed.placement());
      double length = line.length();
      for (double at = 0; at < length; at += 2.7) {
        Point point = line.atLength(at);
        double least = Double.POSITIVE_INFINITY;
        for (Tile tile : plan.tiles()) {
          if (tile.window().expanded(1).contains(point)) {
            Point onPage = point.minus(toSheet(tile, plan.paper()));
            for (Path path : paths(tile.page(), "cutting-line")) {
              least = Math.min(least, path.distance(onPage));
            }
          }
        }
        assertTrue(least < 1e-6, "piece " + placed.piece().number() + " " + point + " " + least);
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void everyCuttingLineOnATileBelongsToAPiece(String name, GradedPattern pattern, SheetPlan plan) {
    for (Tile tile : plan.tiles()) {
      Point shift = toSheet(tile, plan.paper());
      for (Path path : paths(tile.page(), "cutting-line")) {
        assertTrue(plan.paper().window().expanded(1e-6).contains(path.bounds()));
        Point middle = path.atLength(path.length() / 2).plus(shift);
        assertTrue(
            plan.pieces().stream()
                .anyMatch(
                    placed ->
                        tile.pieces().contains(placed.piece().number())
                                && distance(placed, middle) < 1e-6
                            || distance(placed, middle) < 1e-6));
      }
    }
  }

  private static double distance(PlacedPiece placed, Point point) {
    return placed
        .piece()
        .shape()
        .cuttingLine()
        .path()
        .transformed(placed.placement())
        .distance(point);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void letteringCrossesNeitherJoinsNorLinesNorOtherLettering(
      String name, GradedPattern pattern, SheetPlan plan) {
    for (Tile tile : plan.tiles()) {
      List<Item.Lettering> texts = letterings(tile.page());
      List<Path> joins = new ArrayList<>(paths(tile.page(), "trim-line"));
      joins.addAll(paths(tile.page(), "meet-line"));
      for (int i = 0; i < texts.size(); i++) {
        Box box = box(texts.get(i));
        String where = tile.code() + " " + texts.get(i);
        assertTrue(plan.paper().window().expanded(0.01).contains(box), where);
        for (Path join : joins) {
          assertFalse(meets(box, join), where);
        }
        for (String role : INNER_LINES) {
          for (Path path : paths(tile.page(), role)) {
            boolean ofMark = texts.get(i).role().equals("join-number");
            assertFalse(!ofMark && meets(box, path), where + " on " + role);
          }
        }
        for (int k = i + 1; k < texts.size(); k++) {
          assertFalse(box.overlaps(box(texts.get(k))), where + " and " + texts.get(k));
        }
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void everyPieceHasItsLabelOnItOrBesideIt(String name, GradedPattern pattern, SheetPlan plan) {
    for (PlacedPiece placed : plan.pieces()) {
      String title =
          PLANNER
              .wording()
              .text(
                  "piece.title",
                  Map.of("number", "" + placed.piece().number(), "name", placed.piece().name()));
      PieceArt art = PieceArt.of(placed);
      int found = 0;
      for (Tile tile : plan.tiles()) {
        for (Item.Lettering text : letterings(tile.page())) {
          if (text.text().startsWith(title)
              && !text.text().startsWith(title + " · " + pattern.variant().size())) {
            found++;
            assertTrue(tile.pieces().contains(placed.piece().number()));
            Point middle = box(text).centre().plus(toSheet(tile, plan.paper()));
            boolean inside = encloses(art, middle);
            boolean onFreePaper =
                plan.pieces().stream().noneMatch(other -> encloses(PieceArt.of(other), middle));
            assertTrue(inside || onFreePaper, title);
            assertTrue(PLANNER.styles().style(text.role()).fontSize() >= 7);
          }
        }
      }
      assertEquals(1, found, title);
    }
  }

  private static boolean encloses(PieceArt art, Point point) {
    return art.strokes().get(art.strokes().size() - 1).path().encloses(point);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void halvesOfAMarkMeetAndCarryTheSameNumber(String name, GradedPattern pattern, SheetPlan plan) {
    // By the mark's middle on the sheet: which tiles draw a half, and which number is in it.
    Map<String, List<String>> halves = new TreeMap<>();
    Map<String, List<Point>> bulges = new TreeMap<>();
    for (Tile tile : plan.tiles()) {
      Point shift = toSheet(tile, plan.paper());
      for (Path path : paths(tile.page(), "join-mark")) {
        Point centre = path.start().towards(path.end(), 0.5).plus(shift);
        String key = Math.round(centre.x() * 1e6) + " " + Math.round(centre.y() * 1e6);
        Box half = path.bounds();
        List<String> numbers =
            letterings(tile.page()).stream()
                .filter(text -> text.role().equals("join-number"))
                .filter(text -> half.contains(box(text).centre()))
                .map(Item.Lettering::text)
                .toList();
        assertEquals(1, numbers.size(), tile.code());
        halves.computeIfAbsent(key, k -> new ArrayList<>()).add(numbers.get(0));
        bulges
            .computeIfAbsent(key, k -> new ArrayList<>())
            .add(path.bounds().centre().plus(shift).minus(centre));
      }
    }
    halves.forEach(
        (key, numbers) -> {
          assertEquals(2, numbers.size(), key);
          assertEquals(numbers.get(0), numbers.get(1));
          Point apart = bulges.get(key).get(0).plus(bulges.get(key).get(1));
          assertEquals(0, apart.distance(new Point(0, 0)), 1e-9);
          assertTrue(bulges.get(key).get(0).distance(new Point(0, 0)) > 2);
        });
    // A number belongs to one pair of tiles alone.
    Map<String, List<String>> tilesOf = new LinkedHashMap<>();
    for (Tile tile : plan.tiles()) {
      letterings(tile.page()).stream()
          .filter(text -> text.role().equals("join-number"))
          .map(Item.Lettering::text)
          .distinct()
          .forEach(
              number -> tilesOf.computeIfAbsent(number, k -> new ArrayList<>()).add(tile.code()));
    }
    tilesOf.values().forEach(codes -> assertEquals(2, codes.size(), codes.toString()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void noTileIsEmptyAndEachNamesPatternSizeAndEdition(
      String name, GradedPattern pattern, SheetPlan plan) {
    for (Tile tile : plan.tiles()) {
      boolean first = tile == plan.tiles().get(0);
      assertTrue(first || !tile.pieces().isEmpty(), tile.code());
      assertEquals(first ? 1 : 0, paths(tile.page(), "test-square").size());
      assertTrue(
          letterings(tile.page()).stream()
              .anyMatch(
                  text ->
                      text.text()
                          .startsWith(
                              "Towpath handlebar bag · Size "
                                  + pattern.variant().size()
                                  + " · Edition 1")));
      assertTrue(letterings(tile.page()).stream().anyMatch(t -> t.text().equals(tile.code())));
      assertEquals(Cell.code(tile.row(), tile.column()), tile.code());
      assertTrue(tile.column() < plan.columns() && tile.row() < plan.rows());
    }
    assertEquals(plan.tiles().size(), plan.tiles().stream().map(Tile::code).distinct().count());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void theMapShowsEveryTileAndPiece(String name, GradedPattern pattern, SheetPlan plan) {
    Map<String, Integer> pages = new LinkedHashMap<>();
    plan.tiles().forEach(tile -> pages.put(tile.code(), 31 + pages.size()));
    Drawing map = PLANNER.pageMap(plan, pages, 165, 200);
    assertTrue(map.width() <= 165 + 1e-9 && map.height() <= 200 + 1e-9);
    List<String> texts = letterings(map).stream().map(Item.Lettering::text).toList();
    pages.forEach(
        (code, page) -> {
          assertTrue(texts.contains(code));
          assertTrue(texts.contains("p. " + page));
        });
    plan.pieces().forEach(piece -> assertTrue(texts.contains("" + piece.piece().number())));
    Box sheet = new Box(0, 0, map.width(), map.height());
    for (Item item : map.items()) {
      if (item instanceof Item.Shape shape) {
        shape.paths().forEach(path -> assertTrue(sheet.expanded(1e-6).contains(path.bounds())));
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void tileCodesKeepOffOutlines(String name, GradedPattern pattern, SheetPlan plan) {
    Drawing map = PLANNER.pageMap(plan, Map.of(), 165, 200);
    List<Point> outlines = new ArrayList<>();
    for (Item item : map.items()) {
      if (item instanceof Item.Shape shape && shape.role().equals("map-piece")) {
        for (Path path : shape.paths()) {
          for (double at = 0; at < path.length(); at += 0.2) {
            outlines.add(path.atLength(at));
          }
        }
      }
    }
    List<Box> squares = paths(map, "map-square").stream().map(Path::bounds).toList();
    for (Item.Lettering code : letterings(map)) {
      if (!code.role().equals("map-number")) {
        double width = PLANNER.lettering().width(code.text(), PLANNER.styles().style(code.role()));
        Box box = Box.at(code.anchor().x(), code.anchor().y() - 1.5, width, 1.5);
        assertTrue(outlines.stream().noneMatch(box::contains), name + ": " + code.text());
        assertTrue(squares.stream().noneMatch(box::overlaps), name + ": " + code.text());
      }
    }
  }

  /**
   * Three sheets that aren't joined lie below each other as arranged: a map as narrow as a page.
   */
  @Test
  void sheetsThatAreNotJoinedStandBesideEachOtherOnTheMap() {
    SheetPlan plan = PLANNER.plan(RealPatterns.all().get("slipway-rain-hat 54"), Paper.A4);
    Box sheet = plan.tiles().stream().map(Tile::window).reduce(Box::union).orElseThrow();
    Drawing map = PLANNER.pageMap(plan, Map.of(), 170, 125);
    double tile =
        paths(map, "map-tile").stream()
            .filter(path -> path.start().x() == path.end().x())
            .mapToDouble(Path::length)
            .max()
            .orElseThrow();
    double stacked = plan.tiles().get(0).window().height() * 125 / sheet.height();
    assertTrue(tile > 1.8 * stacked, tile + " mm");
    assertTrue(map.width() <= 170 + 1e-9 && map.height() <= 125 + 1e-9);
    // Pieces lie on their tiles still.
    SheetPlan rows = MapRows.of(plan, 170, 125);
    for (int i = 0; i < plan.pieces().size(); i++) {
      Box before = PieceArt.of(plan.pieces().get(i)).bounds();
      Box after = PieceArt.of(rows.pieces().get(i)).bounds();
      for (int k = 0; k < plan.tiles().size(); k++) {
        if (plan.tiles().get(k).core().overlaps(before)) {
          Point shown = before.centre().minus(plan.tiles().get(k).core().centre());
          Point moved = after.centre().minus(rows.tiles().get(k).core().centre());
          assertEquals(0, shown.distance(moved), 1e-6);
        }
      }
    }
  }

  @Test
  void testSquareOnTheFirstTileIsTenCentimetres() {
    SheetPlan plan = PLANNER.plan(SamplePatterns.all().get("bag M"), Paper.A4);
    Box box = paths(plan.tiles().get(0).page(), "test-square").get(0).bounds();
    assertEquals(100, box.width(), 1e-9);
    assertEquals(100, box.height(), 1e-9);
  }

  @Test
  void aTileSaysInWordsWhatIsOnIt() {
    SheetPlan plan = PLANNER.plan(SamplePatterns.all().get("thin"), Paper.A4);
    assertEquals(
        "Tile B1 of size One size: middle part of piece 1 (Facing strip). Joins A1 above and C1"
            + " below.",
        plan.tiles().get(1).alternative());
    SheetPlan bag = PLANNER.plan(SamplePatterns.all().get("bag M"), Paper.A4);
    assertEquals(
        "Tile A1 of size M: piece 5 (End interfacing), with a drill point and a test square of 10"
            + " cm. Stands alone.",
        bag.tiles().get(0).alternative());
  }

  @Test
  void aTileSaysWhichPartsOfItsPiecesItShows() {
    SheetPlan plan =
        PLANNER.plan(
            SamplePatterns.pattern("M", List.of(SamplePatterns.rectangle(1, "Back", 450, 500))),
            Paper.A4);
    Map<String, String> parts = new TreeMap<>();
    plan.tiles().forEach(tile -> parts.put(tile.code(), tile.alternative()));
    List<String> all = List.copyOf(parts.values());
    for (String part :
        List.of("upper left part", "upper right part", "lower left part", "lower right part")) {
      assertEquals(
          1, all.stream().filter(text -> text.contains(part + " of piece 1 (Back)")).count(), part);
    }
  }

  /** A part is said to lie where its points lie. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void partsReachWhereTheirWordsSay(String name, GradedPattern pattern, SheetPlan plan) {
    for (Tile tile : plan.tiles()) {
      for (PlacedPiece placed : plan.pieces()) {
        if (!tile.pieces().contains(placed.piece().number())) {
          continue;
        }
        Box all = PieceArt.of(placed).bounds();
        List<Point> shown =
            placed
                .piece()
                .shape()
                .cuttingLine()
                .path()
                .transformed(placed.placement())
                .flattened(0.05)
                .stream()
                .filter(tile.core()::contains)
                .toList();
        boolean top = shown.stream().anyMatch(point -> point.y() < all.minY() + 0.1);
        boolean bottom = shown.stream().anyMatch(point -> point.y() > all.maxY() - 0.1);
        String words =
            tile.alternative()
                .replaceAll(".*?([a-z ,]*)piece " + placed.piece().number() + " \\(.*", "$1");
        if (top && !bottom && all.height() > 600) {
          assertTrue(words.contains("upper"), tile.alternative());
        }
        if (bottom && !top && all.height() > 600) {
          assertTrue(words.contains("lower"), tile.alternative());
        }
      }
    }
  }

  @Test
  void aPageMoreForEveryPageThatRuledRectanglesWouldTake() {
    List<Piece> printed = List.of(SamplePatterns.rectangle(1, "Back", 170, 250));
    List<Piece> ruled = new ArrayList<>(printed);
    ruled.add(ruled(2, "Gusset", 60, 100));
    ruled.add(ruled(3, "Lining", 150, 240));
    ruled.add(ruled(4, "Band", 40, 700));
    SheetPlan plan = PLANNER.plan(SamplePatterns.pattern("M", ruled), Paper.A4);
    SheetPlan without = PLANNER.plan(SamplePatterns.pattern("M", printed), Paper.A4);
    assertEquals(0, without.quality().savedPages());
    assertEquals(without.tiles().size(), plan.tiles().size());
    // The gusset goes beside the square, the lining takes a page, the band three.
    assertEquals(4, plan.quality().savedPages());
  }

  private static Piece ruled(int number, String name, double width, double height) {
    Piece piece = SamplePatterns.rectangle(number, name, width, height);
    return new Piece(
        number,
        name,
        piece.shape(),
        piece.cuts(),
        Optional.of(new StatedSize(width, height, false)));
  }

  /** Every visible stretch of a cutting line is drawn once on a tile. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void noStretchOfALineIsDrawnTwiceOnATile(String name, GradedPattern pattern, SheetPlan plan) {
    for (Tile tile : plan.tiles()) {
      Point shift = toSheet(tile, plan.paper());
      List<Path> drawn = paths(tile.page(), "cutting-line");
      double length = drawn.stream().mapToDouble(Path::length).sum();
      Box shown = drawn.stream().map(Path::bounds).reduce(Box::union).orElse(new Box(0, 0, 0, 0));
      double expected = 0;
      for (PlacedPiece placed : plan.pieces()) {
        Path line = placed.piece().shape().cuttingLine().path().transformed(placed.placement());
        for (Path part : CurveClip.inside(line, shown.moved(shift))) {
          expected += part.length();
        }
      }
      assertTrue(length <= expected + 0.01, tile.code() + " " + length + " of " + expected);
    }
  }

  @Test
  void smallPiecesNeedNoJoining() {
    for (String size : List.of("S", "M")) {
      SheetPlan plan = PLANNER.plan(SamplePatterns.all().get("bag " + size), Paper.A4);
      assertEquals(2, plan.tiles().size());
      assertTrue(plan.tiles().stream().allMatch(t -> paths(t.page(), "trim-line").isEmpty()));
    }
  }

  @Test
  void aPatternWithoutPaperPiecesHasNoTiles() {
    assertTrue(PLANNER.plan(SamplePatterns.pattern("M", List.of()), Paper.A4).tiles().isEmpty());
  }

  @Test
  void samePatternIsPlannedAlike() {
    GradedPattern pattern = SamplePatterns.all().get("large and small");
    assertEquals(PLANNER.plan(pattern, Paper.A4), PLANNER.plan(pattern, Paper.A4));
  }

  @Test
  void codesGoOnAfterZ() {
    assertEquals("A1", Cell.code(0, 0));
    assertEquals("Z10", Cell.code(25, 9));
    assertEquals("AA1", Cell.code(26, 0));
    assertEquals("BA3", Cell.code(52, 2));
  }
}
