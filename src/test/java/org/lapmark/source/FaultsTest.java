package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;

class FaultsTest {
  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyFaultGivesItsFindings() throws IOException {
    return FaultCase.all().stream()
        .map(fault -> DynamicTest.dynamicTest(fault.name(), () -> check(fault)));
  }

  private void check(FaultCase fault) throws IOException {
    List<Finding> findings = fault.run(Files.createTempDirectory(folder, "case"));
    assertEquals(
        String.join("\n", fault.expected()),
        String.join("\n", findings.stream().map(FaultCase::written).toList()));
    for (Finding finding : findings) {
      for (String text : List.of(FindingText.message(finding), FindingText.hint(finding))) {
        assertFalse(text.isBlank());
        assertFalse(text.matches(".*\\{[a-z]+\\}.*") && !text.contains("pouch_width"), text);
      }
    }
  }

  @Test
  void everyCodeHasATriggerAndANearMiss() throws IOException {
    Set<String> triggered = new TreeSet<>();
    Set<String> missed = new TreeSet<>();
    for (FaultCase fault : FaultCase.all()) {
      fault.expected().forEach(line -> triggered.add(line.substring(0, line.indexOf(' '))));
      String near = fault.near();
      if (!near.isEmpty()) {
        assertFalse(
            fault.expected().stream().anyMatch(line -> line.startsWith(near + " ")), fault.name());
        missed.add(near);
      }
    }
    Set<String> codes =
        new TreeSet<>(Arrays.stream(SourceCode.values()).map(SourceCode::id).toList());
    Set<String> untriggered = new TreeSet<>(codes);
    untriggered.removeAll(triggered);
    assertEquals(Set.of(), untriggered, "no fault gives these");
    assertEquals(codes, missed, "no case comes near these, or these aren't codes");
  }
}
