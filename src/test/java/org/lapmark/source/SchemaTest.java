package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyWords;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.read.PatternReader;

/** The tables of keys, their words, and what is made of both. */
class SchemaTest {
  private static final String SCHEMAS = "src/main/resources/org/lapmark/source/key/";
  private static final Path POUCH =
      Path.of("src/test/resources/org/lapmark/source/reference/pouch");

  private static final Path PAGES =
      Path.of("src/test/resources/org/lapmark/source/reference/pages");

  private final KeyWords words = new KeyWords(KeyWords.class);
  private final List<Table> roots = PatternReader.tables();
  private final Map<String, Table> tables = Table.reachable(roots);

  @TempDir Path folder;

  @Test
  void theSchemasAreThoseOfTheTables() throws IOException {
    KeySchema schema = new KeySchema(words);
    Kept.hold(
        SCHEMAS + "pattern.schema.json",
        schema.of("pattern:1", "A sewing pattern: pattern.yaml", roots.subList(0, 1)));
    Kept.hold(
        SCHEMAS + "step.schema.json",
        schema.of("step:1", "The front matter of a step: steps/*.md", roots.subList(1, 2)));
    Kept.hold(
        SCHEMAS + "translation.schema.json",
        schema.of(
            "translation:1",
            "A translation’s texts: translations/<language>/texts.yaml",
            roots.subList(2, roots.size())));
  }

  @Test
  void theReferenceIsThatOfTheTables() throws IOException {
    Map<String, List<Table>> pages = new LinkedHashMap<>();
    pages.put("pattern", roots.subList(0, 1));
    pages.put("sizes", List.of());
    pages.put("drawings", List.of());
    pages.put("steps", roots.subList(1, 2));
    pages.put("notes", List.of());
    pages.put("translations", roots.subList(2, roots.size()));
    for (Map.Entry<String, List<Table>> page : pages.entrySet()) {
      String file = page.getKey() + ".md";
      Kept.hold(
          "src/readme/reference/" + file,
          Files.readString(PAGES.resolve(file)) + new KeyReference(words).of(page.getValue()));
    }
  }

  /** Files that a page shows stand below their names; each is read by the real reader. */
  @Test
  void everyFileInThePagesIsRead() throws IOException {
    Pattern shown = Pattern.compile("\n`([^`]+)`\n\n(`{3,})[a-z]+\n(.*?)\n\\2\n", Pattern.DOTALL);
    List<String> files = new ArrayList<>();
    try (Stream<Path> pages = Files.list(PAGES)) {
      for (Path page : pages.sorted().toList()) {
        Matcher file = shown.matcher(Files.readString(page));
        while (file.find()) {
          files.add(file.group(1));
          assertEquals("", read(Map.of(), file.group(1), file.group(3) + "\n"), file.group(1));
        }
      }
    }
    assertEquals(5, files.size(), files.toString());
  }

  @Test
  void everyReferenceInASchemaLeadsSomewhere() throws IOException {
    for (String name : List.of("pattern", "step", "translation")) {
      Map<?, ?> schema =
          (Map<?, ?>) KeySchema.value(Files.readString(Path.of(SCHEMAS, name + ".schema.json")));
      Set<String> references = new TreeSet<>();
      collect(schema, references);
      for (String reference : references) {
        String id = reference.replace("#/$defs/", "");
        assertTrue(((Map<?, ?>) schema.get("$defs")).containsKey(id), name + ": " + reference);
      }
    }
  }

  private static void collect(Object value, Set<String> references) {
    if (value instanceof Map<?, ?> map) {
      map.forEach(
          (key, inner) -> {
            if (key.equals("$ref")) {
              references.add((String) inner);
            }
            collect(inner, references);
          });
    } else if (value instanceof List<?> list) {
      list.forEach(inner -> collect(inner, references));
    }
  }

