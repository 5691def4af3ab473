package org.lapmark.figure.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.drawing.Item;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureSource;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.frame.OperationScene;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The specimen of all operations is drawn, and follows what the pattern says. */
class OperationTest {
  private static final PatternSource SOURCE = DemoFigures.source();
  private static final Pattern LENGTH = Pattern.compile("\\d+[\\s\u00a0\u202f]*mm");
  private static final EvaluatedPattern MEDIUM = DemoFigures.pattern(SOURCE, "M");

  /** An operation a line, as it stands behind its key. */
  static List<String> specimen() throws IOException {
    try (InputStream stream = OperationTest.class.getResourceAsStream("specimen.txt")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  private static Optional<Figure> drawn(String stated, String size, Findings findings) {
    return FigureSource.parse(DemoFigures.block(stated), findings)
        .flatMap(
            figure ->
                DemoFigures.stepDrawer()
                    .draw(
                        figure,
                        size.equals("M") ? MEDIUM : DemoFigures.pattern(SOURCE, size),
                        SOURCE.masthead().form(),
                        findings));
  }

  @ParameterizedTest
  @MethodSource("specimen")
  void eachIsDrawnAndSaid(String stated) {
    for (String size : List.of("S", "M", "L")) {
      Findings findings = new Findings();
      Figure figure = drawn("operation: " + stated + "\n", size, findings).orElseThrow();
      assertEquals("", DemoFigures.said(findings));
      assertTrue(figure.drawing().height() < 78.01, "two steps with one each fit on a page");
      assertTrue(figure.alternative().endsWith("."), figure.alternative());
      assertFalse(figure.alternative().contains("_"), figure.alternative());
      assertFalse(figure.alternative().contains("{"), figure.alternative());
    }
  }

  private static void lengths(List<Item> items, Set<String> lengths) {
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        lengths(group.items(), lengths);
      } else if (item instanceof Item.Lettering lettering) {
        Matcher matcher = LENGTH.matcher(lettering.text());
        while (matcher.find()) {
          lengths.add(matcher.group());
        }
      }
    }
  }

  /** Dimensions and callouts are for those who can’t see them, too. */
  @ParameterizedTest
  @MethodSource("specimen")
  void eachLengthThatIsShownIsSaid(String stated) {
    Figure figure = drawn("operation: " + stated + "\n", "M", new Findings()).orElseThrow();
    Set<String> lengths = new TreeSet<>();
    lengths(figure.drawing().items(), lengths);
    assertEquals(stated.contains(" mm"), !lengths.isEmpty());
    assertEquals(
        List.of(),
        lengths.stream().filter(length -> !figure.alternative().contains(length)).toList(),
        figure.alternative());
  }

  /** Where there is too little room for its labels, that is all that is wrong. */
  @ParameterizedTest
  @MethodSource("specimen")
  void eachIsDrawnNarrowOrToldToBeTooNarrow(String stated) {
    Findings findings = new Findings();
    Optional<Figure> figure = drawn("width: half\noperation: " + stated + "\n", "M", findings);
    assertEquals(
        figure.isPresent() ? List.of() : List.of("figure-crowded"),
        findings.sorted().stream().map(finding -> finding.code().id()).toList());
  }

  /** The figures of the workbook, whose operations name seams, edges, trims and attachments. */
  private static PatternSource workbook() throws IOException {
    Findings findings = new Findings();
    PatternSource source =
        PatternReader.read(
            Path.of("src/test/resources/org/lapmark/specimens/operations"), findings);
    assertEquals("", DemoFigures.said(findings));
    return source;
  }

  private static Optional<Figure> drawn(
      PatternSource source, String size, String stated, Findings findings) {
    return FigureSource.parse(DemoFigures.block(stated), findings)
        .flatMap(
            figure ->
                DemoFigures.stepDrawer()
                    .draw(
                        figure,
                        DemoFigures.pattern(source, size),
                        source.masthead().form(),
                        findings));
  }

