package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.AddedWords;
import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.Written;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.manual.Hazards;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingKind;
import org.lapmark.source.read.PatternReader;
import org.lapmark.wording.Wording;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Every kind brings its cautions, and names that sound like it are asked about. */
class KindsTest {
  private static final Path CARE =
      Path.of("src", "test", "resources", "org", "lapmark", "check", "care");
  private static final Path GUIDE = Path.of("src", "readme", "guide", "care.md");
  private static final DocumentWriter WRITER = new DocumentWriter(Specimen.templates());
  private static final Wording WORDS = WRITER.wording(Locale.UK);
  private static final CareWords SOUGHT = CareWords.of(WORDS);

  @TempDir Path home;

  /** A line of the table. */
  record Row(ThingKind kind, List<String> hazards, String sounding, String near) {
    @Override
    public String toString() {
      return kind.id();
    }
  }

  static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String line : Files.readAllLines(CARE.resolve("kinds.txt"))) {
      if (!line.startsWith("#")) {
        String[] cells = line.split(" *\\| *", -1);
        List<String> hazards = cells[1].isEmpty() ? List.of() : List.of(cells[1].split(", "));
        rows.add(new Row(ThingKind.of(cells[0]).orElseThrow(), hazards, cells[2], cells[3]));
      }
    }
    return rows;
  }

  @Test
  void theTableHasEveryKindOnce() throws IOException {
    assertEquals(Arrays.asList(ThingKind.values()), rows().stream().map(Row::kind).toList());
    for (Row row : rows()) {
      assertEquals(row.hazards().isEmpty(), row.sounding().isEmpty(), row.kind().id());
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void bringsItsCautionsAndNoOthers(Row row) throws IOException {
    String section = row.kind().group() == ThingKind.Group.TOOL ? "tools" : "hardware";
    String stated = "{name: thingamajig, kind: " + row.kind().id();
    String with = page(section, stated + "}");
    String without = page(section, stated + ", hazards: [], because: made of paper}");
    for (String hazard : Hazards.known(WORDS)) {
      boolean due = row.hazards().contains(hazard);
      String title = WORDS.text("caution." + hazard + ".title");
      String line = WORDS.text("caution." + hazard + ".short", Map.of("limit", "none"));
      assertEquals(due, with.contains("<h3>" + title + "</h3>"), hazard);
      assertEquals(due, with.contains("</span> " + line), hazard);
      assertFalse(without.contains("<h3>" + title + "</h3>"), hazard);
      assertFalse(without.contains("</span> " + line), hazard);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void aNameThatSoundsLikeItIsAskedAbout(Row row) throws IOException {
    if (row.sounding().isEmpty()) {
      return;
    }
    String section = row.kind().group() == ThingKind.Group.TOOL ? "tools" : "hardware";
    Finding found = missing(section, row.sounding()).get(0);
    assertEquals(row.kind().id(), found.arguments().get("kind"));
    assertEquals(List.of(), missing(section, row.near()), row.near());
    if (row.kind().group() == ThingKind.Group.TOOL) {
      assertEquals(List.of(), missing("hardware", row.sounding()), "a tool's word elsewhere");
    }
  }

  /** Singular and plural, and both ways of writing a group of words. */
  @Test
  void soundsInThePluralToo() throws IOException {
    for (String name : List.of("magnet", "magnets", "Magnets", "magnetic-snaps", "magnetic snap")) {
      assertEquals("magnet", missing("hardware", name).get(0).arguments().get("kind"), name);
    }
  }

  @Test
  void aReasonDoesNotSilenceCordsOnAChildsArticle() throws IOException {
    String cord = "{name: thingamajig, kind: cord, hazards: [], because: short}";
    String title = "<h3>" + WORDS.text("caution.cords.title") + "</h3>";
    assertTrue(page("hardware", cord, "from 3").contains(title));
    assertFalse(page("hardware", cord, "from 14").contains(title));
  }

  @Test
  void whatIsForInfantsSaysSo() throws IOException {
    String title = "<h3>" + WORDS.text("caution.infants.title") + "</h3>";
    String harmless = "{name: thingamajig}";
    assertTrue(page("hardware", harmless, "2 to 4").contains(title));
    assertTrue(page("hardware", harmless, "6 to 18 months").contains(title));
    assertTrue(page("hardware", harmless, "{S: 2, L: 3}").contains(title), "one size of two");
    assertFalse(page("hardware", harmless, "3 to 4").contains(title));
    assertFalse(page("hardware", harmless, "{S: 3, L: 4}").contains(title));
    assertFalse(page("hardware", harmless, "36 months").contains(title));
  }

  @Test
  void whoSellsIsToldOnce() throws IOException {
    String line = WORDS.text("colophon.selling");
    String page = page("hardware", "{name: thingamajig}");
    assertTrue(page.contains(line));
    assertEquals(page.indexOf(line), page.lastIndexOf(line));
  }

  @Test
  void everyHazardOfAKindHasWordsInBothEnglishes() {
    Set<String> hazards = new TreeSet<>();
    for (ThingKind kind : ThingKind.values()) {
      hazards.addAll(kind.hazards());
    }
    for (Locale locale : List.of(Locale.UK, Locale.US)) {
      assertTrue(WRITER.hazards(locale).containsAll(hazards), hazards.toString());
    }
  }

  @Test
  void theGuideListsEveryKindWithWhatItBrings() throws IOException {
    Map<String, Set<String>> listed = new LinkedHashMap<>();
    Matcher row =
        Pattern.compile("(?m)^\\| ((?:`[a-z_]+`(?:, )?)+) \\| ((?:`[a-z_]+`(?:, )?)+|nothing) \\|$")
            .matcher(Files.readString(GUIDE));
    while (row.find()) {
      Set<String> hazards = new TreeSet<>();
      if (!row.group(2).equals("nothing")) {
        hazards.addAll(List.of(row.group(2).replace("`", "").split(", ")));
      }
      for (String kind : row.group(1).replace("`", "").split(", ")) {
        assertEquals(null, listed.put(kind, hazards), kind + " stands twice");
      }
    }
    Map<String, Set<String>> known = new LinkedHashMap<>();
    for (ThingKind kind : ThingKind.values()) {
      known.put(kind.id(), new TreeSet<>(kind.hazards()));
    }
    assertEquals(known, listed);
  }

  @Test
  void theSchemaListsEveryKind() throws IOException {
    Map<?, ?> schema =
        (Map<?, ?>)
            new Load(LoadSettings.builder().build())
                .loadFromString(
                    Files.readString(
                        Path.of("src/main/resources/org/lapmark/source/key/pattern.schema.json")));
    for (String table : List.of("material", "hardware", "tool")) {
      Map<?, ?> kind = (Map<?, ?>) at(schema, "$defs", table, "properties", "kind");
      Map<?, ?> one = (Map<?, ?>) ((List<?>) kind.get("anyOf")).get(0);
      assertEquals(ThingKind.ids(), one.get("enum"), table);
    }
  }

  private static Object at(Object map, String... keys) {
    Object value = map;
    for (String key : keys) {
      value = ((Map<?, ?>) value).get(key);
    }
    return value;
  }

  @Test
  void whatIsNamedAsAHazardPrintsAsBefore() throws IOException {
    assertEquals(
        page("tools", "{name: thingamajig, kind: shears}"),
        page("tools", "{name: thingamajig, hazards: [blades]}"));
  }

  @Test
  void theGuideListsEveryHazard() throws IOException {
    Matcher list =
        Pattern.compile("(?s)All hazards: ((?:`[a-z_]+`(?:,\\s+)?)+)")
            .matcher(Files.readString(GUIDE));
    assertTrue(list.find());
    assertEquals(WRITER.hazards(Locale.UK), List.of(list.group(1).replace("`", "").split(",\\s+")));
  }

  private List<Finding> missing(String section, String name) throws IOException {
    Findings findings = new Findings();
    Rules.asWritten(
        new Written(read(section, "{name: \"" + name + "\"}", "adults"), AddedWords.NONE, SOUGHT),
        findings);
    return findings.sorted().stream()
        .filter(finding -> finding.code() == CareCode.KIND_MISSING)
        .toList();
  }

  private String page(String section, String thing) throws IOException {
    return page(section, thing, "adults");
  }

  /** The companion of a pattern whose one step uses a thing. */
  private String page(String section, String thing, String ages) throws IOException {
    PatternSource source = read(section, thing, ages);
    Findings findings = new Findings();
    List<EvaluatedPattern> patterns =
        source.sizes().sizes().stream()
            .map(size -> Grader.grade(source, Variant.ofSize(size), findings))
            .toList();
    String page =
        new String(WRITER.write(new Companion(patterns), findings), StandardCharsets.UTF_8);
    assertEquals(List.of(), findings.sorted());
    return page;
  }

  private PatternSource read(String section, String thing, String ages) throws IOException {
    Path folder = Files.createTempDirectory(home, "case").resolve("pouch");
    try (Stream<Path> files = Files.walk(CARE.resolve("base"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(CARE.resolve("base").relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    List<String> lines = new ArrayList<>();
    for (String line : Files.readAllLines(folder.resolve("pattern.yaml"))) {
      if (line.matches("  (snips|iron|machine): .*")
          || line.matches(
              "  (thing|part):|    name: (thing|part)|    quantity: 2|tools:|hardware:")) {
        continue;
      }
      lines.add(line.equals("  ages: adults") ? "  ages: " + ages : line);
    }
    lines.add(section + ":");
    lines.add("  used: " + thing);
    Files.write(folder.resolve("pattern.yaml"), lines);
    Files.writeString(
        folder.resolve("steps").resolve("010-make.md"),
        "---\nid: make\ntitle: Make it\nstage: Prepare\nuses: [used]\n---\nLook at it.\n");
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    assertEquals(List.of(), findings.sorted());
    return source;
  }
}
