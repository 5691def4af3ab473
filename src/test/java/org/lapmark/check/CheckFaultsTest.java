package org.lapmark.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.FaultCase;
import org.lapmark.source.PatternSource;

class CheckFaultsTest {
  private static final Path RESOURCES =
      Path.of("src", "test", "resources", "org", "lapmark", "check");

  private static final Reach REACH =
      new Reach(
          List.of("cutting", "map"), List.of("blades", "load", "rivets"), CheckFaultsTest::missing);

  @TempDir Path folder;

  /** As if the fonts had everything but these. */
  private static List<String> missing(String text) {
    List<String> missing = new ArrayList<>();
    for (String sign : List.of("✂", "龍")) {
      if (text.contains(sign)) {
        missing.add(sign);
      }
    }
    return missing;
  }

  @TestFactory
  Stream<DynamicTest> everyFaultGivesItsFindings() throws IOException {
    return FaultCase.all(RESOURCES).stream()
        .map(fault -> DynamicTest.dynamicTest(fault.name(), () -> check(fault)));
  }

  private void check(FaultCase fault) throws IOException {
    Findings findings = new Findings();
    PatternSource source = fault.read(Files.createTempDirectory(folder, "case"), findings);
    for (String size : source.sizes().sizes()) {
      PatternChecks.run(Grader.grade(source, Variant.ofSize(size), findings), REACH, findings);
    }
    assertEquals(
        String.join("\n", fault.expected()),
        String.join("\n", findings.sorted().stream().map(FaultCase::written).toList()));
    for (Finding finding : findings.sorted()) {
      for (String text : List.of(FindingText.message(finding), FindingText.hint(finding))) {
        assertFalse(text.isBlank());
        assertFalse(text.contains("{"), text);
      }
    }
  }

  @Test
  void everyCodeHasACase() throws IOException {
    Set<String> expected = new LinkedHashSet<>();
    for (FaultCase fault : FaultCase.all(RESOURCES)) {
      fault.expected().forEach(line -> expected.add(line.split(" ")[0]));
    }
    for (CheckCode code : CheckCode.values()) {
      // Translations have cases of their own, and so has the order of sizes.
      assertTrue(
          code.id().startsWith("translation-")
              || code == CheckCode.SIZE_ORDER_BROKEN
              || expected.contains(code.id()),
          code.id());
    }
  }
}
