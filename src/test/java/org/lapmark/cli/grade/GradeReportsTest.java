package org.lapmark.cli.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** The grade report of a small pattern in each form. */
class GradeReportsTest {
  private static final String CAP = "src/test/resources/org/lapmark/document/grade";

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
    assertEquals(0, run("grade", CAP, "--panel", "band", "--size", "54,56"));
    assertEquals(
        """
        grade, sizes 54, 56, longer_back=yes

          band
                       allowance       54               56
            top               10   560.00  +20.00   580.00
            right             10    48.00   +0.00    48.00
            bottom            10   560.00  +20.00   580.00
            left              10    48.00   +0.00    48.00
            width                  560.00  +20.00   580.00
            height                  48.00   +0.00    48.00
            perimeter             1216.00  +40.00  1256.00
            area, cm²              268.80   +9.60   278.40
        """,
        result());
  }

  @Test
  void asCommaSeparatedValues() throws Exception {
    assertEquals(0, run("grade", CAP, "--option", "longer_back=no", "--format", "csv"));
    List<CSVRecord> records =
        CSVParser.parse(result(), CSVFormat.RFC4180.builder().setHeader().get()).getRecords();
    CSVRecord inner =
        records.stream()
            .filter(row -> row.get("name").equals("inner") && row.get("size").equals("58"))
            .findFirst()
            .orElseThrow();
    assertEquals("longer_back=no", inner.get("choices"));
    assertEquals("brim", inner.get("panel"));
    assertEquals("edge", inner.get("row"));
    assertEquals("600.00", inner.get("value"));
    assertEquals("20.00", inner.get("increment"));
    assertEquals("10", inner.get("allowance"));
  }

  @Test
  void asJson() {
    assertEquals(0, run("grade", CAP, "--panel", "band", "--format", "json", "--size", "62,64"));
    Map<?, ?> report =
        (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(result());
    Map<?, ?> pattern = (Map<?, ?>) ((List<?>) report.get("patterns")).get(0);
    assertEquals(List.of("62", "64"), pattern.get("sizes"));
    Map<?, ?> band = (Map<?, ?>) ((List<?>) pattern.get("panels")).get(0);
    assertEquals("top_left", band.get("corner"));
    Map<?, ?> top = (Map<?, ?>) ((List<?>) band.get("rows")).get(0);
    assertEquals("top", top.get("name"));
    assertEquals(640.0, ((Number) ((List<?>) top.get("values")).get(0)).doubleValue());
    assertEquals(20.0, ((Number) ((List<?>) top.get("increments")).get(1)).doubleValue());
    assertEquals(null, ((List<?>) top.get("increments")).get(0));
  }

  @Test
  void whatIsNotThereIsWrongUsage() {
    assertEquals(2, run("grade", CAP, "--panel", "brimm"));
    String talk = err.toString(StandardCharsets.UTF_8);
    assertTrue(
        talk.contains("there is no panel ‘brimm’; did you mean ‘brim’? (panels: brim, ear_flap"),
        talk);
    assertEquals(2, run("grade", CAP, "--size", "55"));
    assertEquals(2, run("grade", CAP, "--option", "longer_back=maybe"));
    assertEquals("", result());
  }
}
