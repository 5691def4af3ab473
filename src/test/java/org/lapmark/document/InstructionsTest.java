package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.document.manual.Look;
import org.lapmark.document.section.Pictures;
import org.lapmark.document.section.Sections;
import org.lapmark.document.section.StepPages;
import org.lapmark.figure.Figure;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.LayWords;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.print.paper.Paper;
import org.lapmark.text.Block;
import org.lapmark.text.PlainText;
import org.lapmark.text.Steps;
import org.lapmark.wording.Wording;

/** What makers read in the demo's documents. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class InstructionsTest {
  private static final double PIXELS = 6;

  private Demo demo;
  private byte[] document;
  private List<String> pages;
  private String all;

  @BeforeAll
  void publish() throws Exception {
    demo = Demo.of("M", Look.STANDARD);
    document = demo.complete(Paper.A4);
    pages = Documents.texts(document);
    all = String.join(" ", pages);
  }

  private Wording wording() {
    return demo.writer().wording(Locale.UK);
  }

  private List<Steps.Step> steps() {
    return demo.manual().steps().all();
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
  }

  /** A step's words as a reader gets them. */
  private String words(Steps.Step step) {
    PlainText writer =
        new StepPages(demo.manual(), wording(), new Pictures(), Sections.pages())
            .plain(demo.manual().printing());
    return writer.text(step.body());
  }

  @Test
  void everyStepIsThereInOrderWithEveryWord() {
    int from = all.indexOf("Making it", all.indexOf("Labels to cut out"));
    for (Steps.Step step : steps()) {
      String title = step.number() + " " + demoTitle(step);
      from = all.indexOf(title, from);
      assertTrue(from >= 0, title);
      for (String paragraph : words(step).split("\n")) {
        int at = all.indexOf(plain(paragraph), from);
        assertTrue(at >= 0, () -> "no “" + plain(paragraph) + "” in its place in " + all);
      }
    }
  }

  private static String demoTitle(Steps.Step step) {
    return PlainText.wordsOnly().inlines(step.title());
  }

  @Test
  void everyPrintedValueIsThere() {
    List<PrintedValue> values = demo.manual().printing().all();
    assertTrue(values.size() > 20);
    for (PrintedValue value : values) {
      assertTrue(all.contains(plain(value.text())), value.text());
    }
  }

  @ParameterizedTest
  @CsvSource({"S,a4", "M,letter", "L,shared"})
  void aStepNeverPartsFromItsFigure(String size, String id) throws Exception {
    Paper paper =
        List.of(Paper.A4, Paper.LETTER, Paper.SHARED).stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow();
    Demo other = Demo.of(size, Look.STANDARD);
    List<String> texts = Documents.texts(other.instructions(paper));
    int figures = 0;
    for (Steps.Step step : other.manual().steps().all()) {
      String title = step.number() + " " + demoTitle(step);
      String page = texts.stream().filter(text -> text.contains(title)).findFirst().orElseThrow();
      for (Block.Figure block : step.body().figures()) {
        Figure figure = other.manual().figures().get(block);
        assertTrue(page.contains(plain(figure.caption())), title + ": " + figure.caption());
        figures++;
      }
    }
    assertTrue(figures > 12);
  }

  @Test
  void labelsHaveALineAllAround() throws IOException {
    int page = 0;
    while (!pages.get(page).contains("keep each label")) {
      page++;
    }
    BufferedImage image;
    try (PDDocument read = Loader.loadPDF(document)) {
      image = new PDFRenderer(read).renderImage(page, (float) (PIXELS * 25.4 / 72));
    }
    // Left of the first column, between the two, and right of the second.
    double right = longestLine(image, 186, 191);
    assertTrue(right > 80, "only " + right + " mm");
    assertTrue(longestLine(image, 19, 22) >= right, "the left border is cut off");
    assertTrue(longestLine(image, 102, 107) >= right, "no border in the middle");
  }

  /** How much of the page's height the longest upright line between two places is drawn on. */
  private static double longestLine(BufferedImage image, double from, double to) {
    int longest = 0;
    for (int x = (int) (from * PIXELS); x < to * PIXELS; x++) {
      int dark = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        dark += (image.getRGB(x, y) & 0xff) < 230 ? 1 : 0;
      }
      longest = Math.max(longest, dark);
    }
    return longest / PIXELS;
  }

  @Test
  void contentsNameThePagesOfTheirSections() {
    Matcher row =
        Pattern.compile(
                "(Materials|What to cut|Cutting layouts|Making it|Take care|Colophon) (\\d+)")
            .matcher(pages.get(2));
    List<String> found = new ArrayList<>();
    while (row.find()) {
      found.add(row.group(1));
      String page = pages.get(Integer.parseInt(row.group(2)) - 1);
      assertTrue(page.contains(row.group(1)), row.group());
    }
    assertEquals(6, found.size(), pages.get(2));
  }

  @Test
  void cautionsStandOnceAtTheirFirstStepAndAreGathered() {
    for (String hazard : List.of("blades", "iron", "machine", "melting")) {
      String line = wording().text("caution." + hazard + ".short");
      int at = all.indexOf("Caution " + line);
      assertTrue(at >= 0, line);
      assertEquals(at, all.lastIndexOf("Caution " + line));
    }
    assertTrue(all.indexOf("Close the blade") > all.indexOf("1 Cut and mark"));
    assertTrue(all.indexOf("Close the blade") < all.indexOf("2 Fuse the interfacing"));
    int gathered = all.indexOf("Take care", all.indexOf("14 Turn the bag out"));
    assertTrue(all.indexOf("Don’t load this article with more than 1.5 kg.") > gathered);
    assertTrue(all.indexOf("ask a bicycle mechanic") > gathered);
    for (String other : List.of("adhesive", "rivets", "magnets", "cords")) {
      assertFalse(all.contains(wording().text("caution." + other + ".title")), other);
    }
  }

  @Test
  void listsOnlyWhatStepsUse() {
    for (String listed :
        List.of("hand-sewing needle", "seams: 3 mm, about 8 to the inch", "topstitching: 3.5 mm")) {
      assertTrue(all.contains(listed), listed);
    }
    assertFalse(all.contains("Abbreviations"), "the demo's steps use none");
    assertFalse(all.contains("gathering"), "nothing is gathered");
  }

  @Test
  void saysWhatToBuy() {
    LayWords words = new LayWords(wording(), demo.manual().form());
    for (ClothPlan plan : demo.manual().cloths()) {
      plan.lays()
          .forEach(
              lay -> {
                assertTrue(all.contains(plain(words.amount(lay.purchase()))));
                assertTrue(all.contains(plain(words.width(lay.width()))));
                assertTrue(all.contains(plain(words.purchase(lay))));
              });
    }
    for (String part :
        List.of(
            "Coil zip, size 5 23 cm (9 in) long 12 mm (1/2 in) visible between its seams",
            "Piping cord 4 mm in diameter 5% is added for ends. 1.1 m or 1 1/4 yd",
            "Instead: A thin, closely woven polyester.",
            "about 150 m in all")) {
      assertTrue(all.contains(part), () -> part + " in " + all);
    }
  }

  @Test
  void everyPieceWithoutPaperHasALabel() {
    String labels = pages.stream().filter(page -> page.contains("Cut along")).findAny().orElse("");
    int at = all.indexOf("cut along the dashed lines");
    assertTrue(at > 0, labels);
    String behind = all.substring(at);
    demo.manual().pattern().pieces().stream()
        .filter(piece -> piece.statedSize().isPresent())
        .forEach(
            piece ->
                piece
                    .cuts()
                    .forEach(
                        cut ->
                            assertTrue(
                                behind.contains(
                                    piece.number()
                                        + " "
                                        + piece.name()
                                        + " Cut "
                                        + cut.count()
                                        + " from "
                                        + cut.materialName()),
                                piece.name())));
  }

  @Test
  void instructionsAloneSayTheSameWithoutTiles() throws Exception {
    List<String> alone = Documents.texts(demo.instructions(Paper.A4));
    int tiles = demo.plan(Paper.A4).tiles().size();
    assertEquals(pages.size() - tiles, alone.size());
    String text = String.join(" ", alone);
    assertTrue(text.contains("have a file of their own: print its pages 1 and 2."), text);
    for (int i = 0; i < alone.size(); i++) {
      assertTrue(alone.get(i).contains("Page " + (i + 1) + " of " + alone.size()));
    }
  }

  @Test
  void largePrintSaysTheSameInLargerType() throws Exception {
    Demo large = Demo.of("M", Look.LARGE_PRINT);
    String text = String.join(" ", Documents.texts(large.instructions(Paper.A4)));
    assertTrue(text.contains("Large print edition"));
    for (PrintedValue value : large.manual().printing().all()) {
      assertTrue(text.contains(plain(value.text())), value.text());
    }
    for (Steps.Step step : steps()) {
      assertTrue(text.contains(step.number() + " " + demoTitle(step)), text);
      for (String paragraph : words(step).split("\n")) {
        assertTrue(text.contains(plain(paragraph)), paragraph);
      }
    }
  }
}
