package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
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
                        assertEquals(asWritten, read(folder, text -> commented(text, random)));
                        assertEquals(asWritten, read(folder, text -> reordered(text, random)));
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

  /** Comments above lines that begin something, blocks of text excepted. */
  private static String commented(String text, Random random) {
    StringBuilder edited = new StringBuilder();
    int block = -1;
    int added = 0;
    for (String line : text.split("\n", -1)) {
      int indent = line.length() - line.stripLeading().length();
      if (block >= 0 && (line.isBlank() || indent > block)) {
        edited.append(line).append('\n');
        continue;
      }
      block = line.matches(".*[:-] *[>|][-+]?\\s*") ? indent : -1;
      if (line.strip().matches("(- |[a-z0-9_]+:).*") && random.nextInt(4) == 0) {
        edited.append(" ".repeat(indent)).append("# A remark.\n");
        added++;
      }
      edited.append(line).append('\n');
    }
    assertTrue(added > 0);
    return edited.toString();
  }

  /** The keys at the top of the file, with what stands below each, in another order. */
  private static String reordered(String text, Random random) {
    List<StringBuilder> blocks = new ArrayList<>();
    for (String line : text.split("\n", -1)) {
      if (blocks.isEmpty() || line.matches("[a-z_]+:.*")) {
        blocks.add(new StringBuilder());
      }
      blocks.get(blocks.size() - 1).append(line).append('\n');
    }
    assertTrue(blocks.size() > 5);
    Collections.shuffle(blocks, random);
    return String.join("", blocks);
  }
}
