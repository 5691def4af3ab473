package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.lapmark.document.grading.GradeReportDocument;
import org.lapmark.document.grading.NestDrawing;
import org.lapmark.drawing.Item;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.print.paper.Paper;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class GradePagesTest {
  private static final DocumentWriter WRITER = new DocumentWriter(Specimen.templates());

  @BeforeAll
  static void initialise() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static byte[] report() throws Exception {
    Findings findings = new Findings();
    PatternSource source =
        PatternReader.read(Path.of("src/test/resources/org/lapmark/document/grade"), findings);
    List<EvaluatedPattern> patterns = new ArrayList<>();
    for (String size : source.sizes().sizes()) {
      Variant variant = new Variant(size, new TreeMap<>(Map.of("longer_back", "no")));
      patterns.add(Grader.grade(source, variant, findings));
    }
    return WRITER.write(new GradeReportDocument(patterns, Paper.A4), new Findings());
  }

  @Test
  void itSaysEveryLengthAndItsIncrements() throws Exception {
    byte[] file = report();
    String text =
        String.join(" ", Documents.texts(file)).replace('\u00a0', ' ').replaceAll("\\s+", " ");
    assertTrue(text.contains("size by size: 54, 56, 58, 60, 62, 64."), text);
    assertTrue(text.contains("Made with these choices: longer back – no."), text);
    assertTrue(text.contains("inner 10 560.00 580.00 +20.00 600.00 +20.00 620.00 +20.00"), text);
    assertTrue(text.contains("The sizes stacked on the corner rear, which is ringed"), text);
    assertTrue(text.contains("Area, cm²"), text);
    assertArrayEquals(file, report());
  }

  @Test
  void itIsTaggedAndArchivable() throws Exception {
    byte[] file = report();
    for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A)) {
      try (PDFAParser parser =
              Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), flavour);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        ValidationResult result = validator.validate(parser);
        assertEquals(true, result.isCompliant(), result.getTestAssertions()::toString);
      }
    }
  }

  private static NestDrawing.Nest nest(double step, String... sizes) {
    List<Optional<org.lapmark.geometry.Path>> outlines = new ArrayList<>();
    for (int i = 0; i < sizes.length; i++) {
      Box box = new Box(0, 0, 300 + i * step, 200 + i * step);
      outlines.add(Optional.of(org.lapmark.geometry.Path.rectangle(box)));
    }
    return NestDrawing.of(
        outlines, List.of(sizes), ", ", WRITER.styles(), WRITER.lettering(), 170, 105);
  }

  private static List<Item.Lettering> names(NestDrawing.Nest nest) {
    return nest.drawing().items().stream()
        .filter(item -> item instanceof Item.Lettering)
        .map(item -> (Item.Lettering) item)
        .filter(item -> item.role().equals("grade-name"))
        .toList();
  }

  private static List<String> roles(NestDrawing.Nest nest) {
    return nest.drawing().items().stream()
        .filter(item -> item instanceof Item.Shape)
        .map(item -> ((Item.Shape) item).role())
        .toList();
  }

  /** The room that a name takes. */
  private static Box room(Item.Lettering name) {
    double width = WRITER.lettering().width(name.text(), WRITER.styles().style(name.role()));
    double left =
        name.alignment() == Item.Alignment.MIDDLE
            ? name.anchor().x() - width / 2
            : name.anchor().x();
    return Box.at(left, name.anchor().y() - 2.4, width, 2.4);
  }

  private static void checkNames(NestDrawing.Nest nest, String... texts) {
    List<Item.Lettering> names = names(nest);
    assertEquals(
        List.of(texts).stream().sorted().toList(),
        names.stream().map(Item.Lettering::text).sorted().toList());
    Box page = new Box(0, 0, nest.drawing().width(), nest.drawing().height());
    for (Item.Lettering name : names) {
      assertTrue(page.contains(room(name)), name.toString());
      for (Item.Lettering other : names) {
        assertTrue(name == other || !room(name).overlaps(room(other)), name + " " + other);
      }
    }
  }

  @Test
  void everySizeIsNamedOnItsLine() {
    NestDrawing.Nest wide = nest(20, "S", "M", "L");
    checkNames(wide, "S", "M", "L");
    assertTrue(!roles(wide).contains("grade-leader"));
    assertTrue(roles(wide).containsAll(List.of("grade-size-1", "grade-size-2", "grade-size-3")));
  }

  @Test
  void whereLinesLieCloseALeaderLeadsToEach() {
    NestDrawing.Nest close = nest(1, "54", "56", "58", "60", "62", "64", "66", "68", "70", "72");
    checkNames(close, "54", "56", "58", "60", "62", "64", "66", "68", "70", "72");
    // At least those in the middle, whose neighbours are 0.4 mm off.
    assertTrue(roles(close).stream().filter("grade-leader"::equals).count() >= 8);
  }

  @Test
  void sizesThatAreAlikeShareALine() {
    NestDrawing.Nest same = nest(0, "S", "M", "L");
    checkNames(same, "S, M, L");
  }
}
