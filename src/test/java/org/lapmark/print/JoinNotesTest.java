package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.source.JoinStyle;

/**
 * Both pages of every join name the other one beside the line on which they meet, and say how many
 * cutting lines cross it.
 */
class JoinNotesTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();

  /** How far from its line a join's words stand, in millimetres, with their own height. */
  private static final double BESIDE = 8;

  @Test
  void everyJoinOfDemosAndShelfIsLabelledOnBothPages() {
    assertLabelled(RealPatterns.all(), Paper.A4);
  }

  /** These are fuller of lines and joins than any other. */
  @ParameterizedTest
  @CsvSource({"a4, 19, 35, 38", "letter, 14, 34, 48"})
  void everyJoinOfGeneratedPatternsIsLabelled(String paper, int first, int second, int third) {
    Map<String, GradedPattern> patterns = new LinkedHashMap<>();
    for (int i : new int[] {first, second, third}) {
      patterns.put("generated " + i, GeneratedPatterns.pattern(i));
    }
    assertLabelled(patterns, paper.equals("a4") ? Paper.A4 : Paper.LETTER);
  }

  private static void assertLabelled(Map<String, GradedPattern> patterns, Paper paper) {
    List<String> missing = new ArrayList<>();
    int joins = 0;
    for (Map.Entry<String, GradedPattern> each : patterns.entrySet()) {
      SheetPlan plan = PLANNER.plan(each.getValue(), paper);
      joins += plan.tiles().stream().mapToInt(tile -> tile.joined().size()).sum();
      missing(plan).forEach(join -> missing.add(each.getKey() + ": " + join));
    }
    assertTrue(joins > 200, joins + " sides of joins");
    assertEquals(List.of(), missing);
  }

  @ParameterizedTest
  @EnumSource(JoinStyle.class)
  void joinsAreLabelledHoweverPagesAreJoined(JoinStyle style) {
    GradedPattern pattern =
        SamplePatterns.pattern("M", GeneratedPatterns.pattern(35).pieces(), style);
    assertEquals(List.of(), missing(PLANNER.plan(pattern, Paper.A4)));
  }

  @Test
  void aMissingLabelIsFound() {
    SheetPlan plan = PLANNER.plan(GeneratedPatterns.pattern(9), Paper.A4);
    List<Tile> tiles = new ArrayList<>(plan.tiles());
    Tile tile = tiles.stream().filter(each -> !each.joined().isEmpty()).findFirst().orElseThrow();
    List<Item> items =
        tile.page().items().stream().filter(item -> !names(item, tile.joined().get(0))).toList();
    tiles.replaceAll(each -> each == tile ? withPage(tile, items) : each);
    SheetPlan without =
        new SheetPlan(plan.paper(), plan.columns(), plan.rows(), plan.pieces(), tiles);
    assertTrue(missing(without).contains(tile.code() + " to " + tile.joined().get(0)));
  }

  private static Tile withPage(Tile tile, List<Item> items) {
    return new Tile(
        tile.code(),
        tile.column(),
        tile.row(),
        tile.window(),
        new org.lapmark.drawing.Drawing(tile.page().width(), tile.page().height(), items),
        tile.pieces(),
        tile.alternative(),
        tile.core(),
        tile.joined(),
        tile.blank());
  }

  private static boolean names(Item item, String code) {
    return item instanceof Item.Lettering words
        && words.role().equals("join-note")
        && Pattern.compile("\\b" + code + "\\b").matcher(words.text()).find();
  }

  /** The joins whose label is missing on a page, as that page's code and the other one's. */
  private static List<String> missing(SheetPlan plan) {
    Map<String, Tile> tiles = new LinkedHashMap<>();
    plan.tiles().forEach(tile -> tiles.put(tile.code(), tile));
    List<String> missing = new ArrayList<>();
    for (Tile tile : plan.tiles()) {
      for (String code : tile.joined()) {
        Box line = shared(tile.core(), tiles.get(code).core());
        Point toSheet =
            new Point(tile.window().minX(), tile.window().minY())
                .minus(new Point(plan.paper().window().minX(), plan.paper().window().minY()));
        boolean said =
            tile.page().items().stream()
                .anyMatch(item -> names(item, code) && isBeside(item, line, toSheet));
        if (!said) {
          missing.add(tile.code() + " to " + code);
        }
        int lines = crossing(plan, line);
        boolean counted =
            tile.page().items().stream()
                .anyMatch(item -> counts(item, lines) && isBeside(item, line, toSheet));
        if (lines > 0 && !counted) {
          missing.add(tile.code() + " to " + code + ": " + lines + " lines");
        }
      }
    }
    return missing;
  }

  private static boolean isBeside(Item item, Box line, Point toSheet) {
    return item instanceof Item.Lettering words
        && line.expanded(BESIDE).contains(words.anchor().plus(toSheet));
  }

  private static boolean counts(Item item, int lines) {
    return item instanceof Item.Lettering words
        && words.role().equals("join-note")
        && words.text().matches("(.* · )?" + lines + " cutting lines? cross(es)?");
  }

  /** How many cutting lines run from one side of a join to the other, and not past its ends. */
  private static int crossing(SheetPlan plan, Box line) {
    boolean upright = line.width() < line.height();
    int count = 0;
    for (PlacedPiece placed : plan.pieces()) {
      PieceArt art = PieceArt.of(placed);
      if (!art.bounds().overlaps(line.expanded(0.1))) {
        continue;
      }
      for (PieceArt.Stroke stroke : art.strokes()) {
        if (stroke.role().equals("cutting-line")) {
          List<Point> points = stroke.path().flattened(0.01);
          for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double before = upright ? a.x() - line.minX() : a.y() - line.minY();
            double after = upright ? b.x() - line.minX() : b.y() - line.minY();
            if ((before <= 0) != (after <= 0)) {
              Point at = a.towards(b, before / (before - after));
              count += line.expanded(1e-6).contains(at) ? 1 : 0;
            }
          }
        }
      }
    }
    return count;
  }

  /** What two neighbours have in common: the line on which they meet. */
  private static Box shared(Box a, Box b) {
    double left = Math.max(a.minX(), b.minX());
    double top = Math.max(a.minY(), b.minY());
    return new Box(
        left,
        top,
        Math.max(left, Math.min(a.maxX(), b.maxX())),
        Math.max(top, Math.min(a.maxY(), b.maxY())));
  }
}
