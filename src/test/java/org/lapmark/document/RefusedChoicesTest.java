package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.manual.ChosenOption;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** Why something can't be chosen is said where the choice is, and nothing advertises it there. */
class RefusedChoicesTest {
  private static final Path BASE =
      Path.of("src", "test", "resources", "org", "lapmark", "check", "care", "base");
  private static final String REASON =
      "a cord at a child’s neck can strangle. These sizes are made without one.";
  private static final String PRAISE = "It keeps the hat on in wind";

  private final DocumentWriter writer = new DocumentWriter(Specimen.templates());

  @TempDir Path home;

  @Test
  void aSizeThatHasNoCordSaysWhyAndDoesNotAdvertiseIt() throws IOException {
    PatternSource source = read(Path.of("content", "slipway-rain-hat"));
    String child = String.join(" ", instructions(source, "54"));
    assertEquals(2, child.split(REASON, -1).length - 1, "on the cover and before you begin");
    assertFalse(child.contains(PRAISE), child);
    String others =
        child.replace("Cord with breakaway clasp: no", "").replace("keep cord and board", "");
    assertFalse(others.contains("clasp"), child);
    assertEquals(2, others.split("\\b[Cc]ord", -1).length - 1, "in the reason alone: " + child);
    assertFalse(child.contains("Melt"), child);
    String grown = String.join(" ", instructions(source, "58"));
    assertFalse(grown.contains(REASON));
    assertTrue(grown.contains(PRAISE));
  }

  @Test
  void theCompanionSaysItForItsSizes() throws IOException {
    PatternSource source = read(Path.of("content", "slipway-rain-hat"));
    String child = companion(source, Map.of(), "54");
    assertTrue(child.matches("(?s).*<dd>No\\. (<[^>]+>)*Heads of up to.*"), child);
    assertTrue(child.contains(REASON));
    assertFalse(child.contains(PRAISE));
    String grown = companion(source, Map.of(), "58");
    assertFalse(grown.contains(REASON));
    assertTrue(grown.contains(PRAISE));
  }

  @Test
  void oneChoiceOfSeveralIsNamedAndTheTextStays() throws IOException {
    PatternSource source = options();
    ChosenOption.Line zip = line(source, Map.of("lined", "yes"), "S").get(0);
    assertEquals("Closure: Zip", zip.line());
    assertEquals(List.of("All hold."), zip.text());
    assertEquals(
        List.of("Not with Snaps: They do not close over 100\u00a0mm of S."), zip.reasons());
    assertEquals(List.of(), line(source, Map.of("lined", "no"), "S").get(0).reasons());
  }

  @Test
  void aReasonThatHoldsInSomeSizesIsLedByThem() throws IOException {
    PatternSource source = options();
    List<ChosenOption.Line> lines = line(source, Map.of("lined", "no"), "S", "L");
    assertEquals("Lining: no", lines.get(1).line());
    assertEquals(List.of("L: Too stiff."), lines.get(1).reasons());
    assertEquals(List.of("It is warm."), lines.get(1).text(), "size S can have it");
    ChosenOption.Line large = line(source, Map.of("lined", "no"), "L").get(1);
    assertEquals(List.of("Too stiff."), large.reasons());
    assertEquals(List.of(), large.text());
  }

  private PatternSource options() throws IOException {
    try (Stream<Path> files = Files.walk(BASE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = home.resolve(BASE.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    Path pattern = home.resolve("pattern.yaml");
    Files.writeString(
        pattern,
        Files.readString(pattern)
            + """
            options:
              closure:
                label: Closure
                default: zip
                choices: {zip: Zip, snap: Snaps, button: Buttons}
                text: All hold.
              lined: {label: Lining, default: no, text: It is warm.}
            forbidden:
              - {when: lined and closure = snap, reason: "They do not close over {deep} of {size}."}
              - {when: lined and size = L, reason: Too stiff.}
            """);
    Files.writeString(
        pattern,
        Files.readString(pattern)
            .replace(
                "  allowance: 10 mm\n",
                "  allowance: 10 mm\n  deep: {value: pouch_width, when: lined}\n"));
    return read(home);
  }

  private List<ChosenOption.Line> line(
      PatternSource source, Map<String, String> choices, String... sizes) {
    List<EvaluatedPattern> patterns = grade(source, choices, sizes);
    var wording = writer.wording(Locale.UK);
    return ChosenOption.in(patterns, wording).stream()
        .map(one -> one.printed(patterns, wording, source.masthead().form()))
        .toList();
  }

  private static PatternSource read(Path folder) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    assertEquals(List.of(), findings.sorted());
    return source;
  }

  private static List<EvaluatedPattern> grade(
      PatternSource source, Map<String, String> choices, String... sizes) {
    Findings findings = new Findings();
    List<EvaluatedPattern> patterns =
        Stream.of(sizes)
            .map(size -> Grader.grade(source, new Variant(size, new TreeMap<>(choices)), findings))
            .toList();
    assertEquals(List.of(), findings.sorted());
    return patterns;
  }

  private String companion(PatternSource source, Map<String, String> choices, String... sizes) {
    Findings findings = new Findings();
    byte[] page = writer.write(new Companion(grade(source, choices, sizes)), findings);
    assertEquals(List.of(), findings.sorted());
    return new String(page, StandardCharsets.UTF_8).replace('\u00a0', ' ');
  }

  private List<String> instructions(PatternSource source, String size) throws IOException {
    EvaluatedPattern pattern = grade(source, Map.of(), size).get(0);
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.UK), writer.styles(), writer.lettering());
    Manual manual = writer.manual(pattern, Look.STANDARD, new Findings());
    return Documents.texts(
        writer.write(
            new InstructionsDocument(manual, planner.plan(pattern, Paper.A4), Plates.of(planner)),
            new Findings()));
  }
}
