package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;

/**
 * The labelled faults of a folder: each gives its findings and no others, every code has a fault
 * that gives it, and one that comes close and doesn't.
 */
public abstract class LabelledFaults {
  private final Path resources;
  private final Set<String> codes;

  @TempDir Path folder;

  /**
   * The faults of a folder.
   *
   * @param resources the folder, with {@code base} and {@code faults} in it
   * @param codes the codes that it is to have faults of; it may have some of others
   */
  protected LabelledFaults(Path resources, Stream<String> codes) {
    this.resources = resources;
    this.codes = new TreeSet<>(codes.toList());
  }

  /**
   * What is found in a faulty pattern.
   *
   * @param fault the fault
   * @param parent an empty folder
   * @return everything found
   */
  protected abstract Findings found(FaultCase fault, Path parent) throws IOException;

  /** Whether a message or a hint speaks of what is amiss, and not of one of its own arguments. */
  protected boolean isFilledIn(String text) {
    return !text.contains("{");
  }

  @TestFactory
  public Stream<DynamicTest> everyFaultGivesItsFindings() throws IOException {
    return FaultCase.all(resources).stream()
        .map(fault -> DynamicTest.dynamicTest(fault.name(), () -> check(fault)));
  }

  private void check(FaultCase fault) throws IOException {
    Findings findings = found(fault, Files.createTempDirectory(folder, "case"));
    assertEquals(
        String.join("\n", fault.expected()),
        String.join("\n", findings.sorted().stream().map(FaultCase::written).toList()));
    fault.checkWords(findings.sorted());
    for (Finding finding : findings.sorted()) {
      for (String text : new String[] {FindingText.message(finding), FindingText.hint(finding)}) {
        assertFalse(text.isBlank());
        assertEquals(true, isFilledIn(text), text);
      }
    }
  }

  @Test
  public void everyCodeHasATriggerAndANearMiss() throws IOException {
    Set<String> triggered = new TreeSet<>();
    Set<String> missed = new TreeSet<>();
    for (FaultCase fault : FaultCase.all(resources)) {
      fault.expected().forEach(line -> triggered.add(line.substring(0, line.indexOf(' '))));
      String near = fault.near();
      if (!near.isEmpty()) {
        assertFalse(
            fault.expected().stream().anyMatch(line -> line.startsWith(near + " ")), fault.name());
        missed.add(near);
      }
    }
    assertEquals(new TreeSet<>(), without(codes, triggered), "no fault gives these");
    assertEquals(new TreeSet<>(), without(codes, missed), "no case comes near these");
    assertEquals(new TreeSet<>(), without(missed, triggered), "near what no fault gives");
  }

  private static Set<String> without(Set<String> all, Set<String> some) {
    Set<String> rest = new TreeSet<>(all);
    rest.removeAll(some);
    return rest;
  }
}
