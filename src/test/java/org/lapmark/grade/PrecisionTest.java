package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.read.PatternReader;

/** What a pattern's texts print decides how finely its lengths are printed. */
class PrecisionTest {
  private static PrintForm form(Path folder, String text) throws IOException {
    Path crate = Path.of("src", "test", "resources", "org", "lapmark", "publish", "crate");
    try (Stream<Path> files = Files.walk(crate)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(crate.relativize(file));
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    Path pattern = folder.resolve("pattern.yaml");
    Files.writeString(
        pattern,
        Files.readString(pattern)
            .replace("units: metric\n", "units: metric first\n")
            .replace("measures:\n", "measures:\n  wide: 55 mm\n  narrow: 53 mm\n"));
    Path step = folder.resolve("steps").resolve("010-sew.md");
    Files.writeString(step, Files.readString(step) + "\n" + text + "\n");
    Findings findings = new Findings();
    EvaluatedPattern graded =
        Grader.grade(PatternReader.read(folder, findings), Variant.ofSize("L"), findings);
    assertFalse(findings.hasErrors());
    return graded.source().masthead().form();
  }

  @Test
  void lengthsThatEighthsWouldConfuseAreInSixteenths(@TempDir Path folder) throws IOException {
    PrintForm form = form(folder, "Press {wide} over and topstitch {narrow} from the fold.");
    assertEquals("55\u00a0mm (2\u00a03/16\u00a0in)", form.print(Quantity.length(55)));
    assertEquals("53\u00a0mm (2\u00a01/16\u00a0in)", form.print(Quantity.length(53)));
  }

  @Test
  void aLengthByItselfStaysInEighths(@TempDir Path folder) throws IOException {
    PrintForm form = form(folder, "Press {wide} over.");
    assertEquals("55\u00a0mm (2\u00a01/8\u00a0in)", form.print(Quantity.length(55)));
  }
}
