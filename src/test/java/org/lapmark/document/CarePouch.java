package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The small pattern that rules about care are tried on, changed. */
public final class CarePouch {
  private static final Path BASE =
      Path.of("src", "test", "resources", "org", "lapmark", "check", "care", "base");

  private final Path folder;

  public CarePouch(Path folder) throws IOException {
    this.folder = folder;
    try (Stream<Path> files = Files.walk(BASE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(BASE.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  /** Puts one text in place of another, which is there. */
  public CarePouch with(String file, String old, String fresh) throws IOException {
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertEquals(2, text.split(Pattern.quote(old), -1).length, old);
    Files.writeString(path, text.replace(old, fresh));
    return this;
  }

  public PatternSource read() throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    assertEquals(List.of(), findings.sorted());
    return source;
  }

  /** The pattern in sizes. */
  public static List<EvaluatedPattern> grade(PatternSource source, String... sizes) {
    Findings findings = new Findings();
    List<EvaluatedPattern> patterns =
        Stream.of(sizes).map(size -> Grader.grade(source, Variant.ofSize(size), findings)).toList();
    assertEquals(List.of(), findings.sorted());
    return patterns;
  }
}
