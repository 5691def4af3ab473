package org.lapmark.measure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.FaultTable.Row;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;

class FaultsTest {
  @Test
  void eachFormulaGivesItsFinding() throws IOException {
    assertAll(
        FaultTable.rows("formula-faults.txt").stream()
            .map(row -> () -> assertEquals(row.expected(), formula(row.written()), row.written())));
  }

  @Test
  void eachTextGivesItsFinding() throws IOException {
    assertAll(
        FaultTable.rows("placeholder-faults.txt").stream()
            .map(row -> () -> assertEquals(row.expected(), text(row.written()), row.written())));
  }

  @Test
  void everyCodeIsTriggered() throws IOException {
    Set<String> seen = new TreeSet<>();
    Stream.of("formula-faults.txt", "placeholder-faults.txt")
        .flatMap(FaultsTest::rows)
        .forEach(row -> seen.add(row.code()));
    for (MeasureCode code : MeasureCode.values()) {
      assertTrue(seen.contains(code.id()), code.id());
    }
  }

  private static Stream<Row> rows(String name) {
    try {
      return FaultTable.rows(name).stream();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aHintNamesTheNearestWord() {
    assertEquals("Did you mean mm?", hint("10 mmm"));
    assertEquals("Did you mean in?", hint("3/8 inch"));
    assertTrue(hint("round_op(3)").startsWith("Did you mean round_up? "));
    assertFalse(hint("gusset(3)").startsWith("Did you mean"));
    assertEquals("“seam” is a length, but a condition is needed here.", message("if(seam, 1, 2)"));
    assertEquals("A length and a count can’t be added or subtracted.", message("seam + straps"));
    assertEquals("“sqrt” takes one value in its brackets.", message("sqrt()"));
    assertEquals("“distance” takes 2 values in its brackets.", message("distance(end)"));
    assertEquals("“round” takes 1 to 2 values in its brackets.", message("round()"));
    assertEquals(
        "No stock size is as short as 170 mm; the shortest is 18 cm.",
        message("longest_up_to(zip.stock, 17 cm)"));
    assertEquals(
        "This formula has 2,001 characters; the limit is 2,000.", message("1".repeat(2001)));
  }

  private static String hint(String formula) {
    return FindingText.hint(finding(formula));
  }

  private static String message(String formula) {
    return FindingText.message(finding(formula));
  }

  private static Finding finding(String formula) {
    try {
      Formula.parse(ExampleScope.text(formula)).evaluate(new ExampleScope());
    } catch (FindingException e) {
      return e.finding();
    }
    throw new AssertionError("no finding: " + formula);
  }

  private static String formula(String written) {
    try {
      Formula.parse(ExampleScope.text(written)).evaluate(new ExampleScope());
      return "fine";
    } catch (FindingException e) {
      return described(e.finding());
    }
  }

  private static String text(String written) {
    SourceText source = ExampleScope.text(written);
    Findings findings = new Findings();
    try {
      TemplateText parsed = TemplateText.parse(source, findings);
      if (findings.hasErrors()) {
        return described(findings.sorted().get(0));
      }
      parsed.print(new ExampleScope(), Variant.ofSize("M"), PrintForm.DEFAULT);
      return "fine";
    } catch (FindingException e) {
      return described(e.finding());
    }
  }

  private static String described(Finding finding) {
    FindingText words = new FindingText();
    for (String written : new String[] {words.messageOf(finding), words.hintOf(finding)}) {
      // A pattern whose argument is missing or misspelt keeps its braces.
      assertFalse(written.isBlank());
      assertFalse(written.replaceAll("“[^”]*”", "").contains("{"), written);
    }
    assertEquals("towel/pattern.yaml", finding.position().file());
    return finding.code().id()
        + ' '
        + finding.position().column()
        + ' '
        + finding.position().length();
  }
}
