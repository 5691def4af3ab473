package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Request;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** The second demo has what the first lacks: options, notes with headings, pieces on the fold. */
class RainHatDocumentsTest {
  @TempDir Path home;

  @Test
  void everyDocumentOfOneSizeConforms() throws Exception {
    Outcome outcome =
        new Publisher(TemplateFolder.bundled())
            .publish(
                List.of(Path.of("content", "slipway-rain-hat")),
                new Request(List.of("58"), List.of(Paper.A4), home),
                new Listener() {})
            .get(0);
    assertEquals(List.of(), outcome.result().findings().sorted());
    VeraGreenfieldFoundryProvider.initialise();
    int pdfs = 0;
    for (Path file : outcome.result().written()) {
      if (file.toString().endsWith(".pdf")) {
        pdfs++;
        byte[] pdf = Files.readAllBytes(file);
        for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A)) {
          try (PDFAParser parser =
                  Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
              PDFAValidator validator =
                  Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            assertTrue(
                result.isCompliant(),
                file.getFileName() + " " + flavour + " " + result.getFailedChecks());
          }
        }
      }
    }
    assertEquals(3, pdfs);
  }
}
