package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.grade.fastening.Fastened;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.seam.SeamSide;
import org.lapmark.source.read.PatternReader;

/** What is fastened in the demos and on the shelf, in numbers. */
class FasteningsTest {
  private static final String BAG = "content/towpath-handlebar-bag";
  private static final String HAT = "content/slipway-rain-hat";
  private static final String SHELF = "src/test/resources/org/lapmark/shelf/";

  private static EvaluatedPattern grade(String folder, Variant variant) throws IOException {
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        Grader.grade(PatternReader.read(Path.of(folder), findings), variant, findings);
    assertTrue(!findings.hasErrors(), findings.sorted().toString());
    return pattern;
  }

  private static double measure(EvaluatedPattern pattern, String name) {
    Value value = pattern.measures().get(name);
    return value instanceof Value.NominalPair pair
        ? pair.metric()
        : ((Value.Quantity) value).amount();
  }

  @ParameterizedTest
  @CsvSource({"S", "M", "L"})
  void theZipLiesInTheMiddleOfBothStrips(String size) throws IOException {
    EvaluatedPattern bag = grade(BAG, Variant.ofSize(size));
    Trim zip = bag.fastened().trim("zip_panel").orElseThrow();
    double width = measure(bag, "bag_width");
    double length = measure(bag, "zip_length");
    assertEquals(width, zip.edge(), 1e-9);
    assertEquals(length, zip.length(), 1e-9);
    assertEquals((width - length) / 2, zip.standsIn(), 1e-9);
    assertTrue(zip.standsIn() >= 5, zip.toString());
    assertEquals(OptionalDouble.of(12), zip.visibleWidth());
    assertEquals(
        List.of("front_strip.top"), zip.facing().stream().map(Trim.Stretch::line).toList());
    Trim piping = bag.fastened().trim("piping").orElseThrow();
    assertEquals(measure(bag, "piping_length"), piping.length(), 1e-9);
    assertEquals(0, piping.standsIn(), 1e-9);
    assertEquals(OptionalDouble.empty(), piping.visibleWidth());
  }

  @Test
  void strapsAreCaughtAtTheirPlaces() throws IOException {
    EvaluatedPattern bag = grade(BAG, Variant.ofSize("M"));
    double width = measure(bag, "bag_width");
    Point corner = bag.panels().get("rear_strip").line("top").start();
    Attached left = bag.fastened().attachment("left_strap").orElseThrow();
    assertEquals(
        new Attached(
            "left_strap",
            "",
            OptionalInt.of(11),
            "rear_strip",
            "top",
            "",
            false,
            corner.plus(new Point(width / 4, 0)),
            new Point(0, 1),
            25,
            280),
        rounded(left));
    Attached right = bag.fastened().attachment("right_strap").orElseThrow();
    assertEquals(width / 2, right.point().distance(left.point()), 1e-9);
    Attached loop = bag.fastened().attachment("loop").orElseThrow();
    assertEquals("hook_tape", loop.thing());
    assertEquals("", loop.caughtAt());
    assertTrue(loop.wrongSide());
    Attached hook = bag.fastened().attachment("hook").orElseThrow();
    assertEquals(0, hook.end().distance(loop.point()), 1e-9);
  }

  private static Attached rounded(Attached one) {
    return new Attached(
        one.name(),
        one.thing(),
        one.piece(),
        one.panel(),
        one.caughtAt(),
        one.holder(),
        one.wrongSide(),
        rounded(one.point()),
        rounded(one.direction()),
        one.width(),
        one.length());
  }

  private static Point rounded(Point point) {
    return new Point(
        Math.rint(point.x() * 1e6) / 1e6 + 0.0, Math.rint(point.y() * 1e6) / 1e6 + 0.0);
  }

