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
import org.lapmark.source.JoinStyle;

/** Both pages of every join name the other one beside the line on which they meet. */
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
    assertEquals(List.of(tile.code() + " to " + tile.joined().get(0)), missing(without));
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
                .anyMatch(
                    item ->
                        names(item, code)
                            && line.expanded(BESIDE)
                                .contains(((Item.Lettering) item).anchor().plus(toSheet)));
        if (!said) {
          missing.add(tile.code() + " to " + code);
        }
      }
    }
    return missing;
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