  @Test
  void everyKeyHasItsWordsAndEveryWordItsKey() {
    List<String> missing = new ArrayList<>();
    Set<String> known = new TreeSet<>(Set.of("*.printed"));
    for (Table table : tables.values()) {
      known.addAll(forms(table.id()));
      // What holds for all keys of a table mustn't be taken for the meaning of one called so.
      known.remove(table.id() + ".printed");
      known.add(table.id() + ".*.printed");
      if (words.meaning(table).isEmpty()) {
        missing.add(table.id());
      }
      for (Key<?> key : table.keys()) {
        known.addAll(forms(table.id() + "." + key.name()));
        known.addAll(forms("*." + key.name()));
        if (words.meaning(table, key).isEmpty()) {
          missing.add(table.id() + "." + key.name());
        }
        if (words.example(table, key).isEmpty() && key.form().tables().isEmpty()) {
          missing.add(table.id() + "." + key.name() + ".example");
        }
      }
    }
    assertEquals(List.of(), missing);
    Set<String> idle = words.all();
    idle.removeAll(known);
    assertEquals(Set.of(), idle);
  }

  @Test
  void aKeyOfAnotherTableIsRefusedAtOnce() {
    Reading reading = new Reading(Limits.STANDARD, new Findings());
    Stated nothing = Stated.nothing(reading, Table.of("empty"));
    assertThrows(IllegalArgumentException.class, () -> nothing.get(Stated.WHEN));
    assertThrows(IllegalArgumentException.class, () -> Table.of("twice", Stated.WHEN, Stated.WHEN));
  }

  private static List<String> forms(String name) {
    return Stream.of("", ".example", ".printed", ".in", ".named").map(form -> name + form).toList();
  }

  /** Each example is read by the real reader, in a folder that has nothing to be said of it. */
  @TestFactory
  Stream<DynamicTest> everyExampleIsRead() throws IOException {
    assertEquals("", read(Map.of(), "", ""));
    List<String> files =
        List.of(
            "pattern.yaml",
            "steps/020-close.md",
            "translations/de/texts.yaml",
            "translations/de/steps/010-sew.md",
            "translations/de/notes/introduction.md");
    List<DynamicTest> tests = new ArrayList<>();
    for (Table root : roots) {
      String file = files.get(roots.indexOf(root));
      for (Table table : Table.reachable(List.of(root)).values()) {
        for (Key<?> key : table.keys()) {
          tests.add(
              DynamicTest.dynamicTest(
                  table.id() + "." + key.name(),
                  () -> {
                    Map<String, Object> example = new KeyExamples(words).of(root, table, key);
                    assertEquals("", read(root, file, example), JsonText.line(example));
                  }));
        }
      }
    }
    return tests.stream();
  }

  private String read(Table root, String file, Map<String, Object> example) throws IOException {
    if (root == roots.get(0)) {
      return read(example, "", "");
    }
    String text = JsonText.line(example);
    return read(Map.of(), file, file.endsWith(".md") ? "---\n" + text + "\n---\nText.\n" : text);
  }

  /** What is found in the pouch with an example in its pattern, and with one more file. */
  private String read(Map<String, Object> example, String file, String text) throws IOException {
    Path pouch = Files.createTempDirectory(folder, "x").resolve("pouch");
    try (Stream<Path> files = Files.walk(POUCH)) {
      for (Path one : files.toList()) {
        Files.copy(one, pouch.resolve(POUCH.relativize(one).toString()));
      }
    }
    Map<String, Object> pattern = new LinkedHashMap<>();
    Map<?, ?> base = (Map<?, ?>) KeySchema.value(Files.readString(POUCH.resolve("pattern.yaml")));
    base.forEach((key, value) -> pattern.put((String) key, value));
    example.forEach((key, value) -> pattern.merge(key, value, SchemaTest::merged));
    Files.writeString(pouch.resolve("pattern.yaml"), JsonText.of(pattern));
    if (!file.isEmpty()) {
      Files.createDirectories(pouch.resolve(file).getParent());
      Files.writeString(pouch.resolve(file), text);
    }
    Findings findings = new Findings();
    PatternReader.read(pouch, findings);
    return String.join(
        "\n",
        findings.sorted().stream()
            .map(finding -> FaultCase.written(finding) + " " + FindingText.message(finding))
            .toList());
  }

  /** Names and entries of both; of anything else the second. */
  private static Object merged(Object first, Object second) {
    if (first instanceof Map<?, ?> one && second instanceof Map<?, ?> other) {
      Map<Object, Object> both = new LinkedHashMap<>(one);
      both.putAll(other);
      return both;
    }
    if (first instanceof List<?> one && second instanceof List<?> other) {
      List<Object> both = new ArrayList<>(one);
      both.addAll(other);
      return both;
    }
    return second;
  }
}
