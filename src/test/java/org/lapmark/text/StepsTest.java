package org.lapmark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Findings;
import org.lapmark.text.markdown.StepsReader;

class StepsTest {
  private static Steps steps(String lines) {
    Findings findings = new Findings();
    Steps steps = StepsReader.read(Samples.steps(lines), Samples.TARGETS, findings);
    assertEquals(List.of(), findings.sorted());
    return steps;
  }

  @Test
  void stepsAreNumberedThroughAllStages() {
    Steps steps =
        steps(
            """
            mark; Mark {n} pieces; Prepare; Chalk {a} RS up.
            fuse; Fuse; Prepare; Press, see [](step:close).
            close; Close the ring (WS out); Sew {n}; Stitch pre-WSX; RST.""");
    assertEquals(List.of(2, 1), steps.stages().stream().map(s -> s.steps().size()).toList());
    assertEquals(List.of(1, 2, 3), steps.all().stream().map(Steps.Step::number).toList());
    assertEquals("Fuse", PlainText.wordsOnly().inlines(steps.step("fuse").orElseThrow().title()));
    assertTrue(steps.step("none").isEmpty());
    assertEquals(
        List.of("n", "a", "n"), steps.values().stream().map(Inline.Value::expression).toList());
  }

  @Test
  void onlyAbbreviationsThatOccurAsWordsAreListed() {
    Steps steps =
        steps(
            """
            mark; Mark (WS); Prepare; Lay it rs up, RST; 5mm SA in approx. one go.
            fuse; Fuse; Prepare; `CF` and **T**his.""");
    assertEquals(
        List.of("WS", "SA", "approx.", "CF", "RST"),
        steps.abbreviations(List.of("RS", "WS", "SA", "approx.", "CF", "RST", "mm", "T", "")));
    assertTrue(steps.words().containsAll(Set.of("WS", "RST", "5mm", "approx", "This")));
  }

  @Test
  void noStepsAreNoStages() {
    assertEquals(List.of(), StepsReader.read(List.of(), Targets.NONE, new Findings()).stages());
  }
}
