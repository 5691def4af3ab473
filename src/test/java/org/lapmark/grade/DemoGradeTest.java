package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.read.PatternReader;

class DemoGradeTest {
  private static EvaluatedPattern grade(String folder, String size) throws IOException {
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        Grader.grade(PatternReader.read(Path.of(folder), findings), Variant.ofSize(size), findings);
    assertEquals(List.of(), findings.sorted());
    return pattern;
  }

  @ParameterizedTest
  @CsvSource({"S, 390.45, 18 cm", "M, 449.89, 23 cm", "L, 509.47, 25 cm"})
  void theRingOfTheDemoIsItsRim(String size, double rim, String zip) throws IOException {
    EvaluatedPattern bag = grade("content/towpath-handlebar-bag", size);
    assertEquals(rim, bag.panels().get("end").line("rim").length(), 0.005);
    assertTrue(bag.seams().stream().allMatch(WalkedSeam::agrees));
    assertEquals(zip, ((Value.NominalPair) bag.measures().get("zip_length")).metricText());
    Piece gusset = bag.pieces().get(1);
    StatedSize stated = gusset.statedSize().orElseThrow();
    assertEquals(rim - 60 - 12 - 40 + 20, stated.height(), 0.005);
    Box end = bag.pieces().get(0).shape().bounds();
    Box panel = bag.panels().get("end").outline().bounds();
    assertEquals(panel.width() + 20, end.width(), 0.01);
    assertEquals(panel.height() + 20, end.height(), 0.01);
    Box foam = bag.panels().get("end_foam").outline().bounds();
    assertEquals(panel.width() - 6, foam.width(), 0.01);
  }

  @ParameterizedTest
  @ValueSource(strings = {"content/towpath-handlebar-bag", "content/slipway-rain-hat"})
  void notchesAreSnippedAsDeepAsTheyAreDrawn(String folder) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(Path.of(folder), findings);
    Variant variant = new Variants(source, findings).all().get(0);
    EvaluatedPattern pattern = Grader.grade(source, variant, findings);
    StepSource cut =
        pattern.source().steps().stream()
            .filter(step -> step.id().text().equals("cut"))
            .findFirst()
            .orElseThrow();
    Matcher said =
        Pattern.compile("Snip\\s+the\\s+notches[^{}]*\\{(min\\(.*?\\)) as at most\\}")
            .matcher(cut.body().text());
    assertTrue(said.find(), cut.body().text());
    Value depth =
        pattern
            .value(Formula.parse(cut.body().part(said.start(1), said.end(1))), new Findings())
            .orElseThrow();
    double deepest =
        pattern.pieces().stream()
            .filter(piece -> piece.statedSize().isEmpty())
            .flatMap(piece -> piece.shape().notches().stream())
            .mapToDouble(org.lapmark.geometry.Path::length)
            .max()
            .orElseThrow();
    assertEquals(deepest, ((Value.Quantity) depth).amount(), 0.01);
  }

  @Test
  void aFixedDrawingIsScaledToMeasuresAndItsMarksWithIt() throws IOException {
    EvaluatedPattern pouch = grade("src/test/resources/org/lapmark/grade/base", "M");
    Box front = pouch.panels().get("front").outline().bounds();
    assertEquals(120, front.width(), 1e-9);
    assertEquals(60, front.height(), 1e-9);
    assertTrue(
        pouch.panels().get("front").marks().stream()
            .anyMatch(mark -> mark.toString().contains("stud") && mark.toString().contains("60.0")),
        pouch.panels().get("front").marks().toString());
    assertEquals("Front, 120\u00a0mm wide", pouch.pieces().get(0).name());
    assertEquals(20, pouch.pieces().get(0).shape().bounds().height() - 60, 0.01);
  }
}
