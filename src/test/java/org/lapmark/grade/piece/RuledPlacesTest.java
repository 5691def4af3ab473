package org.lapmark.grade.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintForm.Units;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** Places on ruled pieces that differ can be told apart with a ruler. */
class RuledPlacesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    // Sixteenths tell these apart.
    "101 mm, 103 mm, METRIC_FIRST, 101 mm (4 in), 103 mm (4 1/16 in)",
    // These they don't.
    "101 mm, 102.2 mm, METRIC_FIRST, 101 mm (4 in), 102 mm",
    "101 mm, 102.2 mm, INCHES_FIRST, 4 in (101 mm), 102 mm",
    "101 mm, 102.2 mm, INCHES, 4 in, 102 mm",
    "101 mm, 102.2 mm, METRIC, 101 mm, 102 mm",
    // With a ruler these are one place.
    "101 mm, 101.9 mm, METRIC_FIRST, 101 mm (4 in), 102 mm (4 in)",
    // Nor do whole millimetres tell these apart; sixteenths would move the first by 8 %.
    "8.6 mm, 9.4 mm, METRIC_FIRST, 8.6 mm, 9.4 mm (3/8 in)",
    "8.6 mm, 9.4 mm, INCHES_FIRST, 8.6 mm, 3/8 in (9.4 mm)",
    // A side of 200 mm (7 7/8 in).
    "101 mm, 199 mm, METRIC_FIRST, 101 mm (4 in), 199 mm (7 13/16 in)",
    "101 mm, 198.5 mm, METRIC_FIRST, 101 mm (4 in), 199 mm (7 13/16 in)",
    "101 mm, 199.5 mm, METRIC_FIRST, 101 mm (4 in), 200 mm (7 7/8 in)"
  })
  void differentPlacesPrintDifferently(
      String one, String other, Units units, String first, String second) throws IOException {
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,S\nwide,mm,200\n");
    Files.writeString(
        folder.resolve("pattern.yaml"),
        """
        format: 1
        title: Crate
        studio: Reed & Co
        language: en-GB
        edition: {name: "1", date: 2026-05-04}
        materials: {main: {name: canvas}}
        panels:
          side:
            rectangle: {width: wide, height: 150 mm}
            notches:
              - {edge: top, at: ONE}
              - {edge: bottom, at: wide - (OTHER)}
        pieces:
          - {number: 1, name: Side, panel: side, cut: [{material: main, count: 1}]}
        """
            .replace("ONE", one)
            .replace("OTHER", other));
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    PatternSource printed =
        source.under(source.masthead().printing(source.masthead().form().with(units)));
    EvaluatedPattern pattern = Grader.grade(printed, Variant.ofSize("S"), findings);
    assertEquals(List.of(), findings.sorted());
    StatedSize size = pattern.pieces().get(0).statedSize().orElseThrow();
    PrintForm form = pattern.source().masthead().form().ruled();
    List<String> places =
        size.places().stream()
            .distinct()
            .map(place -> form.print(Value.Quantity.length(place)).replace('\u00a0', ' '))
            .toList();
    assertEquals(List.of(first, second), places);
  }
}