  @Test
  void whatIsNamedIsDrawnInEverySizeAndBothWidths() throws IOException {
    PatternSource source = workbook();
    Set<String> shown = new TreeSet<>();
    for (SourceText block : DemoFigures.blocks(source).values()) {
      shown.add(block.text().replaceAll("(?s).*operation: \\{(\\w+):.*", "$1"));
      for (String size : List.of("S", "M", "L")) {
        Findings findings = new Findings();
        Figure figure = drawn(source, size, block.text(), findings).orElse(null);
        assertEquals("", DemoFigures.said(findings), block.text());
        assertTrue(figure.drawing().height() < 78.01, block.text());
        assertFalse(figure.alternative().matches("(?s).*[_{}].*"), figure.alternative());
      }
      Findings findings = new Findings();
      Optional<Figure> half = drawn(source, "M", "width: half\n" + block.text(), findings);
      assertEquals(
          half.isPresent() ? List.of() : List.of("figure-crowded"),
          findings.sorted().stream().map(finding -> finding.code().id()).toList(),
          block.text());
    }
    assertEquals(new TreeSet<>(Crafts.ALL.stream().map(Craft::word).toList()), shown);
  }

  private static String said(PatternSource source, String size, String operation)
      throws IOException {
    Findings findings = new Findings();
    Figure figure = drawn(source, size, "operation: {" + operation + "}\n", findings).orElse(null);
    assertEquals("", DemoFigures.said(findings));
    return figure.alternative().replace('\u00a0', ' ').replace('\u202f', ' ');
  }

  /** Numbers come from the pattern, and follow its size. */
  @Test
  void whatIsNamedGivesItsNumbers() throws IOException {
    PatternSource source = workbook();
    for (String[] one :
        new String[][] {
          {"S", "dart: front.waist", "two legs, 20 mm (3/4 in) apart"},
          {"L", "dart: front.waist", "two legs, 36 mm (1 3/8 in) apart"},
          {"S", "dart: front.waist", "meet at a point 80 mm"},
          {"S", "gathers: hem", "Piece 3, Skirt, main lies right side up, 270 mm"},
          {"L", "gathers: hem", "right side up, 390 mm"},
          {"L", "gathers: hem", "until the edge is 260 mm"},
          {"S", "corner: front.bottom_left", "sewn 12 mm"},
          {"L", "corner: front.bottom_left", "sewn 18 mm"},
          {"M", "clipped_curve: collar.inner", "8 mm (5/16 in) deep, to 2 mm"},
          {"S", "press_stud_set: button", "press stud, 10 mm"},
          {"L", "press_stud_set: button", "press stud, 15 mm"},
          {"M", "eyelet_set: hole", "its hole 8 mm"},
          {"M", "box_and_cross: handle", "piece 5, Strap, webbing, 25 mm"},
          {"M", "zip_end_tab: closure, strip: lining, allowance: 10 mm", "tape, 30 mm"},
          {"M", "piping_ends: piping, strip: binding", "the cord, 4 mm"},
          {"S", "turning_gap: side, gap: wide / 2", "a gap of 90 mm"},
          {"L", "hem: skirt.bottom", "25 mm"},
        }) {
      String said = said(source, one[0], one[1]);
      assertTrue(said.contains(one[2]), one[2] + ": " + said);
    }
  }

  private static double bend(PatternSource source, String operation) {
    Canvas canvas = DemoFigures.canvas();
    DemoFigures.scene(
            DemoFigures.picture("operation: {" + operation + "}\n"),
            DemoFigures.pattern(source, "M"))
        .frames()
        .get(1)
        .scene()
        .draw(canvas, 1);
    return canvas.bounds().height() / canvas.bounds().width();
  }

