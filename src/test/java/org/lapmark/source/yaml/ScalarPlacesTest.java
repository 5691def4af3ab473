package org.lapmark.source.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.folder.Limits;

/** However a text is written in YAML, each of its characters is found where it stands. */
class ScalarPlacesTest {
  @Provide
  Arbitrary<List<String>> lines() {
    Arbitrary<String> word =
        Arbitraries.of("a", "b", "é", "𝄞", "'", "\"", "\\", "{", "}", "c")
            .list()
            .ofMinSize(1)
            .ofMaxSize(5)
            .map(letters -> String.join("", letters));
    Arbitrary<String> line = word.list().ofMaxSize(4).map(words -> String.join(" ", words));
    return line.list().ofMinSize(1).ofMaxSize(5);
  }

  @Property(tries = 200)
  void literalBlocks(@ForAll("lines") List<String> lines) {
    check("k: |\n" + indented(lines));
    check("k:\n  - |-\n" + indented(lines) + "\n\n  - x\n");
    check("k: |+ # more\n" + indented(lines));
  }

  @Property(tries = 200)
  void foldedBlocks(@ForAll("lines") List<String> lines) {
    check("k: >\n" + indented(lines));
    check("k: >-\n" + indented(lines) + "\n\n\n" + indented(lines));
    check("k: >2\n" + indented(lines).replaceFirst("    ", "      "));
  }

  @Property(tries = 200)
  void quotes(@ForAll("lines") List<String> lines) {
    String text = String.join("\n    ", lines);
    check("k: '" + text.replace("'", "''") + "'\n");
    check("k: [1, \"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"]\n");
    check("k: \"x \\\n   " + text.replace("\\", "\\u005c").replace("\"", "\\x22") + "\\n\"\n");
  }

  @Property(tries = 200)
  void plain(@ForAll("lines") List<String> lines) {
    check("k: x" + String.join("\n    ", lines) + "\nl: y\n");
  }

  private static String indented(List<String> lines) {
    StringBuilder all = new StringBuilder();
    for (String line : lines) {
      all.append(line.isEmpty() ? "" : "    " + line).append('\n');
    }
    return all.toString();
  }

  private static void check(String yaml) {
    SourceFile file = new SourceFile("x.yaml", yaml);
    Findings findings = new Findings();
    YamlNode.Entries map = YamlParser.read(file, 0, yaml.length(), Limits.STANDARD, findings);
    assertNotNull(map, yaml + findings.sorted());
    YamlNode node = map.entries().get(0).value();
    if (node instanceof YamlNode.Items items) {
      node = items.items().get(yaml.startsWith("k: [") ? 1 : 0);
    }
    SourceText text = ((YamlNode.Text) node).text();
    int before = -1;
    for (int i = 0; i < text.text().length(); i++) {
      char c = text.text().charAt(i);
      int at = text.offset(i);
      char written = yaml.charAt(Math.min(at, yaml.length() - 1));
      boolean same =
          written == c
              || written == '\\'
              || c == ' ' && written == '\n'
              || c == '\n' && at == yaml.length();
      assertTrue(same, () -> yaml + "\n" + text.text() + " at " + at);
      boolean pair = Character.isLowSurrogate(c);
      assertTrue(at > before || pair && at == before, yaml);
      before = at;
    }
    assertEquals(List.of(), findings.sorted());
  }
}
