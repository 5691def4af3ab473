package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.AddedWords;
import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.source.PatternSource;

/** Patterns in other languages are searched for what calls for care with words of their own. */
class CareLanguagesTest {
  private static final Path TABLE =
      Path.of("src", "test", "resources", "org", "lapmark", "check", "care", "languages.txt");
  private static final DocumentWriter WRITER = new DocumentWriter(Specimen.templates());

  @TempDir Path home;

  record Row(String language, String changed, String text, String expected) {}

  static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String line : Files.readAllLines(TABLE)) {
      if (!line.startsWith("#")) {
        String[] cells = line.split(" *\\| *", -1);
        rows.add(new Row(cells[0], cells[1], cells[2], cells[3]));
      }
    }
    return rows;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isAskedAbout(Row row) throws IOException {
    CarePouch pouch =
        new CarePouch(home.resolve("pouch"))
            .with("pattern.yaml", "language: en-GB", "language: " + row.language());
    switch (row.changed()) {
      case "tools" -> pouch.with("pattern.yaml", "    name: thing", "    name: " + row.text());
      case "hardware" -> pouch.with("pattern.yaml", "    name: part", "    name: " + row.text());
      case "title" -> pouch.with("pattern.yaml", "title: Pouch", "title: " + row.text());
      case "child" ->
          pouch
              .with("pattern.yaml", "title: Pouch", "title: " + row.text())
              .with("pattern.yaml", "use:\n  ages: adults\n", "");
      case "neck" ->
          pouch
              .with(
                  "pattern.yaml",
                  "    name: part",
                  "    name: " + row.text() + "\n    hazards: []\n    because: it is short")
              .with("pattern.yaml", "ages: adults", "ages: from 3");
      case "step" -> pouch.with("steps/020-look.md", "Look at both sides.", row.text());
      default -> throw new IllegalStateException(row.changed());
    }
    PatternSource source = pouch.read();
    Findings findings = new Findings();
    CareWords words = CareWords.of(WRITER.wording(Locale.forLanguageTag(row.language())));
    Rules.asWritten(new Written(source, AddedWords.NONE, words), findings);
    Rules.inVariant(
        new Evaluated(
            CarePouch.grade(source, "S").get(0),
            new DocumentLimits(List.of(), List.of(), text -> List.of()),
            words),
        findings);
    assertEquals(
        row.expected(),
        String.join(
            "; ",
            findings.sorted().stream()
                .filter(finding -> finding.code() instanceof CareCode)
                .map(CareLanguagesTest::written)
                .toList()));
  }

  private static String written(Finding finding) {
    if (finding.code().id().equals("child-neck-cord")) {
      return finding.code().id();
    }
    int from = finding.position().column() - 1;
    return finding.code().id()
        + " "
        + finding.position().lineText().substring(from, from + finding.position().length());
  }

  /** No list is forgotten, and none stands there for nothing. */
  @Test
  void everyLanguageHasEveryList() throws IOException {
    Set<String> english = lists("en");
    List<String> languages;
    try (Stream<Path> files = Files.list(Path.of("templates", "words", "kinds"))) {
      languages =
          files
              .map(file -> file.getFileName().toString().replace(".properties", ""))
              .sorted()
              .toList();
    }
    assertTrue(languages.containsAll(List.of("de", "en", "fr")), languages.toString());
    for (String language : languages) {
      assertEquals(english, lists(language), language);
    }
  }

  private static Set<String> lists(String language) throws IOException {
    Set<String> keys = new TreeSet<>();
    for (String line :
        Files.readAllLines(Path.of("templates", "words", "kinds", language + ".properties"))) {
      if (line.contains("=")) {
        keys.add(line.substring(0, line.indexOf('=')).strip());
      }
    }
    return keys;
  }
}
