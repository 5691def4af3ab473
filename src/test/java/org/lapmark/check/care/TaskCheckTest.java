package org.lapmark.check.care;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.check.rule.CareWords;
import org.lapmark.finding.Findings;
import org.lapmark.source.FaultCase;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;
import org.lapmark.wording.Wording;

class TaskCheckTest {
  @TempDir Path home;

  /** Neither the stack nor anybody's patience ends before an endless sentence does. */
  @Test
  void anEndlessSentenceIsSearchedToItsEnd() throws IOException {
    Path resources = Path.of("src", "test", "resources", "org", "lapmark", "check", "care");
    Findings findings = new Findings();
    FaultCase.all(resources).get(0).read(home, findings);
    Path step = home.resolve("pouch").resolve("steps").resolve("020-look.md");
    String line = "the press of the press of the press of the press of the press and\n";
    Files.writeString(step, Files.readString(step) + line.repeat(5000) + "and press it\n");
    PatternSource source = PatternReader.read(home.resolve("pouch"), findings);
    CareWords words =
        CareWords.of(
            new Wording(
                Locale.UK, Map.of("task.press.sought", "press", "task.otherwise.sought", "the")));
    new TaskCheck(source, words, findings).run();
    assertEquals(
        List.of("pouch/steps/020-look.md:5007"),
        findings.sorted().stream()
            .map(one -> one.position().file() + ":" + one.position().line())
            .toList());
  }
}
