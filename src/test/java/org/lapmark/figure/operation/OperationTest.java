package org.lapmark.figure.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureSource;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.frame.OperationScene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;

/** The specimen of all operations is drawn, and follows what the pattern says. */
public class OperationTest {
  private static final PatternSource SOURCE = DemoFigures.source();
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
                DemoFigures.drawer()
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
      assertTrue(figure.drawing().height() < 78, "two steps with one each fit on a page");
      assertTrue(figure.alternative().endsWith("."), figure.alternative());
      assertFalse(figure.alternative().contains("_"), figure.alternative());
      assertFalse(figure.alternative().contains("{"), figure.alternative());
    }
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
