package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.book.NestedTilesDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.document.manual.Look;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.SallowCase;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** PDF/A-3a and PDF/UA-1 by an independent validator, in one class for it is slow to start. */
class ConformanceTest {
  @BeforeAll
  static void initialise() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  @Test
  void completeDocumentConforms() throws Exception {
    byte[] file = Documents.complete(Paper.A4, Locale.UK);
    conforms(file, PDFAFlavour.PDFUA_1);
    conforms(file, PDFAFlavour.PDFA_3_A);
  }

  @Test
  void tilesAloneConform() throws Exception {
    byte[] file = Documents.tiles(Paper.LETTER, Locale.US);
    conforms(file, PDFAFlavour.PDFUA_1);
    conforms(file, PDFAFlavour.PDFA_3_A);
  }

  @Test
  void plannedSheetsConform() throws Exception {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.US), writer.styles(), writer.lettering());
    EvaluatedPattern pattern = new Specimen(Paper.SHARED, Locale.US).pattern();
    SheetPlan plan = planner.plan(pattern, Paper.SHARED);
    conforms(
        writer.write(
            new CompleteDocument(
                writer.manual(pattern, Look.STANDARD, new Findings()), plan, Plates.of(planner)),
            new Findings()),
        PDFAFlavour.PDFUA_1);
    conforms(
        writer.write(new TilesDocument(pattern, plan, Plates.of(planner)), new Findings()),
        PDFAFlavour.PDFA_3_A);
  }

  @Test
  void largeSheetsAndProjectorConform() throws Exception {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.US), writer.styles(), writer.lettering());
    EvaluatedPattern pattern = new Specimen(Paper.SHARED, Locale.US).pattern();
    for (Paper paper : List.of(Paper.ROLL36, Paper.PROJECTOR)) {
      byte[] file =
          writer.write(
              new TilesDocument(pattern, planner.plan(pattern, paper), Plates.of(planner)),
              new Findings());
      conforms(file, PDFAFlavour.PDFUA_1);
      conforms(file, PDFAFlavour.PDFA_3_A);
    }
  }

  @Test
  void theDemoConforms() throws Exception {
    conforms(Demo.of("L", Look.STANDARD).complete(Paper.LETTER), PDFAFlavour.PDFUA_1);
    conforms(Demo.of("S", Look.STANDARD).instructions(Paper.SHARED), PDFAFlavour.PDFA_3_A);
  }

  @Test
  void largePrintConforms() throws Exception {
    byte[] file = Demo.of("M", Look.LARGE_PRINT).instructions(Paper.A4);
    conforms(file, PDFAFlavour.PDFUA_1);
    conforms(file, PDFAFlavour.PDFA_3_A);
  }

  @Test
  void allSizesConform() throws Exception {
    List<Demo> sizes =
        List.of("S", "M", "L").stream().map(size -> Demo.of(size, Look.STANDARD)).toList();
    byte[] file = Demo.allSizes(sizes, Paper.A4);
    conforms(file, PDFAFlavour.PDFUA_1);
    conforms(file, PDFAFlavour.PDFA_3_A);
  }

  @Test
  void sizesStackedAsLayersConform() throws Exception {
    List<EvaluatedPattern> sizes =
        List.of("S", "M", "L").stream()
            .map(size -> Demo.of(size, Look.STANDARD).manual().pattern())
            .toList();
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.UK), writer.styles(), writer.lettering());
    for (Paper paper : List.of(Paper.A4, Paper.PROJECTOR)) {
      byte[] file =
          writer.write(
              new NestedTilesDocument(
                  sizes.get(0), planner.nested(sizes, paper), Plates.of(planner)),
              new Findings());
      conforms(file, PDFAFlavour.PDFUA_1);
      conforms(file, PDFAFlavour.PDFA_3_A);
    }
  }

  @Test
  void picturesFromOutsideConform(@TempDir Path home) throws Exception {
    List<Path> files = SallowCase.published(SallowCase.folder(home), home.resolve("out"), "S");
    Path file =
        files.stream().filter(one -> one.toString().endsWith("a4.pdf")).findFirst().orElseThrow();
    conforms(Files.readAllBytes(file), PDFAFlavour.PDFUA_1);
    conforms(Files.readAllBytes(file), PDFAFlavour.PDFA_3_A);
  }

  private static void conforms(byte[] file, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      List<String> failures =
          result.getTestAssertions().stream()
              .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
              .map(assertion -> assertion.getRuleId() + " " + assertion.getMessage())
              .distinct()
              .toList();
      assertEquals(List.of(), failures);
      assertEquals(true, result.isCompliant());
    }
  }
}
