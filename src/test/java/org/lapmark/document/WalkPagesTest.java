package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.lapmark.document.pdf.FontFiles;
import org.lapmark.document.pdf.Glyphs;
import org.lapmark.document.pdf.Imprint;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.document.section.WalkPages;
import org.lapmark.document.setting.HtmlPages;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.document.template.Styles;
import org.lapmark.document.template.TemplateEngine;
import org.lapmark.document.template.Templates;
import org.lapmark.document.template.Words;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.read.PatternReader;
import org.lapmark.wording.Wording;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class WalkPagesTest {
  private static final String SHELL =
      "<html lang='en-GB'><head><title>t</title><meta name='subject' content='s'/>"
          + "<meta name='description' content='s'/>"
          + "<style>html { font-family: 'Source Sans Pro' } table { width: 100% }</style></head>"
          + "<body><h1>t</h1><#include '/document/sections/walk.ftlh'></body></html>";

  @BeforeAll
  static void initialise() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static byte[] page(String folder, String size) throws Exception {
    Map<String, byte[]> files = new TreeMap<>(Specimen.templates().files());
    files.put("shell.ftlh", SHELL.getBytes(StandardCharsets.UTF_8));
    Templates templates = new Templates(files);
    Wording wording = Words.of(templates, Locale.UK);
    EvaluatedPattern pattern =
        Grader.grade(
            PatternReader.read(Path.of(folder), new Findings()),
            Variant.ofSize(size),
            new Findings());
    FontFiles fonts = FontFiles.load();
    Glyphs glyphs = new Glyphs(fonts);
    Map<String, Object> model =
        Map.of("walk", new RecordModel(glyphs).map(WalkPages.of(pattern, wording)));
    String html = new TemplateEngine(templates).fill("shell.ftlh", model, wording);
    Imprint imprint = new Imprint("t", "a", "s", "en-GB", LocalDate.of(2027, 1, 1), "p");
    try (PdfBook book = new PdfBook(imprint, Styles.of(templates), fonts, glyphs)) {
      HtmlPages.render(book, html, Map.of(), 0);
      return book.save();
    }
  }

  @Test
  void everySeamOfTheDemoIsToldInWords() throws Exception {
    String text = String.join(" ", Documents.texts(page("content/towpath-handlebar-bag", "M")));
    assertTrue(text.contains("Every seam of size M"), text);
    assertTrue(text.contains("end seam (a ring): its sides agree"), text);
    assertTrue(
        text.contains("3 Rear strip, left edge; coil zip, size 5; 4 Front strip, left edge"), text);
    assertTrue(text.contains("449.89 mm 0.00 mm 0.00 mm within 0.5 mm"), text);
    assertTrue(text.contains("112.00 mm double notch of 1 End, rim 2 112.00 mm"), text);
    assertTrue(text.contains("make 180 degrees together: the edge goes straight on"), text);
    assertTrue(text.contains("All edges have an allowance of 10 mm (3/8 in)."), text);
    assertTrue(text.contains("make 6 clips 8 mm (5/16 in) deep, 7 mm apart"), text);
  }

  /** What is caught is called as it is stated, not by the formula of its width. */
  @Test
  void whatIsCaughtHasTheNameOfItsAttachment() throws Exception {
    String text =
        String.join(
            " ",
            Documents.texts(page("src/test/resources/org/lapmark/shelf/millrace-drum-bag", "S")));
    assertTrue(text.contains("Caught on side 1: left tab, "), text);
    assertTrue(text.contains("Caught on side 1: right tab, "), text);
    assertFalse(text.contains("zip panel"), text);
  }

  /** The panel of the whole front is cut by no piece; the half that it is unfolded from is. */
  @Test
  void derivedPanelsHaveTheNamesOfTheirPieces() throws Exception {
    String text =
        String.join(
            " ", Documents.texts(page("src/test/resources/org/lapmark/shelf/darted-bodice", "12")));
    assertTrue(text.contains("2 Back, waist; 1 Front, waist; 2 Back, waist"), text);
    assertFalse(text.contains("front whole"), text);
  }

  @Test
  void whatDiffersIsSaidInWordsToo() throws Exception {
    String text =
        String.join(
            " ", Documents.texts(page("src/test/resources/org/lapmark/document/walk", "S")));
    assertTrue(text.contains("round: its sides differ"), text);
    assertTrue(text.contains("102.00 mm 0.00 mm −2.00 mm beyond 0.5 mm"), text);
    assertTrue(text.contains("notch of 2 Lid, bottom edge miss by 3.00 mm"), text);
    assertTrue(text.contains("no partner"), text);
    assertTrue(text.contains("1 basted"), text);
    assertTrue(
        text.contains("Caught on side 2: zip, 12.00 mm wide, its middle at 50.00 mm."), text);
    assertTrue(text.contains("The allowances differ, from 6 mm (1/4 in) to 10 mm (3/8 in)."), text);
  }

  @Test
  void itIsTaggedAndArchivable() throws Exception {
    byte[] file = page("content/towpath-handlebar-bag", "S");
    for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A)) {
      try (PDFAParser parser =
              Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), flavour);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        ValidationResult result = validator.validate(parser);
        assertEquals(true, result.isCompliant(), result.getTestAssertions()::toString);
      }
    }
  }
}
