package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.Document;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.product.Desk;
import org.lapmark.source.FaultCase;
import org.lapmark.source.PatternSource;

/**
 * Mistakes as people make them, each planted into a pattern that is in order: {@code check} tells
 * each of them once, where it was made, and none of its consequences.
 */
class PlantedMistakesTest {
  private static final Path RESOURCES =
      Path.of("src", "test", "resources", "org", "lapmark", "publish", "planted");

  @TempDir static Path folder;
  private static Stages stages;

  @BeforeAll
  static void takeTemplates() throws IOException {
    stages = new QuickStages(new RealStages(TemplateFolder.bundled(), Optional.empty()));
  }

  /** Everything that {@code check} does but setting pages. */
  private record QuickStages(Stages real) implements Stages {
    @Override
    public PatternSource read(Path read, Findings findings) throws IOException {
      return real.read(read, findings);
    }

    @Override
    public EvaluatedPattern grade(PatternSource source, Variant variant, Findings findings) {
      return real.grade(source, variant, findings);
    }

    @Override
    public void across(List<EvaluatedPattern> patterns, Findings findings) {
      real.across(patterns, findings);
    }

    @Override
    public Desk desk(Locale language, boolean blankPages, Effort effort) {
      return new QuickDesk(real.desk(language, blankPages, effort));
    }
  }

  private record QuickDesk(Desk real) implements Desk {
    @Override
    public Manual manual(EvaluatedPattern pattern, Findings findings) {
      return real.manual(pattern, findings);
    }

    @Override
    public SheetPlan plan(EvaluatedPattern pattern, Paper paper) {
      return real.plan(pattern, paper);
    }

    @Override
    public Manual enlarged(Manual manual, Findings findings) {
      throw new UnsupportedOperationException();
    }

    @Override
    public SheetPlanner planner(Look look) {
      return real.planner(look);
    }

    @Override
    public byte[] write(Document document, Findings findings) {
      return new byte[0];
    }

    @Override
    public NestedPlan nested(List<EvaluatedPattern> patterns, Paper paper) {
      throw new UnsupportedOperationException();
    }
  }

  @TestFactory
  Stream<DynamicTest> everyMistakeIsToldOnceAndWhereItWasMade() throws IOException {
    return FaultCase.all(RESOURCES).stream()
        .map(fault -> DynamicTest.dynamicTest(fault.name(), () -> check(fault)));
  }

  private void check(FaultCase fault) throws IOException {
    Path parent = Files.createTempDirectory(folder, "case");
    fault.read(parent, new Findings());
    Outcome outcome =
        new Pipeline(stages, 1, stage -> {})
            .check(List.of(parent.resolve("pouch")), new Listener() {})
            .get(0);
    assertEquals(Optional.empty(), outcome.failure());
    List<Finding> found = outcome.result().findings().sorted();
    assertEquals(
        String.join("\n", fault.expected()),
        String.join("\n", found.stream().map(FaultCase::written).toList()));
    fault.checkWords(found);
    for (Finding finding : found) {
      for (String text : List.of(FindingText.message(finding), FindingText.hint(finding))) {
        assertFalse(text.isBlank());
        assertFalse(text.matches("(?s).*(: ?[.;,]|\\{|null).*"), text);
      }
    }
  }

  @Test
  void mistakesHaveOneFindingEach() throws IOException {
    List<String> names = new ArrayList<>();
    for (FaultCase fault : FaultCase.all(RESOURCES)) {
      boolean right = fault.name().contains(": right: ");
      assertEquals(right ? 0 : 1, fault.expected().size(), fault.name());
      names.add(fault.name());
    }
    assertTrue(names.size() > 80, names.size() + " cases");
  }
}
