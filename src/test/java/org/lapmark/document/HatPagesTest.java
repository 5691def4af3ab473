package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Variants;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.EdgeWords;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The hat in a child's size, which is made without any small part, as its maker reads it. */
class HatPagesTest {
  private static String text() throws Exception {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(Path.of("content", "slipway-rain-hat"), findings);
    EvaluatedPattern pattern =
        Grader.grade(source, new Variants(source, findings).standard("54"), findings);
    Manual manual = writer.manual(pattern, Look.STANDARD, findings);
    SheetPlanner planner =
        new SheetPlanner(
            writer.wording(source.masthead().language()),
            writer.styles(Look.STANDARD),
            writer.lettering());
    byte[] file =
        writer.write(
            new CompleteDocument(manual, planner.plan(pattern, Paper.A4), Plates.of(planner)),
            findings);
    return String.join(" ", Documents.texts(file)).replaceAll("\\s+", " ");
  }

  @Test
  void noTableIsEmptyAndEdgesHaveWords() throws Exception {
    String text = text();
    assertTrue(text.contains("Thread and small parts Thread: Polyester thread"), text);
    assertFalse(text.contains("Part Quantity"), text);
    assertTrue(text.contains("4 Brim interfacing, both ends: none"), text);
    assertTrue(
        text.contains("No allowance, except outer edge: 6 mm (1/4 in); inner edge: 10 mm"), text);
    assertFalse(text.contains("Head, measured"), text);
  }

  @Test
  void edgesOfStatedShapesHaveWordsAndOthersTheirAuthors() {
    var wording =
        new DocumentWriter(Specimen.templates()).wording(java.util.Locale.forLanguageTag("en-GB"));
    assertEquals(
        List.of("outer edge", "both ends", "front neck"),
        EdgeWords.of(List.of("outer", "end", "front_neck", "start"), wording));
    assertEquals(List.of("one end"), EdgeWords.of(List.of("start"), wording));
  }
}
