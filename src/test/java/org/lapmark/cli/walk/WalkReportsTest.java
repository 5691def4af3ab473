package org.lapmark.cli.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.lapmark.cli.CommandRunner;
import org.lapmark.cli.Workshop;
import org.lapmark.cli.console.Console;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The walk of a small pattern whose seam is wrong, in each form. */
class WalkReportsTest {
  private static final String WRONG = "src/test/resources/org/lapmark/document/walk";
  private static final String RIGHT = "src/test/resources/org/lapmark/grade/base";

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    return CommandRunner.run(
        arguments,
        new Console(out, err, StandardCharsets.UTF_8, Path.of("").toAbsolutePath()),
        new Workshop.Real());
  }

  private String result() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void asTables() {
    assertEquals(1, run("walk", WRONG));
    assertEquals(
        """
        walk, size S

          round: differs
            side      length  ease  difference  allowed            parts
            1         100.00  0.00        0.00     0.50  agrees    wall.top
              basted  100.00  0.00        0.00     0.50  agrees    wall.bottom
            2         102.00  0.00       -2.00     0.50  differs   lid.bottom
              tab      12.00                             at 50.00  zip.width
        """
            .lines()
            .limit(8)
            .toList(),
        result().lines().limit(8).toList());
    assertTrue(result().contains("allowances differ: 6, 10\n"), result());
    assertTrue(result().contains("misses  by -3"), result());
    String talk = err.toString(StandardCharsets.UTF_8);
    assertTrue(talk.contains("[seam-lengths-differ]"), talk);
    // It only follows from that.
    assertFalse(talk.contains("[seam-notches-apart]"), talk);
  }

  @Test
  void aFolderInWhichAllAgreesEndsWell() {
    assertEquals(0, run("walk", RIGHT, "--size", "M"));
    assertTrue(result().startsWith("base, size M\n\n  round: agrees\n"), result());
    String talk = err.toString(StandardCharsets.UTF_8);
    assertTrue(talk.contains("[panel-unused]"), talk);
    assertTrue(talk.endsWith("lapmark: 1 warning\n"), talk);
  }

  @Test
  void anUnknownSizeIsWrongUsage() {
    assertEquals(2, run("walk", RIGHT, "--size", "N"));
    assertEquals("", result());
  }

  @Test
  void asCommaSeparatedValues() throws Exception {
    assertEquals(1, run("walk", WRONG, RIGHT, "--format", "csv"));
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<CSVRecord> rows;
    try (CSVParser parser = CSVParser.parse(result(), format)) {
      rows = parser.getRecords();
    }
    CSVRecord second =
        rows.stream()
            .filter(row -> row.get("row").equals("side") && row.get("side").equals("2"))
            .findFirst()
            .orElseThrow();
    assertEquals("walk", second.get("pattern"));
    assertEquals("lid.bottom", second.get("parts"));
    assertEquals("-2.00", second.get("difference"));
    assertEquals("differs", second.get("verdict"));
    assertEquals(
        List.of("base S", "base M"),
        rows.stream()
            .filter(row -> row.get("pattern").equals("base"))
            .map(row -> row.get("pattern") + " " + row.get("size"))
            .distinct()
            .toList());
    assertTrue(rows.stream().allMatch(row -> row.size() == 14));
  }

  @Test
  void asJson() {
    assertEquals(1, run("walk", WRONG, "--format", "json"));
    Map<?, ?> report =
        (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(result());
    Map<?, ?> pattern = (Map<?, ?>) ((List<?>) report.get("patterns")).get(0);
    Map<?, ?> variant = (Map<?, ?>) ((List<?>) pattern.get("variants")).get(0);
    assertEquals("S", variant.get("size"));
    Map<?, ?> seam = (Map<?, ?>) ((List<?>) variant.get("seams")).get(0);
    assertEquals("round", seam.get("seam"));
    assertEquals(false, seam.get("agrees"));
    assertEquals(List.of(6, 10), seam.get("allowances"));
    Map<?, ?> side = (Map<?, ?>) ((List<?>) seam.get("sides")).get(1);
    assertEquals(-2, side.get("difference"));
    assertEquals(1, ((List<?>) side.get("tabs")).size());
  }
}
