package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** A zero that is written without a unit is printed as what it stands beside. */
class ZeroTest {
  @TempDir Path parent;
  private PatternSource source;

  @BeforeEach
  void read() throws IOException {
    Path folder = Files.createDirectory(parent.resolve("mat"));
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,M\nside,mm,200\n");
    Files.writeString(
        folder.resolve("pattern.yaml"),
        String.join(
            "\n",
            "format: 1",
            "title: Mat",
            "studio: Reed & Co",
            "language: en-GB",
            "edition: {name: \"1\", date: 2026-05-04}",
            "options:",
            "  wide: {label: Wide, default: no}",
            "materials:",
            "  main: {name: canvas, thickness: 1 mm}",
            "measures:",
            "  allowance: 10 mm",
            "  written: if(wide, 10 mm, 0)",
            "  named: if(wide, allowance, 0)",
            "  of_table: if(wide, side / 2, 0)",
            "  of_thing: if(wide, main.thickness, 0)",
            "  of_panel: if(wide, length(mat.top), 0)",
            "  behind: if(wide, named, 0)",
            "  solved: {solve: solved = 4 mm, from: 0, to: 1 m}",
            "  of_solved: if(wide, solved, 0)",
            "  alone: 0",
            "  round: if(wide, round, 0)",
            "panels:",
            "  mat: {rectangle: {width: side, height: side}}",
            "pieces:",
            "  - {number: 1, name: Mat, panel: mat, cut: [{material: main, count: 1}]}",
            ""));
    source = PatternReader.read(folder, new Findings());
  }

  private String printed(String text) {
    EvaluatedPattern pattern =
        Grader.grade(source, new Variant("M", new TreeMap<>(Map.of("wide", "no"))), new Findings());
    SourceText written = SourceText.verbatim(new SourceFile("mat", text), 0, text.length());
    return TemplateText.parse(written, new Findings())
        .print(pattern.scope(), pattern.variant(), PrintForm.DEFAULT)
        .stream()
        .map(part -> ((PrintedValue) part).text())
        .collect(Collectors.joining());
  }

  @Test
  void itIsALengthBesideALength() {
    String length = printed("{written}");
    assertEquals(printed("{0 mm}"), length);
    for (String name : new String[] {"named", "of_table", "of_thing", "of_panel", "behind"}) {
      assertEquals(length, printed("{" + name + "}"), name);
    }
    assertEquals(length, printed("{of_solved}"));
    assertEquals(printed("{10 mm}"), printed("{named + 10 mm}"));
  }

  @Test
  void itIsANumberAlone() {
    assertEquals("0", printed("{alone}"));
    assertEquals("0", printed("{round}"));
    assertEquals(printed("{0 mm as mm}"), printed("{alone as mm}"));
  }
}
