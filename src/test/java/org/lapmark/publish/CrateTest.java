package org.lapmark.publish;

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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.publish.request.Request;
import org.lapmark.seam.Clipping;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.read.PatternReader;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * A crate most of whose pieces are ruled: nothing that is marked on them is lost, in any document.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CrateTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "org", "lapmark", "publish", "crate");

  @TempDir static Path home;

  private Result result;

  @BeforeAll
  void publish() throws IOException {
    result =
        new Publisher(TemplateFolder.bundled())
            .publish(FOLDER, new Request(List.of(), List.of(), home));
  }

  private static String text(String file) throws IOException {
    try (PDDocument document =
        Loader.loadPDF(home.resolve("crate").resolve("crate-1-" + file + ".pdf").toFile())) {
      return plain(new PDFTextStripper().getText(document));
    }
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
  }

  @Test
  void onlyWhatIsStatedIsFound() {
    assertEquals(
        List.of("piece-ruled-with-marks"),
        result.findings().sorted().stream().map(finding -> finding.code().id()).toList());
  }

  @Test
  void cuttingTableAndLabelsSayWhereToMark() throws IOException {
    // Size L: 240 by 180 mm between the seams, 10 mm of allowance all round.
    List<String> lines =
        List.of(
            "Top edge, from the left corner: notch at 70 mm; notch cut inwards as a wedge at 130"
                + " mm.",
            "Right edge, from the top corner: notch at 40 mm.",
            "Bottom edge, from the left corner: a set of 3 notches cut inwards as wedges at 191 mm,"
                + " 203 mm, 209 mm.",
            "Left edge, from the top corner: double notch cut inwards as wedges at 160 mm.",
            "Fold line “hem”: across, 50 mm below the top edge.",
            "Placement line “pocket”: across, 130 mm below the top edge, from 50 mm to 210 mm from"
                + " the left edge.",
            "Placement line “tab”: 10 mm from the left edge and 130 mm below the top edge; 70 mm"
                + " from the left edge and 10 mm below the top edge.",
            "2 points “rivet”: 40 mm from the left edge and 30 mm below the top edge; 220 mm from"
                + " the left edge and 30 mm below the top edge.");
    String all = text("L-a4-instructions");
    int labels = all.lastIndexOf("Labels to cut out");
    for (String line : lines) {
      assertTrue(all.substring(0, labels).contains(line), () -> line + " in " + all);
      assertTrue(all.substring(labels).contains(line), () -> line + " in " + all);
    }
    // The gusset's come from the front's, its corners among them.
    assertTrue(
        all.contains(
            "Left edge, from the top corner: notches at 40 mm, 190 mm, 430 mm; double notch at"
                + " 460 mm; a set of 3 notches at 231 mm, 237 mm, 249 mm."),
        all);
    assertTrue(all.contains("On mirrored ones measure from the right"), all);
  }

  @Test
  void allSizesSayItForEach() throws IOException {
    String all = text("all-sizes-a4-instructions");
    assertTrue(
        all.contains(
            "S: Top edge, from the left corner: notch at 60 mm; notch cut inwards as a wedge at 110"
                + " mm. L: Top edge, from the left corner: notch at 70 mm; notch cut inwards as a"
                + " wedge at 130 mm."),
        all);
    assertTrue(all.contains("from 50 mm to S 170 mm, L 210 mm from the left edge."), all);
    assertTrue(all.contains("Right edge, from the top corner: notch at 40 mm."), all);
    assertTrue(
        all.contains(
            "S: Bottom edge, from the left corner: a set of 3 notches cut inwards as wedges at 151"
                + " mm, 163 mm, 169 mm. L: Bottom edge, from the left corner: a set of 3 notches"
                + " cut inwards as wedges at 191 mm, 203 mm, 209 mm."),
        all);
  }

  @Test
  void theCompanionSaysIt() throws IOException {
    Path file = home.resolve("crate").resolve("crate-1.html");
    String html = plain(Files.readString(file).replaceAll("<[^>]*>", ""));
    assertTrue(html.contains("Top edge, from the left corner: notch at 60 mm"), html);
    assertTrue(html.contains("Top edge, from the left corner: notch at 70 mm"), html);
    assertTrue(html.contains("double notch cut inwards as wedges at 160 mm"), html);
    assertTrue(html.contains("Fold line “hem”: across, 50 mm below the top edge"), html);
    assertTrue(html.contains("2 × canvas: a pair, mirrored"), html);
    assertTrue(html.contains("Marks on ruled pieces are measured on the cut piece"), html);
  }

  @Test
  void makersReadOfMirroredPairs() throws IOException {
    String all = text("L-a4");
    assertTrue(all.contains("Cut 2 from canvas: a pair, mirrored"), all);
    assertTrue(all.contains("M: mirrored, paper face down"), all);
    assertFalse(all.contains("everse"), all);
  }

  @Test
  void oneWidthIsNotChosenFromTwo() throws IOException {
    assertFalse(text("L-a4").contains("two widths"));
    assertTrue(text("L-a4").contains("rounded up to what shops cut."));
  }

  @Test
  void whatHasNoGrainHasNoArrow() throws IOException {
    Path whole = home.resolve("crate").resolve("crate-1-S-cut");
    assertFalse(Files.readString(whole.resolve("05-Pad-S.svg")).contains("id=\"grain\""));
    assertTrue(Files.readString(whole.resolve("02-Gusset-S.svg")).contains("id=\"grain\""));
  }

  @Test
  void aRectangleIsPrintedWhereThatIsAskedForOrItCannotBeTold() throws IOException {
    String tiles = text("L-a4-tiles");
    assertTrue(tiles.contains("3 Placket"), tiles);
    assertTrue(tiles.contains("4 Handle"), tiles);
    assertFalse(tiles.contains("1 Front"), tiles);
    // It is a length of webbing all the same.
    assertTrue(
        text("L-a4").contains("Webbing 5% is added for ends. 2 mm thick 25 mm 70 cm"),
        text("L-a4"));
  }

  @Test
  void whereTheGussetTurnsItIsClipped() throws IOException {
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        Grader.grade(PatternReader.read(FOLDER, findings), Variant.ofSize("L"), findings);
    WalkedSeam seam = pattern.seams().get(0);
    assertEquals(List.of(180.0, 420.0), seam.clippings().stream().map(Clipping::from).toList());
    for (Clipping clip : seam.clippings()) {
      assertTrue(clip.isCorner());
      assertEquals(1, clip.side());
      assertEquals(9, clip.depth(), 1e-9);
    }
    assertEquals(List.of(), seam.unmarkedCorners());
  }

  @Test
  void theDocumentsConform() throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    for (String name : List.of("L-a4", "all-sizes-a4-instructions")) {
      byte[] file = Files.readAllBytes(home.resolve("crate").resolve("crate-1-" + name + ".pdf"));
      for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A)) {
        try (PDFAParser parser =
                Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), flavour);
            PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
          ValidationResult verdict = validator.validate(parser);
          assertTrue(verdict.isCompliant(), verdict.getTestAssertions()::toString);
        }
      }
    }
  }
}
