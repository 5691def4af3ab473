package org.lapmark.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.lapmark.cli.Samples;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.Json;
import org.lapmark.cli.console.Version;
import org.lapmark.finding.Findings;
import org.lapmark.publish.Outcome;
import org.lapmark.publish.Result;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

class ReportsTest {
  private static final Path DIRECTORY = Path.of("/studio");

  @Test
  void textIsAsAgreed() throws IOException {
    assertEquals(golden("findings.txt"), TextReport.of(samples().get(0)));
  }

  @Test
  void jsonIsAsAgreed() throws IOException {
    assertEquals(
        golden("findings.json"), JsonReport.of(samples()).replace(Version.text(), "VERSION"));
  }

  @Test
  void sarifIsAsAgreed() throws IOException {
    assertEquals(
        golden("findings.sarif"), SarifReport.of(samples()).replace(Version.text(), "VERSION"));
  }

  @Test
  void summaryCountsBySeverity() {
    assertEquals("1 error, 1 warning, 1 note", TextReport.summary(samples()));
    assertEquals("", TextReport.summary(List.of()));
  }

  @Test
  void foldersElsewhereAreNamedInFull() {
    Findings findings = Samples.findings(Samples.Code.ODD_NAME);
    assertEquals(
        "/other/tote/a.yaml",
        checked(Path.of("/other/tote"), findings, null).file(findings.sorted().get(0)));
    assertEquals(
        "tote/a.yaml",
        checked(DIRECTORY.resolve("tote"), findings, null).file(findings.sorted().get(0)));
    assertEquals("file:///other/gr%C3%B6%C3%9Fe%20%25.svg", PathUri.of("/other/größe %.svg"));
    assertEquals("file:///C%3A/tote/a.yaml", PathUri.of("C:/tote/a.yaml"));
  }

  /** What SARIF 2.1.0 requires of the objects that we write, and what ties them together. */
  @Test
  void sarifHasWhatTheStandardRequires() {
    Map<?, ?> log = object(json(SarifReport.of(samples())));
    assertEquals("2.1.0", log.get("version"));
    List<?> runs = list(log.get("runs"));
    assertEquals(1, runs.size());
    Map<?, ?> run = object(runs.get(0));
    assertEquals("unicodeCodePoints", run.get("columnKind"));
    Map<?, ?> driver = object(object(run.get("tool")).get("driver"));
    assertInstanceOf(String.class, driver.get("name"));
    List<?> rules = list(driver.get("rules"));
    for (Object item : rules) {
      Map<?, ?> rule = object(item);
      assertInstanceOf(String.class, rule.get("id"));
      assertInstanceOf(String.class, object(rule.get("shortDescription")).get("text"));
      assertInstanceOf(String.class, object(rule.get("help")).get("text"));
    }
    assertEquals(
        rules.size(), rules.stream().map(rule -> object(rule).get("id")).distinct().count());
    List<?> results = list(run.get("results"));
    assertEquals(3, results.size());
    for (Object item : results) {
      Map<?, ?> result = object(item);
      assertInstanceOf(String.class, object(result.get("message")).get("text"));
      assertTrue(List.of("error", "warning", "note", "none").contains(result.get("level")));
      Map<?, ?> rule = object(rules.get((Integer) result.get("ruleIndex")));
      assertEquals(rule.get("id"), result.get("ruleId"));
      Map<?, ?> place =
          object(object(list(result.get("locations")).get(0)).get("physicalLocation"));
      String uri = (String) object(place.get("artifactLocation")).get("uri");
      assertTrue(uri.matches("[A-Za-z0-9%._~/-]+"), uri);
      if (place.containsKey("region")) {
        Map<?, ?> region = object(place.get("region"));
        assertTrue((Integer) region.get("startLine") >= 1);
        assertTrue((Integer) region.get("startColumn") >= 1);
        assertTrue((Integer) region.get("endColumn") > (Integer) region.get("startColumn"));
      }
    }
    Map<?, ?> invocation = object(list(run.get("invocations")).get(0));
    assertEquals(false, invocation.get("executionSuccessful"));
    for (Object item : list(invocation.get("toolExecutionNotifications"))) {
      assertInstanceOf(String.class, object(object(item).get("message")).get("text"));
    }
  }

  @Property(tries = 200)
  void jsonStringsComeBackUnchanged(@ForAll String text) {
    // A surrogate on its own is no character; JSON can carry it, but not every reader takes it.
    String value = text.replaceAll("[\\ud800-\\udfff]", "");
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("value", List.of(value, 1, 0.1, true));
    String written = Json.text(map);
    assertTrue(written.chars().noneMatch(c -> c != '\n' && Character.isISOControl(c)), written);
    assertEquals(List.of(value, 1, 0.1, true), list(object(json(written)).get("value")));
  }

  /** JSON is YAML 1.2. */
  private static Object json(String text) {
    return new Load(LoadSettings.builder().build()).loadFromString(text);
  }

  private static Map<?, ?> object(Object value) {
    return assertInstanceOf(Map.class, value);
  }

  private static List<?> list(Object value) {
    return assertInstanceOf(List.class, value);
  }

  private static List<FolderReport> samples() {
    return List.of(
        checked(DIRECTORY.resolve("content/tote"), Samples.all(), null),
        checked(
            DIRECTORY.resolve("content/hat"), new Findings(), new IOException("the disk is full")));
  }

  private static FolderReport checked(Path folder, Findings findings, Throwable failure) {
    Console console =
        new Console(
            new ByteArrayOutputStream(),
            new ByteArrayOutputStream(),
            StandardCharsets.UTF_8,
            DIRECTORY);
    return FolderReport.of(
        new Outcome(folder, new Result(List.of(), findings), Optional.ofNullable(failure)),
        console);
  }

  private static String golden(String name) throws IOException {
    try (InputStream stream = ReportsTest.class.getResourceAsStream(name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
