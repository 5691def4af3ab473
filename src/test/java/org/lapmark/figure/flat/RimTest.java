package org.lapmark.figure.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.figure.DemoFigures;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.read.PatternReader;

/** What figures show beside a rim is as long, and lies in the order, as the walk says. */
class RimTest {
  private static final Pattern AROUND =
      Pattern.compile(
          "(?s)```figure\n(?:(?!```).)*?piece: (\\d+)(?:(?!```).)*?around: \\{seam: (\\w+)");

  static List<Path> folders() throws IOException {
    List<Path> found = new ArrayList<>();
    for (Path parent :
        List.of(Path.of("content"), Path.of("src/test/resources/org/lapmark/shelf"))) {
      try (Stream<Path> folders = Files.list(parent)) {
        for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
          if (!rims(source(folder)).isEmpty()) {
            found.add(folder);
          }
        }
      }
    }
    return found;
  }

  private static PatternSource source(Path folder) throws IOException {
    return PatternReader.read(folder, new Findings());
  }

  /** Each piece that is shown so, with the seam. */
  private static List<String[]> rims(PatternSource source) {
    List<String[]> rims = new ArrayList<>();
    for (StepSource step : source.steps()) {
      Matcher matcher = AROUND.matcher(step.body().text());
      while (matcher.find()) {
        rims.add(new String[] {matcher.group(1), matcher.group(2)});
      }
    }
    return rims;
  }

  @ParameterizedTest
  @MethodSource("folders")
  void eachRimIsAsTheWalkSays(Path folder) throws IOException {
    PatternSource source = source(folder);
    for (Variant variant : new Variants(source, new Findings()).all()) {
      EvaluatedPattern pattern = Grader.grade(source, variant, new Findings());
      for (String[] rim : rims(source)) {
        Panel panel =
            pattern.pieces().stream()
                .filter(piece -> Integer.toString(piece.number()).equals(rim[0]))
                .findFirst()
                .orElseThrow()
                .shape()
                .panel();
        WalkedSeam seam =
            pattern.seams().stream()
                .filter(one -> one.name().equals(rim[1]))
                .findFirst()
                .orElseThrow();
        check(folder.getFileName() + " " + variant, pattern, panel, seam);
      }
    }
  }

  private static void check(String name, EvaluatedPattern pattern, Panel panel, WalkedSeam seam) {
    SourceText word =
        SourceText.verbatim(
            new SourceFile("steps/figure.md", seam.name()), 0, seam.name().length());
    Around around = new Around(word, null);
    List<SeamRing.Band> bands = SeamRing.bands(DemoFigures.staging(pattern), panel, around);
    SeamSide own =
        seam.sides().stream()
            .filter(
                side -> side.parts().stream().anyMatch(part -> part.panel().equals(panel.name())))
            .findFirst()
            .orElseThrow();
    assertFalse(bands.isEmpty(), name);
    boolean alone = own.parts().stream().allMatch(part -> part.panel().equals(panel.name()));
    int level = 0;
    for (SeamSide side : seam.sides()) {
      if (side == own) {
        continue;
      }
      int shown = level++;
      List<SeamRing.Band> its = bands.stream().filter(band -> band.level() == shown).toList();
      if (alone) {
        assertEquals(side.members().size(), its.size(), name + " a band for each part");
        double whole = its.stream().mapToDouble(SeamRing.Band::length).sum();
        assertEquals(side.length(), whole, 1e-6, name + " nothing of the walk is left out");
        boolean closed = seam.closed();
        for (int i = 0; i < its.size(); i++) {
          SeamRing.Band next = its.get((i + 1) % its.size());
          if (closed || i + 1 < its.size()) {
            assertTrue(
                last(its.get(i)).distance(next.feet().get(0).point()) < 0.1,
                name + " bands follow on each other");
          }
          // Where there is something to be eased in, a part is drawn so much longer or shorter.
          double spread = Math.abs(own.length() - side.length()) + 0.01 * its.get(i).length() + 0.3;
          assertEquals(its.get(i).length(), drawn(its.get(i)), spread, name + " as long as walked");
        }
      }
      for (SeamRing.Band band : its) {
        boolean zip = side.parts().stream().anyMatch(part -> part.name().startsWith("zip"));
        assertTrue(zip || !band.isZip(), name);
      }
    }
    SeamPart first = own.parts().get(0);
    if (first.panel().equals(panel.name())) {
      List<SeamRing.Foot> start = SeamRing.start(DemoFigures.staging(pattern), panel, around);
      org.lapmark.geometry.Path path = first.path().orElseThrow();
      Point stated = first.clockwise() ? path.start() : path.end();
      assertTrue(start.get(0).point().distance(stated) < 0.1, name + " starts where the seam does");
      Point on = first.clockwise() ? path.atLength(1.5) : path.atLength(path.length() - 1.5);
      assertTrue(start.get(1).point().distance(on) < 0.1, name + " and goes its way");
    }
  }

  private static Point last(SeamRing.Band band) {
    return band.feet().get(band.feet().size() - 1).point();
  }

  private static double drawn(SeamRing.Band band) {
    double length = 0;
    for (int i = 1; i < band.feet().size(); i++) {
      length += band.feet().get(i).point().distance(band.feet().get(i - 1).point());
    }
    return length;
  }
}
