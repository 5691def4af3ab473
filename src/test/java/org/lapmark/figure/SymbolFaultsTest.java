package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;

/** What is wrong with hardware in a figure is found at its place; put right, it gives nothing. */
class SymbolFaultsTest {
  /** Things on a sheet, and what is found of them: {@code column+length code}, one a line. */
  private record Case(String name, String things, String expected) {}

  private static List<Case> cases() throws IOException {
    try (InputStream stream = SymbolFaultsTest.class.getResourceAsStream("symbol-faults.txt")) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      List<Case> cases = new ArrayList<>();
      for (String part : text.split("(?m)^=== ")) {
        if (!part.isBlank()) {
          List<String> lines = part.lines().toList();
          cases.add(
              new Case(
                  lines.get(0),
                  lines.get(1),
                  String.join("\n", lines.subList(2, lines.size())).strip()));
        }
      }
      return cases;
    }
  }

  private static List<Finding> found(String things) throws IOException {
    PatternSource source = NotionsSheet.source();
    EvaluatedPattern pattern = DemoFigures.pattern(source, "L");
    Findings findings = new Findings();
    String block = "pieces:\n- piece: 1\n  name: no\n  things:\n" + things + "\n";
    FigureSource.parse(DemoFigures.block(block), findings)
        .ifPresent(
            figure ->
                DemoFigures.drawer().draw(figure, pattern, source.masthead().form(), findings));
    return findings.sorted();
  }

  /** The codes that the cases trigger. */
  static Set<String> codes() throws IOException {
    Set<String> codes = new TreeSet<>();
    for (Case one : cases()) {
      found(one.things).forEach(finding -> codes.add(finding.code().id()));
    }
    return codes;
  }

  @TestFactory
  List<DynamicTest> eachFaultIsFoundWhereItStands() throws IOException {
    return cases().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name,
                    () -> {
                      List<Finding> found = found(one.things);
                      assertEquals(
                          one.expected,
                          found.stream()
                              .map(
                                  finding ->
                                      finding.position().column()
                                          + "+"
                                          + finding.position().length()
                                          + " "
                                          + finding.code().id())
                              .collect(Collectors.joining("\n")));
                      for (Finding finding : found) {
                        assertTrue(FindingText.message(finding).endsWith("."));
                        assertTrue(FindingText.hint(finding).length() > 5);
                      }
                    }))
        .toList();
  }
}
