package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.lapmark.figure.pose.PosesTest;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;

/** Each fault gives its finding at its place; the same block put right gives none. */
class FigureFaultsTest {
  private static final PatternSource SOURCE = DemoFigures.source();
  private static final EvaluatedPattern PATTERN = DemoFigures.pattern(SOURCE, "M");

  private static List<FigureCase> cases() throws IOException {
    return FigureCase.beside(FigureFaultsTest.class, "figure-faults.txt");
  }

  private static Findings found(String yaml) {
    Findings findings = new Findings();
    FigureSource.parse(DemoFigures.block(yaml), findings)
        .ifPresent(
            figure ->
                DemoFigures.drawer().draw(figure, PATTERN, SOURCE.masthead().form(), findings));
    return findings;
  }

  @TestFactory
  List<DynamicTest> eachFaultIsFoundWhereItStands() throws IOException {
    return cases().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name(),
                    () ->
                        assertEquals(
                            one.expected(),
                            found(one.yaml()).sorted().stream()
                                .map(FigureFaultsTest::line)
                                .collect(Collectors.joining("\n")))))
        .toList();
  }

  private static String line(Finding finding) {
    return finding.position().line()
        + ":"
        + finding.position().column()
        + "+"
        + finding.position().length()
        + " "
        + finding.code().id();
  }

  @Test
  void everyCodeIsTriggeredAndSpeaks() throws IOException {
    Set<String> seen = new TreeSet<>();
    List<String> blocks = new ArrayList<>(cases().stream().map(FigureCase::yaml).toList());
    blocks.add("# " + "long ".repeat(2_000) + "\npieces: [{piece: 1}]\n");
    blocks.add(crowded());
    for (String block : blocks) {
      for (Finding finding : found(block).sorted()) {
        seen.add(finding.code().id());
        assertTrue(FindingText.message(finding).endsWith("."), finding.code().id());
        assertTrue(FindingText.hint(finding).length() > 5, finding.code().id());
      }
    }
    // Its case needs a pattern of its own: SeamRingTest has it.
    seen.add(FigureCode.FIGURE_AROUND_NAMELESS.id());
    // Their cases need slides, trims of cloth, elastic and units: LaidTest has them.
    seen.add(FigureCode.FIGURE_BACK_TO_UNPASSED.id());
    seen.add(FigureCode.FIGURE_TRIM_OF_CLOTH.id());
    seen.add(FigureCode.FIGURE_LENGTH_BESIDE.id());
    seen.add(FigureCode.FIGURE_UNIT_WITHIN.id());
    // Their cases need hardware that the demo hasn’t: SymbolFaultsTest has them.
    seen.addAll(SymbolFaultsTest.codes());
    // Their cases need pieces that the demo hasn’t: PosesTest has them.
    seen.addAll(PosesTest.codes());
    // Its case needs a pattern with options: PlantedMistakesTest has it.
    seen.add(FigureCode.FIGURE_ABSENT.id());
    // OperationTest has it, in a pattern without pieces.
    seen.add(FigureCode.FIGURE_OPERATION_UNCUT.id());
    for (FigureCode code : FigureCode.values()) {
      assertTrue(seen.contains(code.id()), code.id());
    }
  }

  @Test
  void labelsThatCannotBeKeptApartAreReported() {
    assertEquals(
        "1:1+1 figure-crowded",
        found(crowded()).sorted().stream()
            .map(FigureFaultsTest::line)
            .collect(Collectors.joining("\n")));
  }

  /** In a list item the block's lines are indented in the file but not in the block. */
  @Test
  void anIndentedBlockKeepsItsPlaces() {
    String content = "- a step\n\n  ```figure\n  pieces:\n  - piece: 77\n  ```\n";
    String block = "pieces:\n- piece: 77\n";
    int first = content.indexOf("pieces");
    int second = content.indexOf("- piece:");
    int[] offsets = new int[block.length() + 1];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = i < 8 ? first + i : second + i - 8;
    }
    Findings findings = new Findings();
    FigureSource.parse(
            SourceText.mapped(new SourceFile("steps/list.md", content), block, offsets), findings)
        .ifPresent(
            figure ->
                DemoFigures.drawer().draw(figure, PATTERN, SOURCE.masthead().form(), findings));
    assertEquals(1, findings.sorted().size());
    assertEquals("5:12+2 figure-piece-unknown", line(findings.sorted().get(0)));
  }

  private static String crowded() {
    StringBuilder block = new StringBuilder("width: half\npieces:\n- piece: 4\n  labels:\n");
    for (int i = 0; i < 36; i++) {
      block.append("  - {text: \"a label of some length, number ").append(i);
      block.append(" of many\", edge: top, along: 0.5}\n");
    }
    return block.toString();
  }

  @Test
  void hintsNameTheNearestWord() {
    assertEquals("Did you mean ‘side’?", hint("pieces:\n- {piece: 1, sides: wrong}\n"));
    assertEquals("Did you mean ‘wrong’?", hint("pieces:\n- {piece: 1, side: wrng}\n"));
    assertEquals("Did you mean ‘lining’?", hint("pieces:\n- {piece: 1, cloth: linning}\n"));
  }

  private static String hint(String yaml) {
    return FindingText.hint(found(yaml).sorted().get(0));
  }
}