  /** A named edge is drawn with its own radius. */
  @Test
  void aCurveBendsAsItsEdgeDoes() throws IOException {
    PatternSource source = workbook();
    double named = bend(source, "notched_curve: collar.outer");
    String stated = "notched_curve: {cloth: main, allowance: 10 mm, radius: %s}";
    assertEquals(bend(source, String.format(stated, "110 mm")), named, 1e-3);
    assertTrue(bend(source, String.format(stated, "600 mm")) < named - 0.05);
  }

  /**
   * What is shown from above as well is as wide as the section, with its stitches below each other.
   */
  @Test
  void theSameDescriptionGivesSectionAndPlan() {
    Scene section =
        DemoFigures.scene(
            DemoFigures.picture("operation: {hem: {cloth: main, allowance: 20 mm}}\n"), MEDIUM);
    Scene both =
        DemoFigures.scene(
            DemoFigures.picture("operation: {hem: {cloth: main, allowance: 20 mm, plan: yes}}\n"),
            MEDIUM);
    Canvas one = DemoFigures.canvas();
    section.frames().get(0).scene().draw(one, 2);
    Canvas two = DemoFigures.canvas();
    both.frames().get(0).scene().draw(two, 2);
    assertTrue(two.bounds().height() > one.bounds().height() + 15);
    assertEquals(one.bounds().width(), two.bounds().width(), 3);
    List<Double> sewn = new ArrayList<>();
    for (Item item : two.items()) {
      if (item instanceof Item.Shape shape
          && Set.of("figure-stitch-now", "figure-sew-now").contains(shape.role())) {
        sewn.add(shape.paths().get(0).bounds().centre().x());
      }
    }
    assertTrue(sewn.size() > 1, "in section and from above");
    sewn.forEach(x -> assertEquals(sewn.get(0), x, 1.2));
  }

  /** Setting metal and magnets has its caution, in the figure and in words. */
  @Test
  void hardwareThatIsSetHasItsCaution() throws IOException {
    PatternSource source = workbook();
    for (String operation :
        List.of("rivet_set: cap", "press_stud_set: button", "eyelet_set: hole")) {
      assertTrue(said(source, "M", operation).contains("protect your eyes."), operation);
    }
    assertTrue(said(source, "M", "magnetic_snap_set: magnet").contains("pacemakers"));
  }

  @Test
  void theSpecimenHasEveryKind() throws IOException {
    Set<String> shown = new TreeSet<>();
    specimen().forEach(line -> shown.add(line.substring(1, line.indexOf(':'))));
    assertEquals(new TreeSet<>(Crafts.ALL.stream().map(Craft::word).toList()), shown);
  }

  @ParameterizedTest
  @MethodSource("specimen")
  void atMostThreeMoments(String stated) {
    OperationScene scene =
        (OperationScene)
            DemoFigures.scene(DemoFigures.picture("operation: " + stated + "\n"), MEDIUM);
    assertTrue(scene.frames().size() <= 3);
    assertEquals(scene.frames().size() > 1, scene.frames().get(0).title().isPresent());
  }

  @Test
  void aNamedSeamGivesMaterialsAndAllowance() {
    Findings findings = new Findings();
    Figure figure =
        drawn("operation: {seam: end_seam, pressed: aside}\n", "M", findings).orElseThrow();
    assertEquals("", DemoFigures.said(findings));
    String said = figure.alternative();
    assertTrue(said.contains("piece "), said);
    assertTrue(said.contains("they are sewn 10\u00a0mm"), said);
    assertTrue(said.contains("pressed to one side"), said);
  }

  @Test
  void aSeamOfPanelsThatNothingIsCutFromHasNoMaterial() {
    Picture picture = DemoFigures.picture("operation: {seam: end_seam}\n");
    Staging staging = DemoFigures.staging(MEDIUM.with(List.of()));
    FindingException found = assertThrows(FindingException.class, () -> picture.stage(staging, 1));
    assertEquals("figure-operation-uncut", found.finding().code().id());
    assertTrue(FindingText.message(found.finding()).contains("‘end_seam’"));
    assertTrue(FindingText.hint(found.finding()).contains("braces"));
  }
}
