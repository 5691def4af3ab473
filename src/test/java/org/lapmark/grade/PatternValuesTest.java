package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.finding.Findings;
import org.lapmark.source.PatternSource;
import org.lapmark.source.Rewriting;
import org.lapmark.source.read.PatternReader;

/** What a pattern comes to are values: where and in which order it is stated is no part of them. */
class PatternValuesTest {
  private static final String SHELF = "src/test/resources/org/lapmark/shelf/";

  @TempDir Path parent;

  private GradedPattern values(Path folder, int size, UnaryOperator<String> edit)
      throws IOException {
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
    Variants variants = new Variants(source, findings);
    List<String> sizes = source.sizes().sizes();
    GradedPattern values =
        Grader.grade(source, variants.standard(sizes.get(size % sizes.size())), findings).values();
    assertFalse(findings.hasErrors(), findings.sorted().toString());
    return values;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "content/towpath-handlebar-bag",
        "content/slipway-rain-hat",
        SHELF + "darted-bodice",
        SHELF + "millrace-drum-bag",
        SHELF + "two-language-apron"
      })
  void commentsAndTheOrderOfKeysChangeNone(String name) throws IOException {
    Path folder = Path.of(name);
    Random random = new Random(7);
    for (int size = 0; size < 2; size++) {
      GradedPattern written = values(folder, size, text -> text);
      assertEquals(written, values(folder, size, text -> Rewriting.commented(text, random)));
      assertEquals(written, values(folder, size, text -> Rewriting.reordered(text, random)));
      for (String key : List.of("measures", "panels", "hardware")) {
        assertEquals(
            written,
            values(folder, size, text -> Rewriting.reorderedWithin(key, text, random)),
            key);
      }
    }
  }

  @Test
  void anotherLengthIsAnotherValue() throws IOException {
    Path folder = Path.of(SHELF + "millrace-drum-bag");
    GradedPattern written = values(folder, 0, text -> text);
    assertNotEquals(
        written,
        values(folder, 0, text -> text.replaceFirst("allowance: \\d+ mm", "allowance: 7 mm")));
    assertNotEquals(written, values(folder, 1, text -> text));
  }
}
