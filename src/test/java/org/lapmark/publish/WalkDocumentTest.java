package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.template.Templates;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.request.Request;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** The walk of seams at the end of the documents, as a whole run writes it. */
class WalkDocumentTest {
  private static final Path DEMO = Path.of("content", "towpath-handlebar-bag");
  private static final String STEM = "towpath-handlebar-bag-1-M-a4";

  @TempDir Path home;

  private Path published(String name, boolean walked) throws IOException {
    Templates templates = TemplateFolder.bundled();
    Request request = new Request(List.of("M"), List.of(Paper.A4), home.resolve(name));
    Result result =
        new Publisher(templates).publish(DEMO, walked ? request.with(Products.WALK) : request);
    assertEquals(3, result.written().size());
    return home.resolve(name).resolve(DEMO.getFileName());
  }

  @Test
  void followsTheDocumentsOfOneSizeWhenItIsAskedFor() throws Exception {
    Path plain = published("plain", false);
    Path walked = published("walked", true);
    for (String kind : List.of("", "-instructions")) {
      String without = text(plain.resolve(STEM + kind + ".pdf"));
      assertFalse(without.contains("Seams walked"), kind);
      String with = text(walked.resolve(STEM + kind + ".pdf"));
      int contents = with.indexOf("Seams walked");
      int page = with.indexOf("Seams walked", contents + 1);
      assertTrue(contents >= 0 && page > with.indexOf("Colophon", contents + 20), kind);
      assertTrue(with.indexOf("far end seam (a ring): its sides agree") > page, kind);
      assertTrue(
          with.contains("1 1 End, rim 449.89 mm 0.00 mm 0.00 mm within 0.5 mm"),
          with.substring(page));
    }
    assertArrayEquals(
        Files.readAllBytes(plain.resolve(STEM + "-tiles.pdf")),
        Files.readAllBytes(walked.resolve(STEM + "-tiles.pdf")));
    byte[] complete = Files.readAllBytes(walked.resolve(STEM + ".pdf"));
    VeraGreenfieldFoundryProvider.initialise();
    conforms(complete, PDFAFlavour.PDFUA_1);
    conforms(complete, PDFAFlavour.PDFA_3_A);
  }

  private static String text(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
  }

  private static void conforms(byte[] file, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      assertTrue(result.isCompliant(), result.getTestAssertions()::toString);
    }
  }
}
