package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputComparisonTest {
  @TempDir Path home;
  private Path before;
  private Path after;

  @BeforeEach
  void makeFolders() throws IOException {
    before = Files.createDirectory(home.resolve("before"));
    after = Files.createDirectory(home.resolve("after"));
  }

  @Test
  void seesNothingWhereOnlyTheFileDiffers() throws IOException {
    write(before, 10, "https://example.org/a", true);
    write(after, 10, "https://example.org/a", false);
    assertTrue(
        Files.mismatch(before.resolve("a.pdf"), after.resolve("a.pdf")) >= 0, "bytes differ");
    assertEquals(List.of(), OutputComparison.differences(before, after));
  }

  @Test
  void namesThePageWhoseLinesDiffer() throws IOException {
    write(before, 10, "https://example.org/a", true);
    write(after, 10.01f, "https://example.org/a", true);
    List<String> differences = OutputComparison.differences(before, after);
    assertEquals(1, differences.size(), differences::toString);
    assertTrue(differences.get(0).startsWith("a.pdf, page 1 content: line 1"), differences.get(0));
  }

  @Test
  void namesThePageWhoseLinksDiffer() throws IOException {
    write(before, 10, "https://example.org/a", true);
    write(after, 10, "https://example.org/b", true);
    List<String> differences = OutputComparison.differences(before, after);
    assertEquals(1, differences.size(), differences::toString);
    assertTrue(differences.get(0).startsWith("a.pdf, page 1 Annots:"), differences.get(0));
  }

  @Test
  void namesFilesThatCameAndWent() throws IOException {
    Files.writeString(before.resolve("one.svg"), "<svg/>");
    Files.writeString(after.resolve("two.svg"), "<svg/>");
    Files.writeString(before.resolve("three.html"), "a\nb");
    Files.writeString(after.resolve("three.html"), "a\nc");
    assertEquals(
        List.of("one.svg: not made any more", "three.html: line 2\n  - b\n  + c", "two.svg: new"),
        OutputComparison.differences(before, after));
  }

  private static void write(Path folder, float at, String address, boolean packed)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(PDRectangle.A4);
      document.addPage(page);
      try (PDPageContentStream content =
          new PDPageContentStream(
              document, page, PDPageContentStream.AppendMode.OVERWRITE, packed)) {
        content.moveTo(at, 10);
        content.lineTo(100, 100);
        content.stroke();
      }
      PDAnnotationLink link = new PDAnnotationLink();
      PDActionURI action = new PDActionURI();
      action.setURI(address);
      link.setAction(action);
      link.setRectangle(new PDRectangle(10, 10, 50, 20));
      page.getAnnotations().add(link);
      document.setDocumentId(1L);
      document.save(folder.resolve("a.pdf").toFile());
    }
  }
}
