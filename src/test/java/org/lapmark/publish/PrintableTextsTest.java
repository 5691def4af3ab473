package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.DocumentCode;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;

class PrintableTextsTest {
  private static final Path DEMO = Path.of("content", "towpath-handlebar-bag");

  @TempDir Path home;

  @Test
  void aCharacterThatFontsLackIsShownWhereItStands() throws IOException {
    copyDemo();
    change("pattern.yaml", "name: Rear strip\n", "name: Rear strip 後ろ帯\n");
    change("steps/010-mark.md", "Cut every piece", "Cut every 🧵 piece");
    List<Finding> found = read();
    assertEquals(2, found.size(), found.toString());
    found.forEach(finding -> assertEquals(DocumentCode.TEXT_GLYPH_MISSING, finding.code()));
    assertEquals("    name: Rear strip 後ろ帯", found.get(0).position().lineText());
    assertEquals(22, found.get(0).position().column());
    assertEquals(1, found.get(0).position().length());
    assertEquals(
        "The fonts of the documents have no character ろ 帯 後.", FindingText.message(found.get(0)));
    assertEquals(11, found.get(1).position().column());
    assertEquals(1, found.get(1).position().length());
  }

  @Test
  void lettersOfEuropeSignsAndLayoutAreNothingToSay() throws IOException {
    copyDemo();
    change(
        "pattern.yaml", "title: Towpath handlebar bag", "title: \"Żółć, ñandú — ½ × 3 m²\\u00ad\"");
    assertEquals(List.of(), read());
  }

  private List<Finding> read() throws IOException {
    Findings findings = new Findings();
    new RealStages(TemplateFolder.bundled()).read(home.resolve("bag"), findings);
    return findings.sorted();
  }

  private void copyDemo() throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = home.resolve("bag").resolve(DEMO.relativize(file));
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  private void change(String file, String old, String now) throws IOException {
    Path path = home.resolve("bag").resolve(file);
    String text = Files.readString(path);
    assertEquals(2, text.split(java.util.regex.Pattern.quote(old), -1).length, old);
    Files.writeString(path, text.replace(old, now));
  }
}
