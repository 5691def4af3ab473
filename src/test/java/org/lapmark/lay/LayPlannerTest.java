package org.lapmark.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.lapmark.lay.Samples.CANVAS;
import static org.lapmark.lay.Samples.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class LayPlannerTest {
  private static final Point DOWN = new Point(0, 1);

  /** A closed outline of cubics about the origin, concave or not, whose corners are spread out. */
  private static Path blob(SplittableRandom random) {
    int corners = 3 + random.nextInt(5);
    double size = random.nextDouble(40, 180);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + random.nextDouble(0, 0.6)) / corners;
      double radius = size * random.nextDouble(0.45, 1);
      points.add(new Point(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
    }
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      Point from = points.get(i);
      Point to = points.get((i + 1) % corners);
      double bend = random.nextDouble(0.8, 1.1);
      curves.add(
          new Cubic(
              from, from.towards(to, 0.3).times(bend), from.towards(to, 0.7).times(bend), to));
    }
    return new Path(curves);
  }

  private static Samples samples(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Samples samples = new Samples();
    int width = 400 + random.nextInt(800);
    boolean nap = random.nextBoolean();
    boolean noGrain = random.nextInt(4) == 0;
    samples.material(
        CANVAS,
        "canvas",
        "usable_width",
        width + " mm",
        "nap",
        Boolean.toString(nap),
        "no_grain",
        Boolean.toString(noGrain),
        "selvedge_margin",
        random.nextInt(8) + " mm");
    int count = 1 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      double angle = random.nextDouble(0, 2 * Math.PI);
      Point grain =
          random.nextInt(3) == 0
              ? null
              : new Point(StrictMath.cos(angle), StrictMath.sin(angle)).times(20);
      int copies = 1 + random.nextInt(3);
      samples.piece(
          "Part " + i, blob(random), grain, cut(CANVAS, copies, random.nextInt(copies + 1)));
    }
    return samples;
  }

  @Property(tries = 40)
  void everyLayIsValid(@ForAll long seed) {
    Findings findings = new Findings();
    List<ClothPlan> plans = LayPlanner.plan(samples(seed).pattern(), findings, 200_000);
    assertEquals(List.of(), findings.sorted());
    Lay lay = plans.get(0).lays().get(0);
    check(lay);
    assertEquals(plans, LayPlanner.plan(samples(seed).pattern(), new Findings(), 200_000));
  }

  @Test
  void theExamplesAreValid() {
    Examples.all().values().forEach(LayPlannerTest::check);
  }

  private static void check(Lay lay) {
    Cloth cloth = lay.cloth();
    List<Geometry> placed = new ArrayList<>();
    double area = 0;
    for (Placement placement : lay.placements()) {
      Path outline = placement.outline();
      var box = outline.bounds();
      assertTrue(box.minX() >= -0.01 && box.maxX() <= lay.length() + 1e-9, "along: " + box);
      assertTrue(box.minY() >= cloth.selvedgeMargin() - 0.01, "at the first selvedge: " + box);
      assertTrue(
          box.maxY() <= lay.width().usable() - cloth.selvedgeMargin() + 0.01, "at the second");
      // Much finer than the planner's own chords.
      Geometry polygon = polygon(outline.flattened(0.0005));
      for (Geometry other : placed) {
        double gap = polygon.distance(other);
        assertTrue(gap >= LayPlanner.GAP - 0.01, "only " + gap + " mm apart");
      }
      placed.add(polygon);
      assertEquals(placement.reversed(), placement.map().determinant() < 0);
      assertEquals(1, Math.abs(placement.map().determinant()), 1e-12);
      direction(cloth, placement);
      area += polygon.getArea();
    }
    assertTrue(area < lay.length() * lay.width().usable());
  }

  /** On grain, and on one-way cloth the same way up. */
  private static void direction(Cloth cloth, Placement placement) {
    List<Mark> marks = placement.piece().shape().panel().marks();
    Point up = new Point(0, -1);
    // A nap has a direction even where there is no grain.
    if (cloth.hasGrain() && !marks.isEmpty()) {
      Mark.Grainline line = (Mark.Grainline) marks.get(0);
      up = line.to().minus(line.from()).unit();
      up = up.y() > 1e-9 ? up.times(-1) : up;
    }
    Point on = placement.map().applyVector(up);
    double off = !cloth.hasGrain() ? Math.min(Math.abs(on.x()), Math.abs(on.y())) : on.y();
    assertEquals(0, off, 1e-9);
    if (cloth.oneWay()) {
      assertEquals(-1, on.x(), 1e-9);
    }
  }

  private static Geometry polygon(List<Point> points) {
    return new GeometryFactory()
        .createPolygon(
            points.stream()
                .map(point -> new Coordinate(point.x(), point.y()))
                .toArray(Coordinate[]::new));
  }

  @Test
  void aPairCountsAsTheSmallerOfItsWidths() {
    Lay lay = Examples.all().get("bag");
    assertEquals(57 * 25.4, lay.width().usable(), 1e-9);
    Lay other = Examples.all().get("bag-other");
    assertEquals(43 * 25.4, other.width().usable(), 1e-9);
  }

  @Test
  void webbingOfAPiecesOwnWidthIsALengthToBuy() {
    Samples samples =
        new Samples()
            .material(CANVAS, "webbing", "usable_width", "25 mm (1 in)", "margin", "0.05")
            .rectangle("Bar strap", 25, 280, cut(CANVAS, 2, 0))
            .rectangle("Loop", 25, 60.5, cut(CANVAS, 1, 0));
    ClothPlan plan = LayPlanner.plan(samples.pattern(), new Findings(), 200_000).get(0);
    assertEquals(List.of(), plan.lays());
    PieceGoods goods = plan.goods().orElseThrow();
    assertEquals(620.5, goods.total(), 1e-9);
    assertEquals(700, goods.purchase().metric());
    assertEquals(6, goods.purchase().eighthsOfAYard());
    samples.rectangle("Label", 20, 30, cut(CANVAS, 1, 0));
    assertEquals(
        1, LayPlanner.plan(samples.pattern(), new Findings(), 200_000).get(0).lays().size());
  }

  @Test
  void aPieceThatJustFitsIsLaidAndAWiderOneReported() {
    assertEquals(List.of(), codes(wide(300)));
    assertEquals(List.of("lay-piece-too-wide"), codes(wide(300.1)));
    Findings findings = new Findings();
    assertEquals(
        List.of(), LayPlanner.plan(wide(300.1).pattern(), findings, 200_000).get(0).lays());
    Finding finding = findings.sorted().get(0);
    assertEquals(11, finding.position().line());
    assertEquals(
        "In size M piece 1, ‘Wide’, needs 300.1 mm across ‘canvas’, and 300 mm are usable.",
        FindingText.message(finding));
  }

  private static Samples wide(double width) {
    return new Samples()
        .material(CANVAS, "canvas", "usable_width", "310 mm", "selvedge_margin", "5 mm")
        .rectangle("Wide", width, 40, cut(CANVAS, 1, 0));
  }

  @Test
  void withoutAGrainAWidePieceIsTurned() {
    Samples samples =
        new Samples()
            .material(CANVAS, "foam", "usable_width", "300 mm", "no_grain", "true")
            .rectangle("Wide", 400, 40, cut(CANVAS, 1, 0));
    Findings findings = new Findings();
    check(LayPlanner.plan(samples.pattern(), findings, 200_000).get(0).lays().get(0));
    assertFalse(findings.hasErrors());
  }

  @Test
  void aBiasStripIsJoinedOnlyWhereItHasToBe() {
    // 40 wide on 400: at most 400 √2 - 40 = 525.685 long.
    assertEquals(List.of(), codes(bias(525.6, 40)));
    assertEquals(List.of("lay-bias-strip-joined"), codes(bias(525.8, 40)));
    // Two lengths are (l + 40) / 2 each: up to 1011.37 in all.
    assertEquals(2, laid(bias(1011.3, 40)));
    assertEquals(3, laid(bias(1011.5, 40)));
    assertEquals(List.of("lay-piece-too-wide"), codes(bias(700, 300)));
    assertEquals(List.of("lay-piece-too-wide"), codes(bias(60_000, 40)));
  }

  private static int laid(Samples samples) {
    Lay lay = LayPlanner.plan(samples.pattern(), new Findings(), 200_000).get(0).lays().get(0);
    check(lay);
    return lay.placements().size();
  }

  private static Samples bias(double length, double width) {
    return new Samples()
        .material(CANVAS, "bias cloth", "usable_width", "400 mm")
        .bias("Strip", width, length, cut(CANVAS, 1, 0));
  }

  @Test
  void propertiesThatCannotBeMeantAreReported() {
    assertEquals(List.of("lay-width-missing"), codes(with()));
    assertEquals(List.of(), codes(with("other_width", "1 m")));
    assertEquals(List.of("formula-unit-missing"), codes(with("usable_width", "3")));
    assertEquals(List.of("lay-width-range"), codes(with("usable_width", "11 m")));
    assertEquals(List.of(), codes(with("usable_width", "10 m")));
    assertEquals(
        List.of("lay-width-range"),
        codes(with("usable_width", "100 mm", "selvedge_margin", "50 mm")));
    assertEquals(List.of("lay-property-kind"), codes(with("usable_width", "1 m", "nap", "2")));
    assertEquals(
        List.of("lay-property-kind"), codes(with("usable_width", "1 m", "margin", "10 cm")));
    assertEquals(List.of("lay-share-range"), codes(with("usable_width", "1 m", "margin", "10")));
    assertEquals(
        List.of("lay-share-range"), codes(with("usable_width", "1 m", "shrinkage", "-0.1")));
    assertEquals(
        List.of(), codes(with("usable_width", "1 m", "margin", "0.1", "shrinkage", "3 / 100")));
  }

  private static Samples with(String... properties) {
    return new Samples()
        .material(CANVAS, "canvas", properties)
        .rectangle("Panel", 30, 40, cut(CANVAS, 1, 0));
  }

  @Test
  void moreThanCanBeLaidOutIsReported() {
    assertEquals(List.of(), codes(many(LayPlanner.MOST_PIECES)));
    assertEquals(List.of("lay-too-many-pieces"), codes(many(LayPlanner.MOST_PIECES + 1)));
  }

  private static Samples many(int count) {
    return new Samples()
        .material(CANVAS, "canvas", "usable_width", "1 m")
        .piece("Scale", Samples.halfDisc(6, 5), DOWN, cut(CANVAS, count, 0));
  }

  private static List<String> codes(Samples samples) {
    Findings findings = new Findings();
    LayPlanner.plan(samples.pattern(), findings, 200_000);
    findings
        .sorted()
        .forEach(
            finding -> {
              assertFalse(FindingText.message(finding).isBlank());
              assertFalse(FindingText.hint(finding).isBlank());
            });
    return findings.sorted().stream().map(finding -> finding.code().id()).toList();
  }
}
