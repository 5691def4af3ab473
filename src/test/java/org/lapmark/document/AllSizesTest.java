package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.lapmark.document.book.SizesDocument;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.document.section.CuttingTable;
import org.lapmark.document.section.ShoppingPage;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.print.paper.Paper;
import org.lapmark.wording.Wording;

/** What makers read in the demo's instructions of all sizes. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AllSizesTest {
  private static final List<String> SIZES = List.of("S", "M", "L");

  private List<Demo> demos;
  private Wording wording;
  private List<String> pages;
  private String all;

  @BeforeAll
  void publish() throws Exception {
    demos = SIZES.stream().map(size -> Demo.of(size, Look.STANDARD)).toList();
    wording = demos.get(0).writer().wording(Locale.UK);
    pages = Documents.texts(Demo.allSizes(demos, Paper.A4));
    all = String.join(" ", pages);
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
  }

  private static String led(List<String> texts) {
    return "S " + texts.get(0) + ", M " + texts.get(1) + ", L " + texts.get(2);
  }

  /** The cutting table of each size by itself. */
  private List<List<CuttingTable.CutPiece>> tables() {
    return demos.stream()
        .map(demo -> new CuttingTable(demo.manual().pattern(), wording).pieces())
        .toList();
  }

  /** A short text of the author's in one size. */
  private String printed(TemplateText text, EvaluatedPattern pattern) {
    return SizeWords.plain(
        text.print(
            pattern.scope(),
            pattern.variant(),
            pattern.source().masthead().form().with(NumberWords.of(wording))));
  }

  private static int times(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }

  @Test
  void stepsListWhatDiffersBySize() {
    List<List<PrintedValue>> bySize =
        demos.stream().map(demo -> demo.manual().printing().all()).toList();
    Map<String, Integer> leds = new TreeMap<>();
    Map<String, Integer> begun = new TreeMap<>();
    List<String> same = new ArrayList<>();
    for (int i = 0; i < bySize.get(0).size(); i++) {
      int at = i;
      List<PrintedValue> one = bySize.stream().map(list -> list.get(at)).toList();
      assertEquals(1, one.stream().map(PrintedValue::expression).distinct().count(), one::toString);
      List<String> values = one.stream().map(value -> plain(value.text())).toList();
      if (values.stream().distinct().count() == 1) {
        same.add(values.get(0));
      } else {
        leds.merge(led(values), 1, Integer::sum);
        begun.merge("S " + values.get(0) + ", M ", 1, Integer::sum);
      }
    }
    // Each led value as often as its expressions are printed: none of them stands for another.
    leds.forEach((led, count) -> assertEquals(count, times(all, led), () -> led + " in " + all));
    for (String value : same) {
      assertTrue(all.contains(value), value);
      String start = "S " + value + ", M ";
      assertEquals(begun.getOrDefault(start, 0), times(all, start), start);
    }
    int differing = leds.values().stream().mapToInt(Integer::intValue).sum();
    assertTrue(differing >= 5, "only " + differing + " differ");
    assertTrue(
        leds.keySet().stream()
            .anyMatch(led -> all.contains("exactly the rim of the end, " + led + ".")),
        "the rim of each size");
  }

  @Test
  void finishedMeasurementsHaveAColumnASize() {
    assertTrue(all.contains("Measured S M L "), all);
    EvaluatedPattern first = demos.get(0).manual().pattern();
    int rows = first.source().finished().size();
    assertTrue(rows > 2);
    for (int i = 0; i < rows; i++) {
      StringBuilder row =
          new StringBuilder(printed(first.source().finished().get(i).label(), first));
      for (Demo demo : demos) {
        EvaluatedPattern pattern = demo.manual().pattern();
        row.append(' ').append(printed(pattern.source().finished().get(i).value(), pattern));
      }
      assertTrue(all.contains(plain(row.toString())), () -> row + " in " + all);
    }
  }

  @Test
  void shoppingHasAColumnASize() {
    assertTrue(all.contains("Material Usable width S M L "), all);
    assertTrue(all.contains("Part S M L "), all);
    List<ShoppingPage.Shopping> shopping =
        demos.stream().map(demo -> new ShoppingPage(demo.manual(), wording).build()).toList();
    int rows = 0;
    for (int i = 0; i < shopping.get(0).materials().size(); i++) {
      for (int j = 0; j < shopping.get(0).materials().get(i).amounts().size(); j++) {
        StringBuilder row =
            new StringBuilder(shopping.get(0).materials().get(i).amounts().get(j).width());
        for (ShoppingPage.Shopping one : shopping) {
          row.append(' ').append(one.materials().get(i).amounts().get(j).amount());
        }
        assertTrue(all.contains(plain(row.toString())), () -> row + " in " + all);
        rows++;
      }
    }
    assertTrue(rows > 6);
    for (int i = 0; i < shopping.get(0).parts().size(); i++) {
      StringBuilder row = new StringBuilder();
      for (ShoppingPage.Shopping one : shopping) {
        row.append(' ').append(one.parts().get(i).quantity().orElse("–"));
      }
      assertTrue(all.contains(plain(row.toString())), () -> row + " in " + all);
    }
  }

  @Test
  void cutSizesThatDifferHaveAColumnASizeAndOthersStandOnce() {
    String table = all.substring(all.indexOf("Sizes to rule onto the cloth No. Piece S M L "));
    List<List<CuttingTable.CutPiece>> tables = tables();
    int differing = 0;
    for (int i = 0; i < tables.get(0).size(); i++) {
      if (tables.get(0).get(i).cutSize().isEmpty()) {
        continue;
      }
      int at = i;
      List<String> sizes =
          tables.stream().map(pieces -> cutSize(pieces.get(at).cutSize().orElseThrow())).toList();
      if (sizes.stream().distinct().count() == 1) {
        assertEquals(all.indexOf(sizes.get(0)), all.lastIndexOf(sizes.get(0)), sizes.get(0));
        assertTrue(all.contains(sizes.get(0)), sizes.get(0));
      } else {
        String row = tables.get(0).get(i).name() + " " + String.join(" ", sizes);
        assertTrue(table.contains(row), () -> row + " in " + table);
        differing++;
      }
    }
    assertTrue(differing > 4);
  }

  private static String cutSize(CuttingTable.CutSize size) {
    return plain(
        size.across().text() + " × " + size.along().text() + (size.bias() ? " on the bias" : ""));
  }

  @Test
  void saysWhatItIsOfAndWhatItLeavesOut() {
    assertTrue(pages.get(0).contains("Sizes S, M, L"), pages.get(0));
    assertTrue(pages.get(1).startsWith("Towpath handlebar bag, all sizes"), pages.get(1));
    assertTrue(
        all.contains("Cutting layouts, the page map and labels are in the documents of one"));
    assertFalse(all.contains("Printing page"));
    assertFalse(all.contains("cut along the dashed lines"));
    assertEquals(2, all.split("Drawn in size M;", -1).length - 1);
    for (int i = 0; i < pages.size(); i++) {
      assertTrue(pages.get(i).contains("Page " + (i + 1) + " of " + pages.size()), pages.get(i));
    }
  }

  @Test
  void contentsNameThePagesOfTheirSections() {
    for (String section : List.of("Materials", "What to cut", "Making it", "Take care")) {
      int page = 0;
      for (int i = 2; i < pages.size() && page == 0; i++) {
        page = pages.get(i).contains("edition 1 " + section) ? i + 1 : 0;
      }
      assertTrue(pages.get(1).contains(section + " " + page), section + " " + page);
    }
  }

  @Test
  void oneSizeIsNotAllSizes() {
    Demo demo = demos.get(0);
    assertThrows(
        IllegalArgumentException.class, () -> new SizesDocument(List.of(demo.manual()), Paper.A4));
  }

  @Test
  void whatNotEverySizeHasIsLedByItsSizes() {
    SizeWords words = new SizeWords(SIZES, wording);
    assertEquals("two", words.text(List.of("two", "two", "two")));
    assertEquals("S 2, M 2, L 3", plain(words.text(List.of("2", "2", "3"))));
    assertEquals(
        List.of("firm", "S, L: thick"),
        words.lists(List.of(List.of("firm", "thick"), List.of("firm"), List.of("firm", "thick"))));
    assertEquals(
        List.of("S 1, M 2, L 3 wide"),
        words.lists(List.of(List.of("1"), List.of("2"), List.of("3 wide"))).stream()
            .map(AllSizesTest::plain)
            .toList());
  }
}
