package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The rain hat against formulas and sums of its own. */
class RainHatTest {
  private static final int SAMPLES = 4_000;
  private static final double DROOP = StrictMath.cos(StrictMath.toRadians(35));
  private static final DocumentLimits REACH =
      new DocumentLimits(
          List.of(),
          List.of("adhesive", "blades", "cords", "iron", "machine", "melting", "points"),
          text -> List.of());

  private static final Map<Variant, EvaluatedPattern> GRADED = new LinkedHashMap<>();

  private static PatternSource source;
  private static Variants variants;

  @BeforeAll
  static void read() throws IOException {
    Findings findings = new Findings();
    source = PatternReader.read(Path.of("content/slipway-rain-hat"), findings);
    variants = new Variants(source, findings);
    assertEquals(List.of(), findings.sorted());
  }

  /** Each variant once. */
  private static EvaluatedPattern grade(Variant variant) {
    return GRADED.computeIfAbsent(variant, RainHatTest::graded);
  }

  private static EvaluatedPattern graded(Variant variant) {
    Findings findings = new Findings();
    EvaluatedPattern pattern = Grader.grade(source, variant, findings);
    Rules.inVariant(new Evaluated(pattern, REACH, CareWords.NONE), findings);
    assertEquals(List.of(), findings.sorted(), variant.toString());
    return pattern;
  }

  private static EvaluatedPattern grade(String size, String longerBack) {
    return grade(variants.of(size, Map.of("longer_back", longerBack)));
  }

  static Stream<Variant> all() {
    return variants.all().stream();
  }

  /** How long a line is, by its chords. */
  private static double chords(org.lapmark.geometry.Path path) {
    double length = path.length();
    double sum = 0;
    Point before = path.atLength(0);
    for (int i = 1; i <= SAMPLES; i++) {
      Point here = path.atLength(length * i / SAMPLES);
      sum += before.distance(here);
      before = here;
    }
    return sum;
  }

  private static double chords(EvaluatedPattern hat, String panel, String line) {
    return chords(hat.panels().get(panel).line(line));
  }

