package org.lapmark.document.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.CarePouch;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.Documents;
import org.lapmark.document.Specimen;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.companion.Companion;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.source.PatternSource;

/** Who makes a size sees how old those are whom it is for. */
class AgeWordsTest {
  private final DocumentWriter writer = new DocumentWriter(Specimen.templates());

  @TempDir Path home;

  @Test
  void agesReadAsTheyAreStated() throws IOException {
    assertEquals("ages 3 to 10 years", told("3 to 10", "S"));
    assertEquals("ages from 6 years", told("from 6", "S"));
    assertEquals("ages from 1 year", told("from 1", "S"));
    assertEquals("age 2 years", told("2", "S"));
    assertEquals("ages 6 to 18 months", told("6 to 18 months", "S"));
    assertEquals("ages 1.5 to 2 years", told("1.5 to 2", "S"));
    assertEquals("ages from 14 years", told("from 14", "S"));
  }

  @Test
  void whatAllGrownUpsWearSaysNothing() throws IOException {
    assertEquals("", told("adults", "S"));
    assertEquals("", told("{S: adults}", "S", "L"));
  }

  @Test
  void sizesLeadWhatIsNotTheSameInAll() throws IOException {
    assertEquals("S: ages 2 to 4 years, L: grown-ups", told("{S: 2 to 4}", "S", "L"));
    assertEquals("grown-ups", told("{S: 2 to 4}", "L"));
    assertEquals("ages from 3 years", told("from 3", "S", "L"));
  }

  @Test
  void coverFirstPageAndCompanionSayIt() throws IOException {
    List<EvaluatedPattern> child = CarePouch.grade(source("{S: 2 to 4}"), "S");
    List<String> pages = pages(child.get(0));
    assertTrue(pages.get(0).contains("Made for: ages 2 to 4 years"), pages.get(0));
    assertEquals(1, count(String.join(" ", pages), "Made for ages 2 to 4 years"), pages.toString());
    assertTrue(companion(child).contains("<dt>Made for</dt>"));
    assertTrue(companion(child).contains("ages 2 to 4 years"));
    List<EvaluatedPattern> grown = CarePouch.grade(source("adults"), "S");
    assertFalse(String.join(" ", pages(grown.get(0))).contains("Made for"));
    assertFalse(companion(grown).contains("Made for"));
  }

  private static int count(String text, String sought) {
    return text.split(sought, -1).length - 1;
  }

  private PatternSource source(String ages) throws IOException {
    return new CarePouch(Files.createTempDirectory(home, "case").resolve("pouch"))
        .with("pattern.yaml", "  ages: adults", "  ages: " + ages)
        .read();
  }

  private String told(String ages, String... sizes) throws IOException {
    Optional<String> told =
        AgeWords.of(CarePouch.grade(source(ages), sizes), writer.wording(Locale.UK));
    return told.orElse("").replace('\u00a0', ' ');
  }

  private List<String> pages(EvaluatedPattern pattern) throws IOException {
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.UK), writer.styles(), writer.lettering());
    Manual manual = writer.manual(pattern, Look.STANDARD, new Findings());
    return Documents.texts(
            writer.write(
                new InstructionsDocument(
                    manual, planner.plan(pattern, Paper.A4), Plates.of(planner)),
                new Findings()))
        .stream()
        .map(page -> page.replaceAll("[\\s\u00a0]+", " "))
        .toList();
  }

  private String companion(List<EvaluatedPattern> patterns) {
    Findings findings = new Findings();
    byte[] page = writer.write(new Companion(patterns), findings);
    assertEquals(List.of(), findings.sorted());
    return new String(page, StandardCharsets.UTF_8).replace('\u00a0', ' ');
  }
}
