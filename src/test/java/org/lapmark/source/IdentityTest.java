package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Findings;
import org.lapmark.source.read.PatternReader;

/** What a source says doesn't depend on where in its file it says it. */
class IdentityTest {
  private static final Path BAG = Path.of("content/towpath-handlebar-bag");

  @TempDir Path parent;

  private static List<Path> folders() throws IOException {
    List<Path> folders = new ArrayList<>();
    for (String home : List.of("content", "src/test/resources/org/lapmark/shelf")) {
      try (Stream<Path> each = Files.list(Path.of(home))) {
        each.filter(folder -> Files.exists(folder.resolve("pattern.yaml")))
            .sorted()
            .forEach(folders::add);
      }
    }
    return folders;
  }

  private Object read(Path folder, UnaryOperator<String> edit) throws IOException {
    return SourceValues.of(source(folder, edit));
  }

  private PatternSource source(Path folder, UnaryOperator<String> edit) throws IOException {
    Path copy = Files.createTempDirectory(parent, "x").resolve(folder.getFileName());
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.toList()) {
        Files.copy(file, copy.resolve(folder.relativize(file).toString()));
      }
    }
    Path pattern = copy.resolve("pattern.yaml");
    Files.writeString(pattern, edit.apply(Files.readString(pattern)));
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(copy, findings);
    assertFalse(findings.hasErrors(), findings.sorted().toString());
    return source;
  }

  @TestFactory
  Stream<DynamicTest> commentsAndTheOrderOfKeysChangeNothingButPlaces() throws IOException {
    return folders().stream()
        .map(
            folder ->
                DynamicTest.dynamicTest(
                    folder.getFileName().toString(),
                    () -> {
                      Object asWritten = read(folder, text -> text);
                      for (int seed = 1; seed <= 3; seed++) {
                        Random random = new Random(seed);
                        assertEquals(
                            asWritten, read(folder, text -> Rewriting.commented(text, random)));
                        assertEquals(
                            asWritten, read(folder, text -> Rewriting.reordered(text, random)));
                      }
                    }));
  }

  @Test
  void placesAndNumbersDoDiffer() throws IOException {
    PatternSource written = source(BAG, text -> text);
    PatternSource lower = source(BAG, text -> "# A comment.\n" + text);
    assertNotEquals(
        written.pieces().get(0).position().line(), lower.pieces().get(0).position().line());
    assertEquals(written.options().conditions().keySet(), lower.options().conditions().keySet());
    assertNotEquals(SourceValues.of(written), read(BAG, text -> text.replace("1.5 kg", "2 kg")));
  }
}
