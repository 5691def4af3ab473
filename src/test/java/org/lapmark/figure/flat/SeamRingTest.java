package org.lapmark.figure.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.figure.DemoFigures;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.source.read.PatternReader;

/** What a figure shows round a piece is what the seam's walk says. */
class SeamRingTest {
  private static SourceText word(String text) {
    return SourceText.verbatim(new SourceFile("steps/figure.md", text), 0, text.length());
  }

  private static List<SeamRing.Band> bands(GradedPattern pattern, String panel, String seam) {
    return SeamRing.bands(
        DemoFigures.staging(pattern), pattern.panels().get(panel), new Around(word(seam), null));
  }

  private static Point first(SeamRing.Band band) {
    return band.feet().get(0).point();
  }

  private static Point last(SeamRing.Band band) {
    return band.feet().get(band.feet().size() - 1).point();
  }

  @ParameterizedTest
  @ValueSource(strings = {"S", "M", "L"})
  void theDemosRingBeginsWhereItsSeamDoes(String size) {
    GradedPattern bag = DemoFigures.pattern(DemoFigures.source(), size);
    Panel end = bag.panels().get("end");
    List<SeamRing.Band> bands = bands(bag, "end", "end_seam");
    assertEquals(
        List.of("3 Rear strip", "zip", "4 Front strip", "2 Base gusset"),
        bands.stream().map(SeamRing.Band::name).toList());
    // The rear strip, 60 mm, begins where the top edge does, clockwise.
    assertEquals(0, first(bands.get(0)).distance(end.line("top").start()), 1e-6);
    assertEquals(0, last(bands.get(0)).distance(end.line("top").atLength(60)), 1e-6);
    assertEquals(0, last(bands.get(1)).distance(end.line("top").atLength(72)), 1e-6);
    assertEquals(0, last(bands.get(3)).distance(first(bands.get(0))), 1e-6);
  }

  private static GradedPattern crate() throws IOException {
    Findings findings = new Findings();
    return Grader.grade(
        PatternReader.read(
            Path.of("src", "test", "resources", "org", "lapmark", "publish", "crate"), findings),
        Variant.ofSize("L"),
        findings);
  }

  @Test
  void onlyTheEdgesThatAreSewnAreSurrounded() throws IOException {
    GradedPattern crate = crate();
    List<SeamRing.Band> bands = bands(crate, "front", "round");
    assertEquals(1, bands.size());
    SeamRing.Band band = bands.get(0);
    assertEquals(0, first(band).distance(new Point(240, 0)), 1e-6);
    assertEquals(0, last(band).distance(new Point(0, 0)), 1e-6);
    assertTrue(
        band.feet().stream().noneMatch(foot -> foot.point().distance(new Point(120, 0)) < 100));
    // At a corner what stands off by 10 mm stands off both edges by 10 mm.
    assertTrue(
        band.feet().stream()
            .anyMatch(
                foot ->
                    foot.point().minus(foot.inwards().times(10)).distance(new Point(250, 190))
                        < 0.05));
  }

  @Test
  void fromTheOtherSideItIsTravelledTheOtherWay() throws IOException {
    GradedPattern crate = crate();
    List<SeamRing.Band> bands = bands(crate, "gusset", "round");
    assertEquals(
        List.of("1 Front", "1 Front", "1 Front"), bands.stream().map(SeamRing.Band::name).toList());
    assertEquals(0, first(bands.get(0)).distance(new Point(0, 0)), 1e-6);
    assertEquals(0, first(bands.get(1)).distance(new Point(0, 180)), 1e-6);
    assertEquals(0, last(bands.get(2)).distance(new Point(0, 600)), 1e-6);
  }
}
