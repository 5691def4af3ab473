package org.lapmark.figure.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.drawing.Item;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureCase;
import org.lapmark.figure.FigureSource;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.PatternSource;
import org.lapmark.source.Translation;
import org.lapmark.source.read.PatternReader;

/** Pieces lie as it is stated, on each other and by themselves, and what can't is found. */
public class PosesTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "org/lapmark/specimens/poses");

  private static PatternSource source;
  private static EvaluatedPattern small;
  private static EvaluatedPattern large;

  @BeforeAll
  static void read() throws IOException {
    source = source(FOLDER);
    small = DemoFigures.pattern(source, "S");
    large = DemoFigures.pattern(source, "L");
  }

  private static PatternSource source(Path folder) throws IOException {
    Findings findings = new Findings();
    PatternSource read = PatternReader.read(folder, findings);
    assertEquals("", DemoFigures.said(findings));
    return read;
  }

  /** In true size: the raw edges of piece 1 lie 10 mm outside its stitching lines. */
  private static Canvas drawn(EvaluatedPattern pattern, String view) {
    return DemoFigures.drawn(DemoFigures.picture("pieces:\n- " + view + "\n"), pattern);
  }

  private static List<org.lapmark.geometry.Path> strokes(List<Item> items, String role) {
    List<org.lapmark.geometry.Path> found = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        found.addAll(strokes(group.items(), role));
      } else if (item instanceof Item.Shape shape && shape.role().equals(role)) {
        found.addAll(shape.paths());
      }
    }
    return found;
  }

  /** The outline of what lies on the piece, from the piece’s top left corner. */
  private static Box second(Canvas canvas) {
    List<org.lapmark.geometry.Path> outlines = strokes(canvas.items(), "figure-outline");
    Box whole = outlines.get(0).bounds();
    Box box = outlines.get(1).bounds();
    return box.moved(new org.lapmark.geometry.Point(-whole.minX(), -whole.minY()));
  }

  private static void assertBox(Box box, double x, double y, double width, double height) {
    assertEquals(x, box.minX(), 0.02);
    assertEquals(y, box.minY(), 0.02);
    assertEquals(width, box.width(), 0.04);
    assertEquals(height, box.height(), 0.04);
  }

  @Test
  void aPocketLiesInItsPlacementLineInEverySize() {
    String view = "{piece: 1, name: no, things: [{piece: 2, mark: pocket, turned: all}]}";
    assertBox(second(drawn(small, view)), 10 + 45, 10 + 50, 60, 45);
    assertBox(second(drawn(large, view)), 10 + 55, 10 + 50, 80, 55);
    // With its allowances it reaches beyond the line on all sides.
    String cut = view.replace(", turned: all", "");
    assertBox(second(drawn(small, cut)), 45, 50, 80, 65);
  }

  @Test
  void aPieceLiesAtANotchByAnyOfItsEdgesAndAtAPlace() {
    String view = "{piece: 1, name: no, things: [{piece: 2, turned: all, %s}]}";
    // The second set of notches is three quarters along the top: its raw edge on the raw edge.
    double middle = 10 + 0.75 * 150;
    Box top = second(drawn(small, String.format(view, "edge: top, notch: 2")));
    assertBox(top, middle - 30, 0, 60, 45);
    Box bottom = second(drawn(small, String.format(view, "edge: top, notch: 2, own_edge: bottom")));
    assertBox(bottom, middle - 30, 0, 60, 45);
    Box left = second(drawn(small, String.format(view, "at: [70 mm, 60 mm], own_edge: left")));
    assertBox(left, 10 + 70 - 22.5, 10 + 60, 45, 60);
  }

  @Test
  void whatIsJoinedLiesBeyondItsSeam() {
    Canvas canvas =
        drawn(small, "{piece: 1, name: no, things: [{piece: 3, joined: bottom, own_edge: top}]}");
    // Front and base are sewn at their stitching lines: 110 mm and 60 mm, with raw edges outside.
    assertEquals(10 + 110 + 60 + 10, canvas.bounds().height(), 0.2);
    assertBox(second(canvas), 0, 10 + 110, 170, 60 + 10);
  }

  /** The same from the other side: mirrored, wrong side up, and the pocket is hidden. */
  @Test
  void aUnitTurnedOverShowsItsOtherSide() {
    Canvas right = drawn(small, "{unit: outer, name: no}");
    Canvas wrong = drawn(small, "{unit: outer, name: no, side: wrong}");
    assertEquals(right.bounds().height(), wrong.bounds().height(), 0.2);
    assertTrue(strokes(right.items(), "figure-symbol").size() > 0, "the ring");
    assertEquals(0, strokes(wrong.items(), "figure-symbol").size());
    assertEquals(1, strokes(wrong.items(), "figure-topstitch").size(), "the pocket’s line alone");
    assertEquals(2, strokes(right.items(), "figure-topstitch").size());
    assertEquals(0, strokes(right.items(), "figure-topstitch-now").size());
  }

  @Test
  void anEdgeIsDrawnUpToItsLengthAndNothingIsLostBelow() {
    String view = "{piece: 5, name: no, gathered: {edge: top, to: %s}, lines: [{sew: top}]}";
    for (EvaluatedPattern pattern : List.of(small, large)) {
      double width = pattern == small ? 150 : 190;
      Canvas canvas = drawn(pattern, String.format(view, "width"));
      double sewn = strokes(canvas.items(), "figure-sew-now").get(0).length();
      // As far as the raw edges, which run on level beside the seam.
      assertTrue(sewn > width && sewn < width + 30, "" + sewn);
      double whole = drawn(pattern, "{piece: 5, name: no}").bounds().width();
      assertEquals(whole, canvas.bounds().width(), 3);
    }
    Canvas flat = drawn(small, String.format(view, "2 * width"));
    assertEquals(drawn(small, "{piece: 5, name: no}").bounds().width(), flat.bounds().width(), 0.2);
  }

  @Test
  void whatIsRolledUpTakesItsNotchesAlong() {
    String view = "{piece: 1, name: no, show: notches, rolled: {edge: %s, inset: 40 mm}}";
    Canvas bottom = drawn(small, String.format(view, "bottom"));
    Canvas top = drawn(small, String.format(view, "top"));
    assertEquals(3, strokes(bottom.items(), "figure-notch").size());
    assertEquals(0, strokes(top.items(), "figure-notch").size());
    assertEquals(130 - 10 - 40, bottom.bounds().height(), 0.1);
  }

  @Test
  void aUnitIsCroppedWithWhatLiesOnItAndIsJoinedToIt() {
    Canvas whole = drawn(small, "{unit: outer, name: no}");
    Canvas cropped = drawn(small, "{unit: outer, name: no, edge: top, cropped: 130 mm}");
    assertEquals(190, whole.bounds().height(), 0.2);
    assertEquals(10 + 130, cropped.bounds().height(), 2, "with its break line");
    Canvas front = drawn(small, "{unit: outer, name: no, edge: top, cropped: 40 mm}");
    assertEquals(10 + 40, front.bounds().height(), 4);
    assertEquals(1, strokes(front.items(), "figure-topstitch").size(), "no pocket, and its line");
  }

  @Test
  void aCornerIsSewnAcrossAsLongAsStated() {
    for (EvaluatedPattern pattern : List.of(small, large)) {
      String corner = "boxed_corner: {piece: 1, seam: right, base: bottom, across: 60 mm}\n";
      Canvas pointed = DemoFigures.drawn(DemoFigures.picture(corner), pattern);
      org.lapmark.geometry.Path line = strokes(pointed.items(), "figure-sew-now").get(0);
      assertEquals(60, line.length(), 1e-6);
      // Square corners make a right angle when they are flattened.
      assertEquals(30, line.start().y(), 1e-6);
      String cut = "boxed_corner: {piece: 4, seam: right, base: bottom}\n";
      Canvas notched = DemoFigures.drawn(DemoFigures.picture(cut), pattern);
      double corners = pattern == small ? 35 : 40;
      assertEquals(2 * corners, strokes(notched.items(), "figure-sew-now").get(0).length(), 1e-6);
    }
  }

  @Test
  void everyPoseIsDrawnInEverySizeAndSaidInSentences() {
    StringBuilder all = new StringBuilder();
    for (EvaluatedPattern pattern : List.of(small, large)) {
      for (SourceText block : DemoFigures.blocks(source).values()) {
        Findings findings = new Findings();
        Figure figure =
            DemoFigures.drawer()
                .draw(
                    FigureSource.parse(block, findings).orElseThrow(),
                    pattern,
                    source.masthead().form(),
                    findings)
                .orElseThrow(() -> new AssertionError(DemoFigures.said(findings)));
        assertEquals("", DemoFigures.said(findings));
        all.append(figure.alternative().replace('\u00a0', ' ')).append('\n');
      }
    }
    for (String sentence :
        List.of(
            "Laid flat: the front with its pocket, right side up.",
            "Laid flat: the outer bag, opened out, wrong side up.",
            "Joined to it and opened out: 3 Base.",
            "On it: loop, wrapped round the left edge.",
            "Its corner “c” is turned back, so that what lies below is seen.",
            "It is rolled up from the bottom edge on, and 2 clips hold the roll.",
            "It is gathered to 150 mm (5 7/8 in) along the top edge.",
            "4 pins hold the top edge.",
            "4 clips hold the top edge.",
            "A stitching line runs square across, 60 mm (2 3/8 in) long.",
            "What lies beyond the stitching is trimmed.")) {
      assertTrue(all.toString().contains(sentence), sentence + "\n" + all);
    }
    assertFalse(all.toString().matches("(?s).*[{}_].*"), all.toString());
  }

  private static List<FigureCase> cases() throws IOException {
    return FigureCase.beside(PosesTest.class, "pose-faults.txt");
  }

  private static List<Finding> found(PatternSource from, String yaml) {
    EvaluatedPattern pattern = DemoFigures.pattern(from, "S");
    Findings findings = new Findings();
    FigureSource.parse(DemoFigures.block(yaml), findings)
        .ifPresent(
            figure -> DemoFigures.drawer().draw(figure, pattern, from.masthead().form(), findings));
    return findings.sorted();
  }

  /**
   * The codes that the cases trigger.
   *
   * @return their ids
   */
  public static Set<String> codes() throws IOException {
    Set<String> codes = new TreeSet<>();
    codes.add("figure-unit-within");
    PatternSource from = source(FOLDER);
    for (FigureCase one : cases()) {
      found(from, one.yaml()).forEach(finding -> codes.add(finding.code().id()));
    }
    return codes;
  }

  private static String line(Finding finding) {
    return finding.position().line()
        + ":"
        + finding.position().column()
        + "+"
        + finding.position().length()
        + " "
        + finding.code().id();
  }

  @TestFactory
  List<DynamicTest> eachFaultIsFoundWhereItStands() throws IOException {
    return cases().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name(),
                    () -> {
                      List<Finding> found = found(source, one.yaml());
                      assertEquals(
                          one.expected(),
                          String.join("\n", found.stream().map(PosesTest::line).toList()));
                      for (Finding finding : found) {
                        assertTrue(FindingText.message(finding).endsWith("."));
                        assertTrue(
                            FindingText.hint(finding).matches(".*[.?]"), finding.code().id());
                      }
                    }))
        .toList();
  }

  /** What readers see as a unit’s name can be translated as all other texts can. */
  @Test
  void namesOfUnitsAreTextsOfTheAuthor() {
    List<String> texts = AuthorTexts.of(source).stream().map(text -> text.source().text()).toList();
    assertTrue(texts.contains("the front with its pocket"), texts.toString());
    PatternSource other =
        AuthorTexts.translated(
            source,
            new Translation(
                Locale.GERMAN,
                text("x").position(),
                List.of(
                    new Translation.TranslatedText(
                        text("the front with its pocket"),
                        TemplateText.parse(text("Vorderteil mit Tasche"), new Findings()))),
                List.of(),
                List.of()));
    Figure figure =
        DemoFigures.drawer()
            .draw(
                FigureSource.parse(
                        DemoFigures.block("pieces: [{unit: front_unit}]\n"), new Findings())
                    .orElseThrow(),
                DemoFigures.pattern(other, "S"),
                source.masthead().form(),
                new Findings())
            .orElseThrow();
    assertTrue(figure.alternative().contains("Vorderteil mit Tasche"), figure.alternative());
  }

  private static SourceText text(String words) {
    return SourceText.verbatim(new SourceFile("texts.yaml", words), 0, words.length());
  }

  /** The heavy line is for what the step does. */
  @Test
  void whatWasClippedBeforeIsNoLongerEmphasised(@TempDir Path folder) throws IOException {
    String unit = "  clipped: {piece: 1, clips: [{edge: top, every: 20 mm, depth: 6 mm}]}\n";
    EvaluatedPattern pattern = DemoFigures.pattern(changed(folder, unit), "S");
    Canvas canvas = drawn(pattern, "{unit: clipped, name: no}");
    assertEquals(8, strokes(canvas.items(), "figure-edge").size());
    assertEquals(0, strokes(canvas.items(), "figure-edge-now").size());
  }

  /** Darts and pleats of a piece that is drawn up are shown as those of a flat one. */
  @Test
  void dartsAndPleatsOfAGatheredPieceAreDrawnWhereTheyComeToLie(@TempDir Path folder)
      throws IOException {
    changed(folder, "");
    Path file = folder.resolve("pattern.yaml");
    String height = "2 * width, height: 60 mm}";
    String darts =
        ", darts: {low: {edge: bottom, at: 1/4, width: 20 mm, length: 25 mm},"
            + " high: {edge: top, at: 1/4, width: 20 mm, length: 25 mm}},"
            + " pleats: {fold: {edge: bottom, at: 3/4, take_up: 20 mm, length: 30 mm, kind: box}}";
    Files.writeString(file, Files.readString(file).replace(height, height + darts));
    EvaluatedPattern pattern = DemoFigures.pattern(source(folder), "S");
    String gathered = "{piece: 5, name: no, gathered: {edge: top, to: width}%s}";
    int without = marks(drawn(pattern, String.format(gathered, "")));
    int with = marks(drawn(pattern, String.format(gathered, ", show: marks")));
    int flat = marks(drawn(pattern, "{piece: 5, name: no, show: marks}"));
    assertTrue(with > without, with + " lines with marks, " + without + " without");
    assertEquals(flat, with - without);
  }

  private static int marks(Canvas canvas) {
    return strokes(canvas.items(), "figure-mark").size()
        + strokes(canvas.items(), "figure-mark-dashed").size();
  }

  /** What is wrong within a unit stands in pattern.yaml. */
  @Test
  void aUnitIsHeldAgainstTheKeysOfViews(@TempDir Path folder) throws IOException {
    String unit = "  wrong: {piece: 1, sides: wrong}\n";
    List<Finding> found = found(changed(folder, unit), "pieces: [{unit: wrong}]\n");
    assertEquals(
        List.of("pattern.yaml figure-key-unknown"),
        found.stream()
            .map(one -> one.position().file().replaceAll(".*/", "") + " " + one.code().id())
            .toList());
    String good = "  right: {piece: 1, side: wrong}\n";
    assertEquals(List.of(), found(changed(folder, good), "pieces: [{unit: right}]\n"));
  }

  @Test
  void noUnitIsMadeOfItself(@TempDir Path folder) throws IOException {
    String units =
        "  one: {piece: 1, things: [{unit: two, edge: top}]}\n"
            + "  two: {piece: 2, things: [{unit: one, edge: top}]}\n"
            + "  same: {unit: same}\n";
    PatternSource from = changed(folder, units);
    for (String name : List.of("one", "same")) {
      List<Finding> found = found(from, "pieces: [{unit: " + name + "}]\n");
      assertEquals(
          List.of("figure-unit-within"), found.stream().map(one -> one.code().id()).toList());
      assertTrue(FindingText.message(found.get(0)).contains("part of itself"));
    }
    // One inside another, and twice beside each other, is no circle.
    String nested =
        "  three: {unit: front_unit, things: [{unit: pocket_unit, edge: top},"
            + " {unit: pocket_unit, edge: bottom}]}\n";
    assertEquals(List.of(), found(changed(folder, nested), "pieces: [{unit: three}]\n"));
  }

  private static PatternSource changed(Path folder, String units) throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(FOLDER.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.writeString(to, Files.readString(file));
      }
    }
    Path pattern = folder.resolve("pattern.yaml");
    Files.writeString(pattern, Files.readString(pattern) + units);
    return source(folder);
  }
}
