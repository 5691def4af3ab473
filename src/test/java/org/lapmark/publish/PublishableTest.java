package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Findings;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Request;
import org.lapmark.source.FaultCase;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** What passes the check is published; what can't be published is found by it. */
class PublishableTest {
  private static final Path CASES =
      Path.of("src", "test", "resources", "org", "lapmark", "publish", "publishable");

  /** Of a machine that does other things as well; a chain that is not cut short takes an hour. */
  private static final Duration LONGEST = Duration.ofMinutes(1);

  private static Publisher publisher;

  @TempDir Path home;

  @BeforeAll
  static void loadTemplates() throws IOException {
    publisher = new Publisher(TemplateFolder.bundled());
  }

  @TestFactory
  Stream<DynamicTest> whatPassesIsPublished() throws IOException {
    return FaultCase.all(CASES).stream()
        .map(one -> DynamicTest.dynamicTest(one.name(), () -> tryOut(one)));
  }

  private Findings checked(Path folder) {
    Outcome outcome = publisher.check(List.of(folder), new Listener() {}).get(0);
    assertEquals(Optional.empty(), outcome.failure());
    return outcome.result().findings();
  }

  private void tryOut(FaultCase one) throws IOException {
    Path folder = written(one);
    Findings found =
        Assertions.assertTimeoutPreemptively(LONGEST, () -> checked(folder), one.name());
    assertEquals(
        String.join("\n", one.expected()),
        String.join("\n", found.sorted().stream().map(FaultCase::written).toList()));
    if (!found.hasErrors()) {
      Result result = publish(folder);
      assertEquals(found.sorted(), result.findings().sorted());
      assertFalse(result.written().isEmpty());
    }
  }

  private Path written(FaultCase one) throws IOException {
    Path parent = Files.createTempDirectory(home, "case");
    one.read(parent, new Findings());
    return parent.resolve("pouch");
  }

  private Result publish(Path folder) throws IOException {
    return publisher.publish(
        folder, new Request(List.of(), List.of(Paper.A4), folder.resolveSibling("published")));
  }

  private static FaultCase named(String name) throws IOException {
    return FaultCase.all(CASES).stream()
        .filter(one -> one.name().endsWith(": " + name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void withoutASizeTableNothingIsPublishedAndNothingFails() throws IOException {
    for (String table : List.of("", "leaf_width,mm,\"40\n", "\uFEFF\n")) {
      Path folder = written(FaultCase.all(CASES).get(0));
      Files.writeString(folder.resolve("sizes.csv"), table);
      Outcome outcome =
          publisher
              .publish(
                  List.of(folder),
                  new Request(List.of(), List.of(Paper.A4), home.resolve("out")),
                  new Listener() {})
              .get(0);
      assertEquals(Optional.empty(), outcome.failure());
      assertTrue(outcome.result().findings().hasErrors());
      assertEquals(List.of(), outcome.result().written());
    }
  }

  @Test
  void codeIsSetInAnEmbeddedFaceOfItsOwn() throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    List<Path> files = publish(written(named("code in all kinds of text"))).written();
    Path instructions =
        files.stream().filter(file -> file.toString().contains("S-a4-instr")).findFirst().get();
    boolean found = false;
    try (PDDocument document = Loader.loadPDF(instructions.toFile())) {
      for (PDPage page : document.getPages()) {
        for (var name : page.getResources().getFontNames()) {
          var font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          found |= font.getName().endsWith("LiberationMono");
        }
      }
    }
    assertTrue(found);
    for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A)) {
      try (PDFAParser parser =
              Foundries.defaultInstance()
                  .createParser(Files.newInputStream(instructions), flavour);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        assertTrue(validator.validate(parser).isCompliant(), flavour.toString());
      }
    }
  }
}
