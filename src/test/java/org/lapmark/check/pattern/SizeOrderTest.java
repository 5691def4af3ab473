package org.lapmark.check.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

class SizeOrderTest {
  @TempDir Path folder;

  private static List<Finding> across(Path folder) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    List<EvaluatedPattern> patterns = new ArrayList<>();
    for (String size : source.sizes().sizes()) {
      patterns.add(Grader.grade(source, Variant.ofSize(size), findings));
    }
    Collections.reverse(patterns);
    Rules.acrossSizes(patterns, findings);
    return findings.sorted();
  }

  private List<Finding> across(String rows, String panel) throws IOException {
    String sizes = rows.lines().findFirst().orElse("").split(",").length > 6 ? ",XXL,3XL" : "";
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,S,M,L,XL" + sizes + "\n" + rows);
    Files.writeString(
        folder.resolve("pattern.yaml"),
        """
        format: 1
        title: Pouch
        studio: Reed & Co
        language: en-GB
        edition: {name: "1", date: 2026-05-04}
        materials: {main: {name: canvas}}
        pieces:
          - {number: 1, name: One, panel: one, cut: [{material: main, count: 1}]}
        panels:
          one:
        """
            + panel);
    return across(folder);
  }

  private static final String ROWS = "width,mm,100,110,120,130\nnarrow,mm,9,8,8,7\n";

  @Test
  void anEdgeThatRisesAndFallsIsFound() throws IOException {
    List<Finding> findings =
        across(ROWS, "    rectangle: {width: 2000 mm - abs(width - 112 mm) * 2, height: narrow}\n");
    assertEquals(1, findings.size());
    assertEquals(CheckCode.SIZE_ORDER_BROKEN, findings.get(0).code());
    assertEquals(10, findings.get(0).position().line());
    assertEquals(
        "Edge “top” of panel “one” gets longer and shorter from size to size, though no measure"
            + " does: S 1976 mm, M 1996 mm, L 1984 mm (and 1 more edge).",
        FindingText.message(findings.get(0)));
    assertTrue(FindingText.hint(findings.get(0)).contains("any_order"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "width,mm,100,110,120,130|rectangle: {width: width, height: 300 mm - width}",
        "width,mm,100,110,110,130|rectangle: {width: width, height: 3 mm}",
        "width,mm,100,110,110.04,110|rectangle: {width: width, height: 3 mm}",
        "width,mm,100,110,110.02,110.03"
            + "|rectangle: {width: 200 mm - abs(width - 110.02 mm), height: 3 mm}"
      })
  void anOrderThatHoldsOrIsTheTablesIsNotFound(String row, String panel) throws IOException {
    assertEquals(List.of(), across(row + "\n", "    " + panel + "\n"));
  }

  @Test
  void whereARowTurnsItsEdgesMayTurnAndNoOthers() throws IOException {
    List<Finding> findings =
        across(
            "width,mm,100,130,110,120\nnarrow,mm,8,8,8,7\n",
            "    rectangle: {width: width, height: 300 mm - abs(narrow - 8 mm)}\n");
    assertEquals(List.of("size-row-turns"), findings.stream().map(this::id).toList());
    findings =
        across(
            "width,mm,130,110,120,130\nnarrow,mm,9,8,7,6\n",
            "    rectangle: {width: width, height: 300 mm - abs(narrow - 6.5 mm)}\n");
    assertEquals(List.of("size-row-turns"), findings.stream().map(this::id).toList());
    findings =
        across(
            "width,mm,130,110,120,130,140,150\nnarrow,mm,9,8,7,6,5,4\n",
            "    rectangle: {width: width, height: 300 mm - abs(narrow - 5.2 mm)}\n");
    assertEquals(
        List.of("size-order-broken", "size-row-turns"), findings.stream().map(this::id).toList());
  }

  private String id(Finding finding) {
    return finding.code().id();
  }

  @Test
  void anyOrderMayBeStated() throws IOException {
    assertEquals(
        List.of(),
        across(
            ROWS,
            "    any_order: true\n"
                + "    rectangle: {width: 200 mm - abs(width - 112 mm), height: narrow}\n"));
  }

  @Test
  void theDemoIsInOrder() throws IOException {
    assertEquals(List.of(), across(Path.of("content", "towpath-handlebar-bag")));
  }
}
