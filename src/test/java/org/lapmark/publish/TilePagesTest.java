package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.book.Plates;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Cut;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Piece;
import org.lapmark.grade.Variants;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** What every page of tiles and every piece on them says, and that nothing is drawn twice. */
class TilePagesTest {
  /** Lines nearer to each other than this, in millimetres, at all of their ends, are the same. */
  private static final double SAME = 1e-3;

  private static final Paper PAPER = Paper.A4;

  @ParameterizedTest
  @CsvSource({"towpath-handlebar-bag, M", "slipway-rain-hat, 58"})
  void everyPageAndEveryPieceSaysWhatItIs(String name, String size) throws IOException {
    GradedPattern pattern = pattern(name, size);
    DocumentWriter writer = new DocumentWriter(TemplateFolder.bundled());
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.UK), writer.styles(), writer.lettering());
    SheetPlan plan = planner.plan(pattern, PAPER);
    String title = pattern.source().masthead().title().text();
    String edition = pattern.source().masthead().edition().text();
    StringBuilder all = new StringBuilder();
    try (PDDocument document =
        Loader.loadPDF(
            writer.write(new TilesDocument(pattern, plan, Plates.of(planner)), new Findings()))) {
      int pages = document.getNumberOfPages();
      assertEquals(plan.tiles().size(), pages);
      for (int i = 0; i < pages; i++) {
        Tile tile = plan.tiles().get(i);
        String text = text(document, i + 1);
        all.append(text);
        String page = "Page " + (i + 1) + " of " + pages;
        for (String said :
            List.of(title, "Edition " + edition, "Size " + size, tile.code(), page)) {
          assertTrue(text.contains(said), tile.code() + " lacks " + said + ": " + text);
        }
        assertOneStream(document.getPage(i), tile.code());
        assertNothingTwice(document.getPage(i), tile.code());
      }
    }
    // Lines of lettering break where there is no room; the words stay in order.
    String words = all.toString().replaceAll("\\s+", " ");
    for (Piece piece : pattern.pieces()) {
      if (piece.statedSize().isEmpty()) {
        assertTrue(words.contains(piece.number() + " " + piece.name()), piece.name());
        for (Cut cut : piece.cuts()) {
          String said = "Cut " + cut.count() + " in " + cut.materialName();
          assertTrue(words.contains(said), piece.name() + ": " + said);
        }
      }
    }
    long printed = pattern.pieces().stream().filter(piece -> piece.statedSize().isEmpty()).count();
    assertTrue(count(words, "llowance") >= printed, "a piece without a word on its allowance");
    assertTrue(count(words, "Size " + size + " · Edition " + edition) >= printed + 1);
  }

  private static GradedPattern pattern(String name, String size) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(java.nio.file.Path.of("content", name), findings);
    GradedPattern pattern =
        Grader.grade(source, new Variants(source, findings).standard(size), findings);
    assertEquals(List.of(), findings.sorted());
    return pattern;
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }

  private static int count(String text, String sought) {
    int count = 0;
    for (int at = text.indexOf(sought); at >= 0; at = text.indexOf(sought, at + 1)) {
      count++;
    }
    return count;
  }

  private static void assertOneStream(PDPage page, String code) {
    Iterator<PDStream> streams = page.getContentStreams();
    streams.next();
    assertTrue(!streams.hasNext(), code + " has several content streams");
  }

  /** Two strokes never run along each other from end to end. */
  private static void assertNothingTwice(PDPage page, String code) throws IOException {
    List<Curve> curves =
        new TileTracer(page, new Point(0, 0))
            .trace().stream().map(Path::curves).flatMap(List::stream).toList();
    assertTrue(curves.size() > 10, code + " shows next to nothing");
    for (int i = 0; i < curves.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertTrue(
            !same(curves.get(i), curves.get(j)),
            code + " draws twice from " + curves.get(i).start() + " to " + curves.get(i).end());
      }
    }
  }

  private static boolean same(Curve a, Curve b) {
    return (a.start().distance(b.start()) < SAME && a.end().distance(b.end()) < SAME
            || a.start().distance(b.end()) < SAME && a.end().distance(b.start()) < SAME)
        && a.at(0.5).distance(b.at(0.5)) < SAME;
  }
}
