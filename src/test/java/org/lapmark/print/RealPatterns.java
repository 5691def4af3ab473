package org.lapmark.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Variants;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The demo patterns and those on the shelf. */
final class RealPatterns {
  private static final List<Path> FOLDERS =
      List.of(Path.of("content"), Path.of("src", "test", "resources", "org", "lapmark", "shelf"));

  private RealPatterns() {}

  /** Every size of each, with everything as by default, by folder and size. */
  static Map<String, EvaluatedPattern> all() {
    Map<String, EvaluatedPattern> patterns = new LinkedHashMap<>();
    for (Path folder : folders()) {
      Findings findings = new Findings();
      PatternSource source = read(folder, findings);
      for (String size : source.sizes().sizes()) {
        patterns.put(
            folder.getFileName() + " " + size,
            Grader.grade(source, new Variants(source, findings).standard(size), findings));
      }
    }
    return patterns;
  }

  private static PatternSource read(Path folder, Findings findings) {
    try {
      return PatternReader.read(folder, findings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> folders() {
    List<Path> folders = new ArrayList<>();
    for (Path each : FOLDERS) {
      try (Stream<Path> list = Files.list(each)) {
        list.filter(Files::isDirectory).sorted().forEach(folders::add);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return folders;
  }
}
