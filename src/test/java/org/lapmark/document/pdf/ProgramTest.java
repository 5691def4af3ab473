package org.lapmark.document.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.lapmark.document.manual.PageRanges;
import org.lapmark.wording.Wording;

class ProgramTest {
  @Test
  void statesTheVersionThatIsBuilt() throws Exception {
    Matcher version =
        Pattern.compile("<artifactId>lapmark</artifactId>\\s*<version>([^<]*)</version>")
            .matcher(Files.readString(Path.of("pom.xml")));
    assertTrue(version.find());
    assertEquals("Lapmark " + version.group(1), Program.name());
  }

  @Test
  void writesPageNumbersAsRanges() {
    Wording words =
        new Wording(Locale.UK, Map.of("map.range", "{first}–{last}", "list.between", ", "));
    assertEquals("", PageRanges.text(List.of(), words));
    assertEquals("5", PageRanges.text(List.of(5), words));
    assertEquals("5, 6, 9–12, 20", PageRanges.text(List.of(5, 6, 9, 10, 11, 12, 20), words));
  }
}
