package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Request;

/** Whatever is wider than a page is set so that nothing of it is lost. */
class WordsOnPagesTest {
  private static final Path PATTERN =
      Path.of("src", "test", "resources", "org", "lapmark", "publish", "by-size");

  /** Where the text of A4 pages ends on the right, in points, and half a point. */
  private static final double RIGHT = (210 - 20) / 25.4 * 72 + 0.5;

  private static final String WORD = "Q".repeat(120);

  @TempDir Path home;

  @Test
  void longWordsAreBrokenAndWideTablesFit() throws IOException {
    Path pattern = home.resolve("cap");
    copy(pattern);
    String title = "Cap " + "Z".repeat(190);
    replace(pattern.resolve("pattern.yaml"), "title: Cap", "title: " + title);
    replace(
        pattern.resolve("steps").resolve("010-sew.md"),
        "\\z",
        "\n"
            + WORD
            + " and `"
            + WORD
            + "`.\n\n"
            + "| Qßßßßßßßßß ".repeat(12)
            + "|\n"
            + "|---".repeat(12)
            + "|\n"
            + "| ßßßßßßßßßß ".repeat(12)
            + "|\n");
    Outcome outcome =
        new Publisher(TemplateFolder.bundled())
            .publish(
                List.of(pattern),
                new Request(List.of("54"), List.of(Paper.A4), home.resolve("out")),
                new Listener() {})
            .get(0);
    assertEquals(
        List.of("table-too-wide"),
        outcome.result().findings().sorted().stream().map(found -> found.code().id()).toList());
    Path file =
        outcome.result().written().stream()
            .filter(path -> path.toString().endsWith("instructions.pdf"))
            .findFirst()
            .orElseThrow();
    Letters letters = new Letters();
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      // The second page is for printing, and its bars may reach into the margins.
      letters.setStartPage(3);
      String text = letters.getText(pdf);
      assertEquals(2 * 120 + 12, text.chars().filter(sign -> sign == 'Q').count());
      assertEquals(12 * 9 + 12 * 10, text.chars().filter(sign -> sign == 'ß').count());
      letters.setStartPage(1);
      letters.setEndPage(1);
      text = letters.getText(pdf);
      assertEquals(190, text.chars().filter(sign -> sign == 'Z').count());
    }
    assertTrue(letters.right <= RIGHT, letters.right + " pt");
  }

  private static void copy(Path to) throws IOException {
    try (Stream<Path> files = Files.walk(PATTERN)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = to.resolve(PATTERN.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }

  private static void replace(Path file, String pattern, String with) throws IOException {
    Files.writeString(file, Files.readString(file).replaceFirst(pattern, with));
  }

  /** Knows how far right a letter stands. */
  private static final class Letters extends PDFTextStripper {
    private double right;

    @Override
    protected void processTextPosition(TextPosition text) {
      if (!text.getUnicode().isBlank()) {
        right = Math.max(right, text.getXDirAdj() + text.getWidthDirAdj());
      }
      super.processTextPosition(text);
    }
  }
}
