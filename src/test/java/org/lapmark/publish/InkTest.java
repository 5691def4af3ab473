package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.geometry.Box;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;

/** No page of any document has ink nearer to its edge than printers reach. */
class InkTest {
  private static final double INSIDE = 6;
  private static final Path SHELF = Path.of("src", "test", "resources", "org", "lapmark", "shelf");

  @TempDir Path home;

  @Test
  void everyKindOfPageKeepsFromTheEdgeOfEveryPaper() throws IOException {
    List<Paper> papers = List.of(Paper.A4, Paper.LETTER, Paper.SHARED, Paper.A0, Paper.ROLL36);
    Path pattern = SHELF.resolve("larkspur-flap-pouch");
    List<Path> written =
        new Publisher(TemplateFolder.bundled())
            .publish(
                pattern,
                new Request(List.of(), papers, home).with(Products.extras().toArray(Extra[]::new)))
            .written();
    TreeSet<String> kinds = new TreeSet<>();
    for (Path file : written) {
      String name = file.getFileName().toString();
      if (name.endsWith(".pdf")) {
        everyPageKeepsItsInkInside(file);
        kinds.add(name.replaceAll(".*-(a4|letter|shared|a0|roll36)(.*)\\.pdf", "$1$2"));
      }
    }
    for (String paper : List.of("a4", "letter", "shared")) {
      for (String kind : List.of("", "-instructions", "-tiles", "-large-print", "-grade-report")) {
        assertTrue(kinds.contains(paper + kind), paper + kind + " of " + kinds);
      }
    }
    assertTrue(kinds.containsAll(List.of("a0-tiles", "roll36-tiles")), kinds.toString());
  }

  @ParameterizedTest
  @CsvSource({"weirside-cushion, 16, a4", "lined-mitten, S, letter", "ground-sheet, , shared"})
  void pagesOfOtherPatternsDoSoToo(String name, String size, String paper) throws IOException {
    List<Paper> papers = Papers.USUAL.stream().filter(each -> each.id().equals(paper)).toList();
    Request request = new Request(Optional.ofNullable(size).stream().toList(), papers, home);
    List<Path> written =
        new Publisher(TemplateFolder.bundled()).publish(SHELF.resolve(name), request).written();
    assertTrue(!written.isEmpty());
    for (Path file : written) {
      if (file.toString().endsWith(".pdf")) {
        everyPageKeepsItsInkInside(file);
      }
    }
  }

  private static void everyPageKeepsItsInkInside(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        double width = document.getPage(i).getMediaBox().getWidth() * 25.4 / 72;
        double height = document.getPage(i).getMediaBox().getHeight() * 25.4 / 72;
        Box ink = InkBounds.of(document.getPage(i));
        double least =
            Math.min(
                Math.min(ink.minX(), ink.minY()),
                Math.min(width - ink.maxX(), height - ink.maxY()));
        assertEquals(
            INSIDE,
            Math.min(INSIDE, least),
            0.005,
            file.getFileName() + ", page " + (i + 1) + ": " + ink);
      }
    }
  }
}
