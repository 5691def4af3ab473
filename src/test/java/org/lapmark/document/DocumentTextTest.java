package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.manual.Look;
import org.lapmark.print.paper.Paper;

/** What readers, and programs that read aloud, get out of a document. */
class DocumentTextTest {
  @Test
  void saysEverythingInOrder() throws Exception {
    List<String> texts = Documents.texts(Documents.complete(Paper.A4, Locale.UK));
    String all = String.join(" ", texts);
    int from = 0;
    for (String part :
        List.of(
            "Tide & Table",
            "Harbour roll for the office",
            "Size M",
            "450 mm (17 3/4 in) wide",
            "Designed by Ines Calloway",
            "Edition 2, 9 March 2027",
            "10 cm",
            "Contents",
            "Labels to cut out",
            "Before you begin",
            "Included: 10 mm (3/8 in) on every edge.",
            "Finished measurements",
            "Width, rolled out 450 mm (17 3/4 in)",
            "Height, flap up 315 mm (12 3/8 in)",
            "What to cut",
            "3 pieces, 8 cuts in all, from 2 materials.",
            "1 Body waxed cotton 2 a pair printed piece",
            "ticking 1 –",
            "4 Pocket waxed cotton 3 –",
            "7 Binding ticking 2 – 35 mm (1 3/8 in) × 900 mm (35 7/16 in)",
            "on the bias",
            "Page map",
            "print pages 6 to 9, 4 tiles",
            "A1, page 6",
            "B2, page 9",
            "1 Body A1, A2, B1, B2 6–9",
            "4 Pocket B1, B2 8, 9",
            "Colophon",
            "edition 2 of 9 March 2027",
            "The strap is now cut from webbing.",
            "sell up to fifty a year",
            "Lapmark",
            "Labels to cut out",
            "7 Binding Cut 2 from ticking")) {
      int at = all.indexOf(part, from);
      assertTrue(at >= 0, () -> "no “" + part + "” in its place in: " + all);
      from = at;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a4", "letter", "shared"})
  void countsPagesOverTextAndTiles(String id) throws Exception {
    Paper paper =
        List.of(Paper.A4, Paper.LETTER, Paper.SHARED).stream()
            .filter(p -> p.id().equals(id))
            .findFirst()
            .orElseThrow();
    List<String> complete = Documents.texts(Documents.complete(paper, Locale.UK));
    assertTrue(complete.size() > 4 + 4);
    pagesCounted(complete);
    List<String> tiles = Documents.texts(Documents.tiles(paper, Locale.UK));
    assertEquals(4, tiles.size());
    pagesCounted(tiles);
  }

  private static void pagesCounted(List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      String wanted = "Page " + (i + 1) + " of " + texts.size();
      String text = texts.get(i);
      assertTrue(text.contains(wanted), () -> "no " + wanted + " in " + text);
      assertEquals(
          text.indexOf("Page " + (i + 1) + " of"), text.lastIndexOf("Page " + (i + 1) + " of"));
    }
  }

  @Test
  void namesTilesByThePagesTheyAreOn() throws Exception {
    List<String> texts = Documents.texts(Documents.complete(Paper.A4, Locale.UK));
    assertTrue(texts.get(5).contains("A1 Page 6 of"), texts.get(5));
    assertTrue(texts.get(8).contains("B2 Page 9 of"), texts.get(8));
    assertTrue(texts.get(5).contains("Body, cut 2"), texts.get(5));
  }

  @Test
  void headsTextPagesButNotTheCover() throws Exception {
    List<String> texts = Documents.texts(Documents.complete(Paper.A4, Locale.UK));
    String head = "Harbour roll for the office, size M Tide & Table, edition 2";
    assertFalse(texts.get(0).contains(head));
    assertTrue(texts.get(2).contains(head), texts.get(2));
    assertTrue(texts.get(3).contains(head), texts.get(3));
  }

  @Test
  void keepsLettersApart() throws Exception {
    String all = String.join(" ", Documents.texts(Documents.complete(Paper.A4, Locale.UK)));
    assertFalse(all.codePoints().anyMatch(c -> c >= 0xFB00 && c <= 0xFB06), "a ligature");
  }

  @Test
  void speaksAmerican() throws Exception {
    String all = String.join(" ", Documents.texts(Documents.complete(Paper.LETTER, Locale.US)));
    assertTrue(all.contains("March 9, 2027"), all);
    assertTrue(all.contains("onto the fabric"), all);
    assertFalse(all.contains("cloth"), all);
  }

  @Test
  void printsMarkupAndStrangeCharactersAsTheyAre() throws Exception {
    Specimen specimen = new Specimen(Paper.A4, Locale.UK);
    String title = "A <b>&amp;</b> ${1+1} \u0001\u202Eroll 龍 ]]>";
    byte[] file = Documents.complete(specimen, specimen.pattern(title), Locale.UK);
    List<String> texts = Documents.texts(file);
    assertTrue(texts.get(0).contains("A <b>&amp;</b> ${1+1} roll ☐ ]]>"), texts.get(0));
    assertTrue(texts.get(2).contains("A <b>&amp;</b> ${1+1} roll ☐ ]]>, size M"), texts.get(2));
  }

  @Test
  void doesWithoutTilesWhenNoPieceNeedsPaper() throws Exception {
    Specimen specimen = new Specimen(Paper.A4, Locale.UK);
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    byte[] file =
        writer.write(
            new CompleteDocument(
                writer.manual(
                    specimen.pattern(), Look.STANDARD, new org.lapmark.finding.Findings()),
                new org.lapmark.print.sheet.SheetPlan(Paper.A4, 0, 0, List.of(), List.of()),
                specimen),
            new org.lapmark.finding.Findings());
    String all = String.join(" ", Documents.texts(file));
    assertFalse(all.contains("Page map"), all);
    assertTrue(all.contains("Page 5 of 5"), all);
  }
}