  /** An ellipse's perimeter, by Simpson's rule on its quarter. */
  private static double perimeter(double a, double b) {
    int steps = 2_000;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      double t = Math.PI / 2 * i / steps;
      double x = a * StrictMath.sin(t);
      double y = b * StrictMath.cos(t);
      double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * Math.sqrt(x * x + y * y);
    }
    return 4 * sum * (Math.PI / 2 / steps) / 3;
  }

  /** The centre of the circle through a line's start, middle and end. */
  private static Point centre(org.lapmark.geometry.Path arc) {
    Point a = arc.start();
    Point b = arc.atLength(arc.length() / 2);
    Point c = arc.end();
    double d = 2 * (a.x() * (b.y() - c.y()) + b.x() * (c.y() - a.y()) + c.x() * (a.y() - b.y()));
    double aa = a.dot(a);
    double bb = b.dot(b);
    double cc = c.dot(c);
    return new Point(
        (aa * (b.y() - c.y()) + bb * (c.y() - a.y()) + cc * (a.y() - b.y())) / d,
        (aa * (c.x() - b.x()) + bb * (a.x() - c.x()) + cc * (b.x() - a.x())) / d);
  }

  /** The angle in degrees between two straight lines, each from its inner to its outer end. */
  private static double opening(Point start, Point end) {
    return StrictMath.toDegrees(Math.abs(StrictMath.atan2(start.cross(end), start.dot(end))));
  }

  @ParameterizedTest
  @CsvSource({"54", "56", "58", "60", "62", "64"})
  void theTipIsAnOvalWhosePerimeterIsTheHeadlineLessSixty(String size) {
    EvaluatedPattern hat = grade(size, "no");
    double round = Double.parseDouble(size) * 10 + 10 + 10 - 60;
    org.lapmark.geometry.Path rim = hat.panels().get("tip").line("rim");
    Box box = rim.bounds();
    assertEquals(1.2, box.height() / box.width(), 1e-9);
    assertEquals(round, perimeter(box.width() / 2, box.height() / 2), 1e-6);
    assertEquals(round, chords(rim), 0.001);
    for (int i = 0; i < 100; i++) {
      Point from = rim.atLength(rim.length() * i / 100).minus(box.centre());
      double x = from.x() / (box.width() / 2);
      double y = from.y() / (box.height() / 2);
      assertEquals(1, x * x + y * y, 1e-9);
    }
  }

  @Test
  void theTipOfFiftyEightIsFiveHundredAndForty() {
    assertEquals(540, chords(grade("58", "no"), "tip", "rim"), 0.001);
  }

  @ParameterizedTest
  @CsvSource({"54", "56", "58", "60", "62", "64"})
  void theBandIsAConesMantle(String size) {
    EvaluatedPattern hat = grade(size, "no");
    double headline = Double.parseDouble(size) * 10 + 20;
    org.lapmark.geometry.Path lower = hat.panels().get("band").line("lower");
    org.lapmark.geometry.Path upper = hat.panels().get("band").line("upper");
    // Radii are to each other as the lengths, and differ by the height.
    double outer = 85 * headline / 60;
    Point centre = centre(lower);
    assertEquals(0, centre.distance(centre(upper)), 1e-6);
    assertEquals(outer, lower.start().distance(centre), 1e-6);
    assertEquals(outer - 85, upper.start().distance(centre), 1e-6);
    double angle = opening(lower.start().minus(centre), lower.end().minus(centre));
    assertEquals(60 / 85.0, StrictMath.toRadians(angle), 1e-9);
    assertEquals(headline, chords(lower), 0.001);
    assertEquals(headline - 60, chords(upper), 0.001);
    assertEquals(85, chords(hat, "band", "start"), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"54", "56", "58", "60", "62", "64"})
  void theBrimIsARingSectorThatDroopsByThirtyFiveDegrees(String size) {
    EvaluatedPattern hat = grade(size, "no");
    double headline = Double.parseDouble(size) * 10 + 20;
    org.lapmark.geometry.Path inner = hat.panels().get("brim").line("inner");
    org.lapmark.geometry.Path outer = hat.panels().get("brim").line("outer");
    // Worn, the headline is a circle; its radius over the flat one's is the cosine of the droop.
    double worn = headline / (2 * Math.PI);
    double radius = worn / DROOP;
    Point centre = centre(inner);
    assertEquals(radius, inner.start().distance(centre), 1e-6);
    assertEquals(radius + 70, outer.start().distance(centre), 1e-6);
    double gap = opening(inner.start().minus(centre), inner.end().minus(centre));
    assertEquals(360 - 360 * DROOP, gap, 1e-9);
    assertEquals(headline, chords(inner), 0.001);
    assertEquals(2 * Math.PI * (worn + 70 * DROOP), chords(outer), 0.001);
  }

  @ParameterizedTest
  @CsvSource({"54", "56", "58", "60", "62", "64"})
  void aLongerBackOpensTheBrimsEdgeAndLeavesTheHeadline(String size) {
    EvaluatedPattern plain = grade(size, "no");
    EvaluatedPattern longer = grade(size, "yes");
    double headline = Double.parseDouble(size) * 10 + 20;
    assertEquals(headline, chords(longer, "brim", "inner"), 0.2);
    // Four openings of 10 mm straight across the end of a slash of 70 mm.
    double more = chords(longer, "brim", "outer") - chords(plain, "brim", "outer");
    assertEquals(40, more, 2);
    double each = 2 * StrictMath.toDegrees(StrictMath.asin(5 / 70.0));
    org.lapmark.geometry.Path start = longer.panels().get("brim").line("start");
    org.lapmark.geometry.Path end = longer.panels().get("brim").line("end");
    double gap = opening(start.end().minus(start.start()), end.start().minus(end.end()));
    assertEquals(360 - 360 * DROOP - 4 * each, gap, 0.5);
    assertEquals(70, chords(start), 0.01);
    assertEquals(70, chords(end), 0.01);
    // Band and tip are the same in both.
    for (String line : List.of("lower", "upper", "start", "end")) {
      assertEquals(chords(plain, "band", line), chords(longer, "band", line), 0);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void seamsAgreeInEveryVariant(Variant variant) {
    EvaluatedPattern hat = grade(variant);
    Map<String, String> pairs = new LinkedHashMap<>();
    pairs.put("tip.rim", "band.upper");
    pairs.put("band.lower", "brim.inner");
    pairs.put("band.start", "band.end");
    pairs.put("brim.start", "brim.end");
    pairs.put("tip_lining.rim", "band_lining.upper");
    pairs.put("band_lining.start", "band_lining.end");
    pairs.put("head_strip.top", "brim.inner");
    pairs.put("head_strip.bottom", "band.lower");
    pairs.put("head_strip.left", "head_strip.right");
    pairs.forEach(
        (one, other) ->
            assertEquals(length(hat, one), length(hat, other), 0.2, one + ", " + other));
    // The lining lies inside: shorter by the way round two thicknesses of 0.4 and half of 0.2 mm.
    double shorter = 2 * Math.PI * 0.5;
    assertEquals(length(hat, "band.lower") - shorter, length(hat, "band_lining.lower"), 0.2);
    assertEquals(length(hat, "tip.rim") - shorter, length(hat, "tip_lining.rim"), 0.2);
    for (WalkedSeam seam : hat.seams()) {
      assertTrue(seam.agrees(), seam.name());
      assertEquals(0.2, seam.tolerance(), 1e-12, seam.name());
      for (int side = 1; side < seam.sides().size(); side++) {
        assertEquals(List.of(), seam.matching(side).apart(), seam.name());
        assertEquals(List.of(), seam.matching(side).first(), seam.name());
        assertEquals(List.of(), seam.matching(side).second(), seam.name());
      }
    }
  }

  private static double length(EvaluatedPattern hat, String edge) {
    String[] names = edge.split("\\.");
    return chords(hat, names[0], names[1]);
  }

  @ParameterizedTest
  @MethodSource("all")
  void allowancesAreTenAndTheBrimsEdgeSix(Variant variant) {
    EvaluatedPattern hat = grade(variant);
    for (Piece piece : hat.pieces()) {
      piece
          .shape()
          .allowances()
          .forEach(
              (edge, allowance) -> {
                boolean interfacing = piece.number() == 4;
                double wanted = 10;
                if (piece.number() == 8 || interfacing && List.of("start", "end").contains(edge)) {
                  wanted = 0;
                } else if (edge.equals("outer")) {
                  wanted = 6;
                }
                assertEquals(wanted, allowance, 1e-12, piece.number() + " " + edge);
                Point middle =
                    piece
                        .shape()
                        .panel()
                        .line(edge)
                        .atLength(piece.shape().panel().line(edge).length() / 2);
                assertEquals(
                    wanted, piece.shape().cuttingLine().path().distance(middle), 0.03, edge);
              });
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void bandsAndBrimsArePrintedAsHalves(Variant variant) {
    List<Integer> halves = new ArrayList<>();
    for (Piece piece : grade(variant).pieces()) {
      piece
          .half()
          .map(FoldedHalf::outline)
          .ifPresent(
              half -> {
                halves.add(piece.number());
                double whole = Math.abs(piece.shape().cuttingLine().path().signedArea());
                assertEquals(whole / 2, Math.abs(half.signedArea()), whole * 1e-4);
              });
    }
    assertEquals(List.of(2, 3, 4, 6), halves);
  }

  @Test
  void noCordInChildrensSizes() {
    for (String size : List.of("54", "56", "58", "60", "62", "64")) {
      boolean child = size.equals("54") || size.equals("56");
      assertEquals(child ? "no" : "yes", variants.standard(size).choices().get("cord"), size);
      Variant tied = variants.of(size, Map.of("cord", "yes"));
      assertEquals(child, variants.forbidden(tied).isPresent(), size);
      assertEquals(
          child, variants.forbidden(tied).map(one -> one.contains("strangle")).orElse(false));
      assertFalse(variants.forbidden(variants.of(size, Map.of("cord", "no"))).isPresent());
      EvaluatedPattern plain = grade(variants.of(size, Map.of("cord", "no")));
      assertTrue(plain.pieces().stream().noneMatch(piece -> piece.number() == 8));
      assertEquals(List.of(), plain.source().hardware());
      assertTrue(
          plain.source().steps().stream()
              .noneMatch(
                  step -> List.of("loops", "place_loops", "cord").contains(step.id().text())));
    }
    // Two choices of the back in two sizes, and two of the cord as well in four.
    assertEquals(2 * 2 + 4 * 2 * 2, variants.all().size());
  }

  @ParameterizedTest
  @CsvSource({
    "54, 6\u00a03/4, 6\u00a05/8",
    "56, 7, 6\u00a07/8",
    "58, 7\u00a01/4, 7\u00a01/8",
    "60, 7\u00a01/2, 7\u00a03/8",
    "62, 7\u00a03/4, 7\u00a05/8",
    "64, 8, 7\u00a07/8"
  })
  void hatSizesAreConverted(String size, String american, String british) {
    EvaluatedPattern hat = grade(size, "no");
    List<String> printed = new ArrayList<>();
    Findings findings = new Findings();
    hat.source()
        .finished()
        .subList(0, 2)
        .forEach(
            row -> printed.add(PrintedText.of(row.value(), hat, findings).orElseThrow().text()));
    assertEquals(List.of(), findings.sorted());
    assertEquals(List.of(american, british), printed);
  }
}
