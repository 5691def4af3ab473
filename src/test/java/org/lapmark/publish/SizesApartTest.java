package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Request;

/** Sizes that don't consist of the same pieces, steps and parts share no document. */
class SizesApartTest {
  private static final Path PATTERN =
      Path.of("src", "test", "resources", "org", "lapmark", "publish", "by-size");

  @TempDir Path home;

  @Test
  void eachSizesDocumentHasWhatBelongsToItsSizes() throws IOException {
    Outcome outcome =
        new Publisher(TemplateFolder.bundled())
            .publish(
                List.of(PATTERN),
                new Request(List.of(), List.of(Paper.A4), home),
                new Listener() {})
            .get(0);
    assertEquals(List.of(), outcome.result().findings().sorted());
    List<String> names =
        outcome.result().written().stream().map(path -> path.getFileName().toString()).toList();
    assertTrue(
        names.containsAll(
            List.of(
                "by-size-1-sizes-54.html",
                "by-size-1-sizes-58-60.html",
                "by-size-1-sizes-58-60-a4-instructions.pdf")),
        names.toString());
    assertFalse(names.contains("by-size-1.html"));
    String larger = text("by-size-1-sizes-58-60-a4-instructions.pdf");
    assertTrue(larger.contains("Chin cord: yes"));
    assertTrue(larger.contains("Thread the cord") && larger.contains("Mind the cord."));
    assertTrue(larger.contains("Cap, sizes 58, 60"));
    String smallest = text("by-size-1-54-a4-instructions.pdf");
    assertTrue(smallest.contains("Chin cord: no. Cords strangle."));
    assertFalse(smallest.contains("For grown-ups only."));
    assertFalse(smallest.contains("Thread the cord") || smallest.contains("Mind the cord."));
    String page = Files.readString(home.resolve("by-size").resolve("by-size-1-sizes-54.html"));
    assertFalse(page.contains("Thread the cord"));
    page = Files.readString(home.resolve("by-size").resolve("by-size-1-sizes-58-60.html"));
    assertTrue(page.contains("Thread the cord") && page.contains("For grown-ups only."));
  }

  private String text(String name) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(home.resolve("by-size").resolve(name).toFile())) {
      return new PDFTextStripper().getText(pdf);
    }
  }
}
