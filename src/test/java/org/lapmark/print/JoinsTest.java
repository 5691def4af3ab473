package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.packing.Search;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.join.JoinMarks;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.sheet.CheckLine;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.source.JoinStyle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class JoinsTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();

  private static final Map<JoinStyle, SheetPlan> PLANS = plans();

  private static Map<JoinStyle, SheetPlan> plans() {
    Map<JoinStyle, SheetPlan> plans = new EnumMap<>(JoinStyle.class);
    for (JoinStyle joins : JoinStyle.values()) {
      plans.put(
          joins,
          PLANNER.plan(
              SamplePatterns.pattern("M", GeneratedPatterns.pattern(9).pieces(), joins), Paper.A4));
    }
    return plans;
  }

  private static SheetPlan plan(JoinStyle joins) {
    return PLANS.get(joins);
  }

  private static Point toSheet(Tile tile) {
    Point corner = new Point(Paper.A4.window().minX(), Paper.A4.window().minY());
    return new Point(tile.window().minX(), tile.window().minY()).minus(corner);
  }

  /** The paths of a role on a tile, in sheet coordinates. */
  private static List<Path> paths(Tile tile, String role) {
    List<Path> paths = new ArrayList<>();
    for (Item item : tile.page().items()) {
      if (item instanceof Item.Shape shape && shape.role().equals(role)) {
        Point shift = toSheet(tile);
        var map = org.lapmark.geometry.Affine.translation(shift.x(), shift.y());
        shape.paths().forEach(path -> paths.add(path.transformed(map)));
      }
    }
    return paths;
  }

  private static SheetLayout layout(JoinStyle joins) {
    return SheetLayout.of(
        GeneratedPatterns.pattern(9).pieces(), Paper.A4, Tiling.of(joins), Search.DEFAULT);
  }

  /** Where lines of pieces cross a join as a tile shows it, from the join's beginning. */
  private static List<Long> crossings(Tile tile, Join join) {
    List<Long> at = new ArrayList<>();
    double reach = 0.02;
    Box strip =
        new Box(
            join.from().x() - reach,
            join.from().y() - reach,
            join.to().x() + reach,
            join.to().y() + reach);
    for (Path path : paths(tile, "cutting-line")) {
      for (Path part : CurveClip.inside(path, strip)) {
        Point point = part.atLength(part.length() / 2);
        at.add(
            Math.round(
                20
                    * (join.sideways()
                        ? point.y() - join.from().y()
                        : point.x() - join.from().x())));
      }
    }
    return at.stream().distinct().sorted().toList();
  }

  private static List<Long> marks(Tile tile, Join join) {
    List<Long> at = new ArrayList<>();
    for (Path path : paths(tile, "join-mark")) {
      Point centre = path.start().towards(path.end(), 0.5);
      boolean on =
          join.sideways()
              ? Math.abs(centre.x() - join.from().x()) < 1e-6
                  && centre.y() > join.from().y()
                  && centre.y() < join.to().y()
              : Math.abs(centre.y() - join.from().y()) < 1e-6
                  && centre.x() > join.from().x()
                  && centre.x() < join.to().x();
      if (on) {
        at.add(
            Math.round(
                20
                    * (join.sideways()
                        ? centre.y() - join.from().y()
                        : centre.x() - join.from().x())));
      }
    }
    return at.stream().sorted().toList();
  }

  @ParameterizedTest
  @EnumSource(JoinStyle.class)
  void bothSidesShowTheSameLinesAndMarksAndOnlyOneWayRound(JoinStyle joins) {
    SheetPlan plan = plan(joins);
    Map<String, Tile> tiles = new LinkedHashMap<>();
    plan.tiles().forEach(tile -> tiles.put(tile.code(), tile));
    SheetLayout layout = layout(joins);
    assertTrue(layout.joins().size() > 20);
    for (Join join : layout.joins()) {
      Tile first = tiles.get(join.first().code());
      Tile second = tiles.get(join.second().code());
      assertTrue(first.joined().contains(second.code()) && second.joined().contains(first.code()));
      // Edge to edge, each side ends at the join: a slanted line is met a little apart.
      long apart = joins == JoinStyle.BUTT ? 6 : 0;
      List<Long> left = crossings(first, join);
      List<Long> right = crossings(second, join);
      assertEquals(left.size(), right.size(), first.code());
      for (int i = 0; i < left.size(); i++) {
        assertEquals((double) left.get(i), right.get(i), apart, first.code());
      }
      List<Long> marks = marks(first, join);
      assertFalse(marks.isEmpty());
      assertEquals(marks, marks(second, join));
      // Turned end for end, not all marks meet.
      long whole = Math.round(20 * join.length());
      assertFalse(
          marks.stream()
              .allMatch(
                  mark ->
                      marks.stream().anyMatch(other -> Math.abs(whole - mark - other) < 20 * 2.5)),
          join + " " + marks);
    }
  }

  /** What shows along one side of a join: outlines of half marks with their places. */
  private record Side(String join, double length, List<String> forms, List<Double> places) {
    boolean meets(Side other, boolean turned) {
      if (Math.abs(length - other.length) > 5
          || !forms.equals(other.forms)
          || places.size() != other.places.size()) {
        return false;
      }
      for (int i = 0; i < places.size(); i++) {
        double put =
            turned ? other.length - other.places.get(places.size() - 1 - i) : other.places.get(i);
        if (Math.abs(places.get(i) - put) >= 2.5) {
          return false;
        }
      }
      return true;
    }
  }

  private static List<Side> sides(SheetPlan plan, SheetLayout layout) {
    Map<String, Tile> tiles = new LinkedHashMap<>();
    plan.tiles().forEach(tile -> tiles.put(tile.code(), tile));
    List<Side> sides = new ArrayList<>();
    for (Join join : layout.joins()) {
      for (Cell cell : List.of(join.first(), join.second())) {
        Tile tile = tiles.get(cell.code());
        TreeMap<Double, String> forms = new TreeMap<>();
        for (Path path : paths(tile, "join-mark")) {
          for (double along : List.of(along(join, path.start()), along(join, path.end()))) {
            if (along < 0) {
              continue;
            }
            double middle = (along(join, path.start()) + along(join, path.end())) / 2;
            String form = path.curves().size() + (path.curves().get(0) instanceof Arc ? "a" : "l");
            forms.put(middle, form);
          }
        }
        sides.add(
            new Side(
                join.number() + "",
                join.length(),
                List.copyOf(forms.values()),
                List.copyOf(forms.keySet())));
      }
    }
    return sides;
  }

  /** How far along a join a point on it lies; -1 for one that doesn't lie on it. */
  private static double along(Join join, Point point) {
    double off = join.sideways() ? point.x() - join.from().x() : point.y() - join.from().y();
    double along = join.sideways() ? point.y() - join.from().y() : point.x() - join.from().x();
    return Math.abs(off) < 1e-6 && along > 0 && along < join.length() ? along : -1;
  }

  /** However pages are put together, upright or turned, marks of two joins never all meet. */
  @ParameterizedTest
  @ValueSource(ints = {9, 14, 38})
  void noTwoJoinsCanBeTakenForEachOther(int index) {
    var pattern = GeneratedPatterns.pattern(index);
    SheetPlan plan = PLANNER.plan(pattern, Paper.A4);
    SheetLayout layout = SheetLayout.of(pattern.pieces(), Paper.A4, Tiling.DEFAULT, Search.DEFAULT);
    List<Side> sides = sides(plan, layout);
    assertTrue(sides.size() > 40);
    for (int i = 0; i < sides.size(); i++) {
      Side side = sides.get(i);
      assertFalse(side.places().isEmpty(), side.join());
      assertFalse(side.meets(side, true), side + " turned");
      assertTrue(side.meets(sides.get(i % 2 == 0 ? i + 1 : i - 1), false), side.join());
      for (int k = 0; k < i; k++) {
        Side other = sides.get(k);
        if (!side.join().equals(other.join())) {
          assertFalse(side.meets(other, false), side + " and " + other);
          assertFalse(side.meets(other, true), side + " and turned " + other);
        }
      }
    }
  }

  @Test
  void marksFollowFromTheLinesThatCross() {
    SheetLayout layout = layout(JoinStyle.OVERLAP);
    SheetPlan plan = plan(JoinStyle.OVERLAP);
    List<Side> sides = sides(plan, layout);
    int clear = 0;
    for (int i = 0; i < layout.joins().size(); i++) {
      Join join = layout.joins().get(i);
      List<Double> crossings = JoinMarks.crossings(layout, join, "cutting-line");
      String form = List.of("1a", "2l", "3l").get(crossings.size() % 3);
      sides.get(2 * i).forms().forEach(each -> assertEquals(form, each));
      for (double place : sides.get(2 * i).places()) {
        clear += crossings.stream().allMatch(at -> Math.abs(at - place) > 6) ? 1 : 0;
      }
    }
    assertTrue(clear > 1.8 * layout.joins().size(), clear + " clear of lines");
  }

  @Test
  void aJoinSaysHowManyCuttingLinesCrossIt() {
    SheetLayout layout = layout(JoinStyle.OVERLAP);
    int said = 0;
    for (Join join : layout.joins()) {
      int lines = JoinMarks.crossings(layout, join, "cutting-line").size();
      String count = lines == 1 ? "1 cutting line crosses" : lines + " cutting lines cross";
      Tile tile =
          plan(JoinStyle.OVERLAP).tiles().stream()
              .filter(each -> each.code().equals(join.first().code()))
              .findFirst()
              .orElseThrow();
      String text = "Trim here, lay over " + join.second().code() + " · " + count;
      said +=
          tile.page().items().stream()
                  .anyMatch(
                      item -> item instanceof Item.Lettering words && words.text().equals(text))
              ? 1
              : 0;
    }
    assertTrue(said > 0.6 * layout.joins().size(), said + " of " + layout.joins().size());
  }

  @Test
  void quarterCirclesCloseWhereFourTilesMeet() {
    Map<String, Double> turned = new TreeMap<>();
    for (Tile tile : plan(JoinStyle.OVERLAP).tiles()) {
      for (Path path : paths(tile, "corner-mark")) {
        Arc arc = (Arc) path.curves().get(0);
        String corner =
            Math.round(arc.centre().x() * 1e4) + " " + Math.round(arc.centre().y() * 1e4);
        turned.merge(corner, arc.startAngle(), Double::sum);
        assertTrue(tile.core().expanded(1e-6).contains(path.bounds()), tile.code());
      }
    }
    assertTrue(turned.size() > 2);
    // The four begin at 0, 90, 180 and 270 degrees.
    turned.values().forEach(sum -> assertEquals(3 * Math.PI, sum, 1e-9));
  }

  @ParameterizedTest
  @EnumSource(JoinStyle.class)
  void checkLinesRunThroughAsLongAsTheySay(JoinStyle joins) {
    SheetPlan plan = plan(joins);
    List<CheckLine> lines = new ArrayList<>(CheckLine.of(layout(joins), true));
    lines.addAll(CheckLine.of(layout(joins), false));
    assertTrue(lines.size() > 1);
    SheetLayout layout = layout(joins);
    // A gap at the very end is closed by the stroke across it.
    List<Path> drawn = new ArrayList<>();
    for (Tile tile : plan.tiles()) {
      drawn.addAll(paths(tile, "check-line"));
      drawn.addAll(paths(tile, "check-end"));
    }
    int inside = 0;
    for (CheckLine check : lines) {
      assertEquals(Math.rint(check.length()), check.length(), 1e-9);
      double length = check.length();
      for (double at = 0.01; at < length; at += 3.1) {
        Point point = check.line().atLength(at);
        double off = offPieces(layout, point);
        boolean end = at < 6 || at > length - 6;
        Box around = new Box(point.x(), point.y(), point.x(), point.y()).expanded(2);
        double nearest =
            drawn.stream()
                .filter(path -> path.bounds().overlaps(around))
                .mapToDouble(path -> path.distance(point))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        // In the middle of the longest gap between dots, half of it.
        if (end || off > 3) {
          assertTrue(nearest <= 1.3 + 1e-6, nearest + " mm");
        } else if (off < 0 && at > 10 && at < length - 10) {
          inside++;
          assertTrue(nearest > 1, "in a piece at " + point);
        }
      }
      String text = "Check line: " + Math.round(length) + " mm from end to end";
      assertTrue(
          plan.tiles().stream()
              .flatMap(tile -> tile.page().items().stream())
              .anyMatch(item -> item instanceof Item.Lettering words && words.text().equals(text)),
          text);
    }
    assertTrue(inside > 0, "a line that would run through a piece");
  }

  /** How far a point lies from the nearest piece, in millimetres; below 0 inside one. */
  private static double offPieces(SheetLayout layout, Point point) {
    var place = new GeometryFactory().createPoint(new Coordinate(point.x(), point.y()));
    return layout.art().stream()
        .mapToDouble(art -> art.polygon().contains(place) ? -1 : art.polygon().distance(place))
        .min()
        .orElseThrow();
  }

  @Test
  void checkLinesLookLikeNoOtherLine() {
    StyleSheet styles = PLANNER.styles();
    List<Double> dash = styles.style("check-line").dash();
    // Dots: whatever else is dashed has strokes many times as long as it is wide.
    assertTrue(dash.get(0) <= 0.5 && dash.get(1) > 4 * dash.get(0), dash.toString());
    assertTrue(
        styles.style("check-line").strokeWidth() < styles.style("cutting-line").strokeWidth());
  }

  @ParameterizedTest
  @EnumSource(JoinStyle.class)
  void noCheckLineRunsThroughAMarkOrAWord(JoinStyle joins) {
    int seen = 0;
    for (Tile tile : plan(joins).tiles()) {
      List<Path> checks = paths(tile, "check-line");
      checks.addAll(paths(tile, "check-end"));
      List<Box> kept = new ArrayList<>();
      paths(tile, "join-mark").forEach(mark -> kept.add(mark.bounds()));
      for (Item item : tile.page().items()) {
        if (item instanceof Item.Lettering words
            && List.of("join-note", "join-number", "piece-label").contains(words.role())) {
          Point at = words.anchor().plus(toSheet(tile));
          kept.add(new Box(at.x(), at.y(), at.x(), at.y()));
        }
      }
      for (Path check : checks) {
        seen++;
        for (Box box : kept) {
          assertFalse(box.expanded(0.3).overlaps(check.bounds()), tile.code() + " " + box);
        }
      }
    }
    assertTrue(seen > 20);
  }

  @Test
  void onlySidesThatAreTrimmedHaveTrimLines() {
    for (JoinStyle joins : JoinStyle.values()) {
      SheetPlan plan = plan(joins);
      SheetLayout layout = layout(joins);
      for (Tile tile : plan.tiles()) {
        long first =
            layout.joins().stream().filter(j -> j.first().code().equals(tile.code())).count();
        long second =
            layout.joins().stream().filter(j -> j.second().code().equals(tile.code())).count();
        long trims = paths(tile, "trim-line").size();
        long folds = paths(tile, "fold-back").size();
        long meets = paths(tile, "meet-line").size();
        switch (joins) {
          case OVERLAP -> assertEquals(List.of(first, 0L, second), List.of(trims, folds, meets));
          case BUTT -> assertEquals(List.of(first + second, 0L, 0L), List.of(trims, folds, meets));
          case NO_TRIM -> assertEquals(List.of(0L, first, second), List.of(trims, folds, meets));
          default -> throw new IllegalStateException();
        }
        assertTrue(
            paths(tile, "trim-line").stream().allMatch(p -> p.curves().get(0) instanceof Line));
      }
    }
  }

  @Test
  void edgeToEdgeNothingIsShownTwice() {
    List<Tile> tiles = plan(JoinStyle.BUTT).tiles();
    for (Tile a : tiles) {
      for (Tile b : tiles) {
        if (a != b) {
          assertFalse(a.core().expanded(-0.01).overlaps(b.core()), a.code() + " " + b.code());
        }
      }
    }
  }
}
