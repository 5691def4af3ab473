package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.source.read.PatternReader;

class SolvingTest {
  private static final String HEAD =
      """
      format: 1
      title: T
      studio: S
      language: en-GB
      edition: {name: "1", date: 2026-05-04}
      materials: {main: {name: canvas}}
      pieces: [{number: 1, name: P, panel: square, cut: [{material: main, count: 1}]}]
      panels:
        square: {rectangle: {width: side, height: 2 * side}}
      measures:
      """;

  /** The pattern with some measures in one size. */
  private static EvaluatedPattern grade(Findings findings, String... measures) {
    try {
      Path folder = Files.createTempDirectory("solving").resolve("box");
      Files.createDirectory(folder);
      Path pattern = folder.resolve("pattern.yaml");
      Path sizes = folder.resolve("sizes.csv");
      try {
        Files.writeString(pattern, HEAD + "  " + String.join("\n  ", measures) + "\n");
        Files.writeString(sizes, "measure,unit,M\nx,mm,1\n");
        return Grader.grade(PatternReader.read(folder, findings), Variant.ofSize("M"), findings);
      } finally {
        Files.delete(pattern);
        Files.delete(sizes);
        Files.delete(folder);
        Files.delete(folder.getParent());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double amount(EvaluatedPattern pattern, String name) {
    return ((Value.Quantity) pattern.measures().get(name)).amount();
  }

  private static String mm(double length) {
    return String.format(Locale.ROOT, "%.6f mm", length);
  }

  @Property(tries = 60)
  void findsTheSideByTheArea(@ForAll @DoubleRange(min = 2, max = 900) double side) {
    Findings findings = new Findings();
    String area = mm(side) + " * " + mm(2 * side);
    EvaluatedPattern pattern =
        grade(findings, "side: {solve: area(square) = " + area + ", from: 1 mm, to: 1 m}");
    assertEquals(List.of(), findings.sorted());
    assertEquals(side, amount(pattern, "side"), 1e-6);
    assertEquals(2 * side, pattern.panels().get("square").outline().bounds().height(), 1e-5);
  }

  @Property(tries = 40)
  void theOrderOfSidesAndTheUnitOfBoundsChangeNothing(
      @ForAll @DoubleRange(min = 30, max = 900) double side) {
    Findings findings = new Findings();
    String perimeter = mm(6 * side);
    double one =
        amount(
            grade(
                findings,
                "side: {solve: perimeter(square) = " + perimeter + ", from: 1 in, to: 1 m}"),
            "side");
    double other =
        amount(
            grade(
                findings,
                "side: {solve: " + perimeter + " = perimeter(square), from: 25.4 mm, to: 100 cm}"),
            "side");
    assertEquals(Double.doubleToLongBits(one), Double.doubleToLongBits(other));
    assertEquals(side, one, 1e-6);
    assertEquals(List.of(), findings.sorted());
  }

  @Test
  void aChainIsSolvedFromItsEnd() {
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        grade(
            findings,
            "third: {solve: third * 3 = second, from: 1 mm, to: 1 m}",
            "second: {solve: second * 2 = side, from: 1 mm, to: 1 m}",
            "side: {solve: perimeter(square) = 720 mm, from: 1 mm, to: 1 m}");
    assertEquals(List.of(), findings.sorted());
    assertEquals(120, amount(pattern, "side"), 1e-9);
    assertEquals(60, amount(pattern, "second"), 1e-9);
    assertEquals(20, amount(pattern, "third"), 1e-9);
  }

  @Test
  void whatDependsOnTheSolutionMayStandInItsCondition() {
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        grade(
            findings,
            "gap: 100 mm - wide",
            "wide: width(square) + 10 mm",
            "side: {solve: gap = 2 * side, from: 1 mm, to: 1 m}");
    assertEquals(List.of(), findings.sorted());
    assertEquals(30, amount(pattern, "side"), 1e-9);
    assertEquals(60, amount(pattern, "gap"), 1e-9);
  }

  @Test
  void anAngleIsSolvedFor() {
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        grade(
            findings, "side: 10 mm", "slope: {solve: 2 * sin(slope) = 1, from: 0 deg, to: 90 deg}");
    assertEquals(List.of(), findings.sorted());
    assertEquals(30, amount(pattern, "slope"), 1e-9);
  }

  @Test
  void saysHowCloseItCame() {
    Findings findings = new Findings();
    grade(findings, "side: {solve: perimeter(square) = 720 mm, from: 1 mm, to: 11 cm}");
    assertEquals(
        List.of(
            "No “side” from 1 mm to 110 mm makes this true in size M; the closest is 110 mm, where"
                + " the sides are 60 mm apart."),
        findings.sorted().stream().map(FindingText::message).toList());
  }

  @Test
  void trialsLeaveNoFindings() {
    Findings findings = new Findings();
    // Below 20 mm the panel has no height; no trial there is reported.
    EvaluatedPattern pattern =
        grade(
            findings,
            "side: {solve: perimeter(square) + sqrt((tall - 20 mm) * 1 mm) = 625 mm, from: 1 mm,"
                + " to: 1 m}",
            "tall: side");
    assertEquals(List.of(), findings.sorted());
    double side = amount(pattern, "side");
    assertEquals(625, 6 * side + Math.sqrt(side - 20), 1e-9);
    assertTrue(side > 100);
  }
}