  @Test
  void whatIsHeldLiesWhereItsHolderEnds() throws IOException {
    assertEquals(Fastened.NONE, grade(HAT, Variant.ofSize("54")).fastened());
    EvaluatedPattern hat = grade(HAT, new Variant("60", new TreeMap<>(Map.of("cord", "yes"))));
    Attached loop = hat.fastened().attachment("first_loop").orElseThrow();
    Attached cord = hat.fastened().attachment("first_cord").orElseThrow();
    Attached clasp = hat.fastened().attachment("clasp_on_cord").orElseThrow();
    assertEquals("inner", loop.caughtAt());
    assertEquals("first_loop", cord.holder());
    assertEquals(8, loop.width(), 1e-9);
    assertEquals(3, cord.width(), 1e-9);
    assertEquals(0, cord.point().distance(loop.end()), 1e-9);
    assertEquals(450, clasp.point().distance(cord.point()), 1e-9);
    assertEquals("brim", clasp.panel());
  }

  @Test
  void aPocketHangsFromItsPlacementLine() throws IOException {
    EvaluatedPattern tote = grade(SHELF + "saltmarsh-tote", Variant.ofSize("M"));
    Attached pocket = tote.fastened().attachment("pocket_inside").orElseThrow();
    assertEquals(measure(tote, "pocket_width"), pocket.width(), 1e-9);
    assertEquals(measure(tote, "pocket_height"), pocket.length(), 1e-9);
    assertEquals(new Point(0, 1), rounded(pocket.direction()));
    Point top = tote.panels().get("body_lining").line("top").atLength(0);
    assertEquals(measure(tote, "pocket_place"), pocket.point().y() - top.y(), 1e-6);
  }

  @Test
  void aCordGoesRoundItsCasing() throws IOException {
    EvaluatedPattern sack = grade(SHELF + "tarn-drawstring-sack", Variant.ofSize("M"));
    Trim cord = sack.fastened().trim("drawcord").orElseThrow();
    assertEquals(measure(sack, "round"), cord.edge(), 1e-6);
    assertEquals(measure(sack, "cord_length"), cord.length(), 1e-9);
  }

  @Test
  void theyAreEqualWhereMakersMakeTheSame() throws IOException {
    assertEquals(
        grade(BAG, Variant.ofSize("M")).fastened(), grade(BAG, Variant.ofSize("M")).fastened());
    assertNotEquals(
        grade(BAG, Variant.ofSize("M")).fastened(), grade(BAG, Variant.ofSize("L")).fastened());
  }

  /** A seam that has a trim as a part is walked, and named in the walk, as with its width. */
  @Test
  void aTrimInASeamIsAsLongAsItIsWide() throws IOException {
    EvaluatedPattern bag = grade(BAG, Variant.ofSize("M"));
    EvaluatedPattern yesterday =
        grade(
            "src/test/resources/org/lapmark/document/yesterday/towpath-handlebar-bag",
            Variant.ofSize("M"));
    assertEquals(yesterday.seams(), bag.seams());
    assertEquals(Fastened.NONE, yesterday.fastened());
  }

  @Test
  void whatIsCaughtInASeamIsAsWideAsItsAttachment() throws IOException {
    SeamSide side = seam(grade(SHELF + "millrace-drum-bag", Variant.ofSize("S")), "end_seam");
    assertEquals(List.of(new SeamSide.Tab("left_tab", 25, side.length() / 2)), side.tabs());
    EvaluatedPattern hat = grade(HAT, new Variant("60", new TreeMap<>(Map.of("cord", "yes"))));
    SeamSide crown = seam(hat, "loops");
    assertEquals(List.of(8.0, 8.0), crown.tabs().stream().map(SeamSide.Tab::width).toList());
    assertEquals(crown.length() * 3 / 4, crown.tabs().get(0).at(), 1e-9);
  }

  private static SeamSide seam(EvaluatedPattern pattern, String name) {
    return pattern.seams().stream()
        .filter(seam -> seam.name().equals(name))
        .findFirst()
        .orElseThrow()
        .sides()
        .get(0);
  }
}
