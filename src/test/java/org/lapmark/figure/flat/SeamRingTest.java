package org.lapmark.figure.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.figure.DemoFigures;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.source.read.PatternReader;

/** What a figure shows round a piece is what the seam's walk says. */
class SeamRingTest {
  private static SourceText word(String text) {
    return SourceText.verbatim(new SourceFile("steps/figure.md", text), 0, text.length());
  }

  private static List<SeamRing.Band> bands(EvaluatedPattern pattern, String panel, String seam) {
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
    EvaluatedPattern bag = DemoFigures.pattern(DemoFigures.source(), size);
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

  private static EvaluatedPattern crate() throws IOException {
    Findings findings = new Findings();
    return Grader.grade(
        PatternReader.read(
            Path.of("src", "test", "resources", "org", "lapmark", "publish", "crate"), findings),
        Variant.ofSize("L"),
        findings);
  }

  @Test
  void onlyTheEdgesThatAreSewnAreSurrounded() throws IOException {
    EvaluatedPattern crate = crate();
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
    EvaluatedPattern crate = crate();
    List<SeamRing.Band> bands = bands(crate, "gusset", "round");
    assertEquals(
        List.of("1 Front", "1 Front", "1 Front"), bands.stream().map(SeamRing.Band::name).toList());
    assertEquals(0, first(bands.get(0)).distance(new Point(0, 0)), 1e-6);
    assertEquals(0, first(bands.get(1)).distance(new Point(0, 180)), 1e-6);
    assertEquals(0, last(bands.get(2)).distance(new Point(0, 600)), 1e-6);
  }

  private static EvaluatedPattern graded(Path folder, String size) throws IOException {
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        Grader.grade(PatternReader.read(folder, findings), Variant.ofSize(size), findings);
    assertTrue(!findings.hasErrors());
    return pattern;
  }

  /** The panel of the whole front is cut by no piece; the half that it is unfolded from is. */
  @Test
  void aDerivedPanelHasTheNameOfThePieceThatItComesFrom() throws IOException {
    EvaluatedPattern bodice =
        graded(
            Path.of("src", "test", "resources", "org", "lapmark", "shelf", "darted-bodice"), "12");
    assertEquals(
        List.of("2 Back", "1 Front", "2 Back"),
        bands(bodice, "band", "waist_seam").stream().map(SeamRing.Band::name).toList());
  }

  /** A crate whose gusset is sewn to a panel that no piece is cut from. */
  static Path strangeCrate(Path folder, String side) throws IOException {
    Path crate = Path.of("src", "test", "resources", "org", "lapmark", "publish", "crate");
    try (Stream<Path> files = Files.walk(crate)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(crate.relativize(file));
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    Path pattern = folder.resolve("pattern.yaml");
    String text = Files.readString(pattern);
    text =
        text.replace(
            "panels:\n",
            "panels:\n  liner_2:\n    rectangle: {width: 40 mm, height: side + 360 mm}\n");
    text =
        text.replace(
            "\ntools:\n",
            "\n  strange:\n    sides:\n      - [gusset.right]\n      - " + side + "\ntools:\n");
    Files.writeString(pattern, text);
    return folder;
  }

  @Test
  void wherePiecesHaveNoNameTheSidesIsShown(@TempDir Path folder) throws IOException {
    EvaluatedPattern crate =
        graded(strangeCrate(folder, "{name: a liner, edges: [liner_2.left]}"), "L");
    assertEquals(
        List.of("a liner"),
        bands(crate, "gusset", "strange").stream().map(SeamRing.Band::name).toList());
  }

  @Test
  void aSideWithoutAnyNameForReadersIsReported(@TempDir Path folder) throws IOException {
    EvaluatedPattern crate = graded(strangeCrate(folder, "[liner_2.left]"), "L");
    FindingException found =
        assertThrows(FindingException.class, () -> bands(crate, "gusset", "strange"));
    assertEquals("figure-around-nameless", found.finding().code().id());
    assertTrue(FindingText.message(found.finding()).contains("‘liner_2’"));
    assertTrue(FindingText.hint(found.finding()).contains("‘name’"));
  }
}
