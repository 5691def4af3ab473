package org.lapmark.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The demo can be cut from the cloth that it names. */
class DemoLaysTest {
  @Test
  void everySizeIsLaidOutOnEveryWidth() throws Exception {
    Findings findings = new Findings();
    PatternSource source =
        PatternReader.read(Path.of("content", "towpath-handlebar-bag"), findings);
    for (String size : source.sizes().sizes()) {
      EvaluatedPattern pattern = Grader.grade(source, Variant.ofSize(size), findings);
      List<ClothPlan> plans = LayPlanner.plan(pattern, findings);
      assertEquals(source.materials().size(), plans.size());
      for (ClothPlan plan : plans) {
        boolean tape = plan.cloth().id().equals("webbing");
        assertEquals(tape, plan.goods().isPresent(), plan.cloth().id());
        assertEquals(tape ? 0 : plan.cloth().widths().size(), plan.lays().size());
        plan.lays().forEach(lay -> assertTrue(lay.length() > 0));
      }
    }
    assertTrue(
        findings.sorted().stream().noneMatch(finding -> finding.code() instanceof LayCode),
        findings.sorted().toString());
  }
}
