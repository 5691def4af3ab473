package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Request;

/** What documents say of pages that no line runs over, and what is there when they are left out. */
class BlankPagesTest {
  private static final Path CURTAIN =
      Path.of("src", "test", "resources", "org", "lapmark", "publish", "curtain");

  private static final String ON_BLANK = "No line of the pattern runs over this page";

  @TempDir Path home;

  private List<List<String>> published(Extra... extras) throws IOException {
    List<Path> written =
        new Publisher(TemplateFolder.bundled())
            .publish(CURTAIN, new Request(List.of(), List.of(Paper.A4), home).with(extras))
            .written();
    List<List<String>> files = new ArrayList<>();
    for (String end : List.of("one-a4.pdf", "one-a4-instructions.pdf", "one-a4-tiles.pdf")) {
      Path file =
          written.stream().filter(each -> each.toString().endsWith(end)).findFirst().orElseThrow();
      files.add(texts(file));
    }
    return files;
  }

  private static List<String> texts(Path file) throws IOException {
    List<String> texts = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        texts.add(stripper.getText(document).replace('\u00a0', ' ').replaceAll("\\s+", " "));
      }
    }
    return texts;
  }

  /** The pages that a document names as such that nobody needs to print. */
  private static TreeSet<Integer> listed(List<String> texts) {
    Matcher sentence =
        Pattern.compile("Pages ([0-9, –]+) show the inside of pieces and no line")
            .matcher(String.join(" ", texts));
    assertTrue(sentence.find(), texts::toString);
    TreeSet<Integer> pages = new TreeSet<>();
    for (String part : sentence.group(1).split(",")) {
      String[] ends = part.strip().split("–");
      for (int i = Integer.parseInt(ends[0]); i <= Integer.parseInt(ends[ends.length - 1]); i++) {
        pages.add(i);
      }
    }
    return pages;
  }

  private static TreeSet<Integer> saying(List<String> texts, String words) {
    TreeSet<Integer> pages = new TreeSet<>();
    for (int i = 0; i < texts.size(); i++) {
      if (texts.get(i).contains(words)) {
        pages.add(i + 1);
      }
    }
    return pages;
  }

  @Test
  void theyAreListedByTheirNumbersOrLeftOutOnRequest() throws IOException {
    List<List<String>> all = published();
    TreeSet<Integer> blank = saying(all.get(0), ON_BLANK);
    assertTrue(blank.size() >= 8, blank.toString());
    // Those of the complete document, and those of the tiles in a file of their own.
    assertEquals(blank, listed(all.get(0)));
    assertEquals(saying(all.get(2), ON_BLANK), listed(all.get(1)));

    List<List<String>> less = published(Products.WITHOUT_BLANK_PAGES);
    for (int i = 0; i < 3; i++) {
      assertEquals(new TreeSet<>(), saying(less.get(i), ON_BLANK));
      int gone = i == 1 ? 0 : blank.size();
      assertEquals(all.get(i).size() - gone, less.get(i).size());
    }
    String text = String.join(" ", less.get(0));
    assertTrue(
        text.contains(blank.size() + " pages that would show the inside of pieces and no line"));
    assertFalse(text.contains("needn’t print"));
    int pages = less.get(0).size();
    for (int i = 0; i < pages; i++) {
      assertTrue(less.get(0).get(i).contains("Page " + (i + 1) + " of " + pages));
    }
    // The table of the page map states codes and pages in one order.
    int first = pages - less.get(2).size() + 1;
    assertTrue(text.contains("print pages " + first + " to " + pages), text);
    Matcher row = Pattern.compile("1 Curtain ((?:[A-Z]\\d, )+[A-Z]\\d) ([0-9, –]+)").matcher(text);
    assertTrue(row.find(), text);
    String[] codes = row.group(1).split(", ");
    assertEquals(less.get(2).size(), codes.length);
    assertEquals(first + "–" + pages, row.group(2).strip());
    for (int i = 0; i < codes.length; i++) {
      assertTrue(less.get(2).get(i).contains(codes[i]), codes[i]);
    }
  }
}
