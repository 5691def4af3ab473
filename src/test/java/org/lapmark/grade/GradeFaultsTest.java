package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.check.PatternChecks;
import org.lapmark.check.Reach;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Variant;
import org.lapmark.panel.PanelCode;
import org.lapmark.source.FaultCase;
import org.lapmark.source.PatternSource;

class GradeFaultsTest {
  private static final Path RESOURCES =
      Path.of("src", "test", "resources", "org", "lapmark", "grade");

  private static final Reach REACH = new Reach(List.of(), List.of(), text -> List.of());

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyFaultGivesItsFindings() throws IOException {
    return FaultCase.all(RESOURCES).stream()
        .map(fault -> DynamicTest.dynamicTest(fault.name(), () -> check(fault)));
  }

  private void check(FaultCase fault) throws IOException {
    Findings findings = new Findings();
    PatternSource source = fault.read(Files.createTempDirectory(folder, "case"), findings);
    Variants variants = new Variants(source, findings);
    List<Variant> all = variants.all();
    List<Findings> found = new ArrayList<>();
    Set<Integer> cut = new TreeSet<>();
    for (Variant variant : all) {
      Findings own = new Findings();
      GradedPattern pattern = Grader.grade(source, variant, own);
      PatternChecks.run(pattern, REACH, own);
      pattern.pieces().forEach(piece -> cut.add(piece.number()));
      found.add(own);
    }
    variants.join(found, all);
    if (!findings.hasErrors()) {
      variants.reportNeverCut(cut);
    }
    Findings told =
        source.sizes() == null ? findings : findings.joined("size", source.sizes().sizes());
    assertEquals(
        String.join("\n", fault.expected()),
        String.join("\n", told.sorted().stream().map(FaultCase::written).toList()));
    for (Finding finding : told.sorted()) {
      for (String text : List.of(FindingText.message(finding), FindingText.hint(finding))) {
        assertFalse(text.isBlank());
        assertFalse(text.contains("{"), text);
      }
    }
  }

  @Test
  void everyCodeHasATriggerAndANearMiss() throws IOException {
    Set<String> triggered = new TreeSet<>();
    Set<String> missed = new TreeSet<>();
    for (FaultCase fault : FaultCase.all(RESOURCES)) {
      fault.expected().forEach(line -> triggered.add(line.substring(0, line.indexOf(' '))));
      if (!fault.near().isEmpty()) {
        assertFalse(
            fault.expected().stream().anyMatch(line -> line.startsWith(fault.near() + " ")),
            fault.name());
        missed.add(fault.near());
      }
    }
    Set<String> codes =
        new TreeSet<>(Arrays.stream(GradeCode.values()).map(GradeCode::id).toList());
    // Panels have codes of their own, of which some show only in a pattern's variants.
    Set<String> panelCodes =
        new TreeSet<>(Arrays.stream(PanelCode.values()).map(PanelCode::id).toList());
    Set<String> ofPanels = new TreeSet<>(missed);
    ofPanels.retainAll(panelCodes);
    assertTrue(triggered.containsAll(ofPanels), ofPanels.toString());
    missed.removeAll(panelCodes);
    assertEquals(codes, missed);
    codes.removeAll(triggered);
    assertEquals(new TreeSet<>(), codes, "no fault gives these");
  }
}
