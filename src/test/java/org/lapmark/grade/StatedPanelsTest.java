package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.source.read.PatternReader;

class StatedPanelsTest {
  private static final String HEAD =
      """
      format: 1
      title: Cap
      studio: Reed & Co
      language: en-GB
      edition: {name: "1", date: 2026-05-04}
      materials: {main: {name: canvas}}
      pieces:
        - {number: 1, name: One, panel: one, cut: [{material: main, count: 1}]}
      """;

  @TempDir Path folder;

  private EvaluatedPattern grade(String size, String panels, String... drawings)
      throws IOException {
    Files.createDirectories(folder.resolve("panels"));
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,S,M\nhead,cm,54,58\n");
    Files.writeString(folder.resolve("pattern.yaml"), HEAD + panels);
    for (int i = 0; i < drawings.length; i++) {
      Files.writeString(
          folder.resolve("panels").resolve((char) ('a' + i) + ".svg"),
          "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm'"
              + " viewBox='0 0 100 100'>"
              + drawings[i]
              + "</svg>");
    }
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        Grader.grade(PatternReader.read(folder, findings), Variant.ofSize(size), findings);
    assertEquals(List.of(), findings.sorted());
    return pattern;
  }

  @ParameterizedTest
  @CsvSource({"S, 540", "M, 580"})
  void theRoundPartsOfAHatMeet(String size, double head) throws IOException {
    EvaluatedPattern hat =
        grade(
            size,
            """
            measures:
              headline: head + 20 mm
            panels:
              one:
                ellipse: {perimeter: headline - 60 mm, ratio: 1.2}
              band:
                cone_band: {lower: headline, upper: length(one.rim), height: 85 mm, share: 1/2}
              brim:
                brim: {head: length(band.lower) * 2, width: 70 mm, droop: 35 deg}
                edges:
                  headline: [inner_end, inner_start]
              part:
                ring_sector: {inner_length: headline / 4, width: 70 mm, angle: 90 deg}
            """);
    Panel tip = hat.panels().get("one");
    Panel band = hat.panels().get("band");
    Panel brim = hat.panels().get("brim");
    assertEquals(head - 40, tip.line("rim").length(), 0.001);
    assertEquals(1.2, tip.outline().bounds().height() / tip.outline().bounds().width(), 1e-9);
    assertEquals((head + 20) / 2, band.line("lower").length(), 0.001);
    assertEquals((head - 40) / 2, band.line("upper").length(), 0.001);
    double across = 60 / (2 * Math.PI);
    assertEquals(Math.sqrt(85 * 85 + across * across), band.line("start").length(), 0.001);
    assertEquals(head + 20, brim.line("headline").length(), 0.001);
    assertEquals(
        head + 20 + 2 * Math.PI * 70 * Math.cos(Math.toRadians(35)),
        brim.line("outer").length(),
        0.001);
    assertEquals((head + 20) / 4, hat.panels().get("part").line("inner").length(), 0.001);
  }

  private static final String TRIANGLE =
      "<path id='outline' d='M0 0C30 -20 60 -20 90 0L40 80Z'/><circle id='corner.a'/>"
          + "<path id='grainline' d='M45 10V50'/>"
          + "<circle id='corner.b' cx='90'/><circle id='corner.c' cx='40' cy='80'/>";

  @ParameterizedTest
  @CsvSource({"S, 54", "M, 58"})
  void aDrawingIsScaledUntilAnEdgeHasALength(String size, double length) throws IOException {
    EvaluatedPattern pattern =
        grade(
            size,
            """
            panels:
              one:
                drawing: a.svg
                scale: {edge: top, length: head / 10}
                edges: {top: [a, b], side: [b, c]}
            """,
            TRIANGLE + "<circle id='drill.x' cx='45' cy='10'/>");
    Panel panel = pattern.panels().get("one");
    assertEquals(length, panel.line("top").length(), 1e-6);
    double factor = panel.line("side").length() / Math.hypot(50, 80);
    assertEquals(90 * factor, panel.outline().bounds().width(), 1e-6);
    assertTrue(
        panel.marks().stream().anyMatch(mark -> mark.toString().contains("x=" + 45 * factor)),
        panel.marks().toString());
  }

  @Test
  void eachSizeHasItsOwnDrawingWithTheSameEdges() throws IOException {
    String panels =
        """
        panels:
          one:
            drawings:
              S: a.svg
              M: b.svg
            edges: {top: [a, b], side: [b, c], back: [c, a]}
        """;
    String larger =
        "<path id='outline' d='M40 90L100 0H0Z'/><circle id='corner.c' cx='40' cy='90'/>"
            + "<path id='grainline' d='M45 10V50'/>"
            + "<circle id='corner.a'/><circle id='corner.b' cx='100'/>";
    assertEquals(
        Math.hypot(50, 80),
        grade("S", panels, TRIANGLE, larger).panels().get("one").line("side").length(),
        1e-6);
    Panel large = grade("M", panels, TRIANGLE, larger).panels().get("one");
    assertEquals(100, large.line("top").length(), 1e-6);
    assertEquals(Math.hypot(60, 90), large.line("side").length(), 1e-6);
    assertEquals(Math.hypot(40, 90), large.line("back").length(), 1e-6);
  }
}
