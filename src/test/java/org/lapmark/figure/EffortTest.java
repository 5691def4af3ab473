package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.memory.Memory;
import org.lapmark.packing.Effort;
import org.lapmark.source.PatternSource;

/** Who only asks whether a figure can be drawn is told the same as who draws it. */
class EffortTest {
  private static final int FIGURES = 6;

  @Test
  void theLeastEffortFindsWhatTheFullOneDoes() {
    PatternSource source = DemoFigures.source();
    EvaluatedPattern pattern = DemoFigures.pattern(source, "M");
    Set<Boolean> outcomes = new TreeSet<>();
    for (SourceText block : DemoFigures.blocks(source).values().stream().limit(FIGURES).toList()) {
      for (double highest : new double[] {30, 78}) {
        Findings full = new Findings();
        Findings least = new Findings();
        Optional<Figure> drawn = drawn(block, pattern, highest, Effort.FULL, full);
        Optional<Figure> tried = drawn(block, pattern, highest, Effort.LEAST, least);
        assertEquals(drawn.isPresent(), tried.isPresent(), block.text() + highest);
        assertEquals(codes(full), codes(least), block.text() + highest);
        outcomes.add(drawn.isPresent());
      }
    }
    assertEquals(Set.of(true, false), outcomes, "some can be drawn and some can't");
  }

  @Test
  void whatWasDrawnAsWellAsCanBeIsTakenForLess() {
    PatternSource source = DemoFigures.source();
    EvaluatedPattern pattern = DemoFigures.pattern(source, "M");
    SourceText block = DemoFigures.blocks(source).values().iterator().next();
    Memory memory = new Memory(100_000);
    Findings findings = new Findings();
    Optional<Figure> drawn = drawn(block, pattern, 78, Effort.FULL, findings, memory);
    assertTrue(drawn.isPresent());
    assertFalse(findings.hasErrors());
    assertEquals(drawn, drawn(block, pattern, 78, Effort.LEAST, findings, memory));
  }

  private static List<?> codes(Findings findings) {
    return findings.sorted().stream().map(Finding::code).toList();
  }

  private static Optional<Figure> drawn(
      SourceText block, EvaluatedPattern pattern, double highest, Effort effort, Findings found) {
    return drawn(block, pattern, highest, effort, found, Memory.none());
  }

  private static Optional<Figure> drawn(
      SourceText block,
      EvaluatedPattern pattern,
      double highest,
      Effort effort,
      Findings found,
      Memory memory) {
    return FigureSource.parse(block, found)
        .flatMap(
            figure ->
                new FigureDrawer(
                        DemoFigures.wording(),
                        DemoFigures.styles(),
                        new FontMeasure(),
                        highest,
                        memory,
                        effort)
                    .draw(figure, pattern, pattern.source().masthead().form(), found));
  }
}
