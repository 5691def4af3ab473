package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.SAXParserFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.source.drawing.xml.XmlParser;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.read.PatternReader;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Files damaged at random give findings, never a failure. */
class MutantsTest {
  private static final int MUTANTS = Integer.getInteger("lapmark.mutants", 300);
  private static final List<String> PIECES =
      List.of(
          "\"",
          "'",
          "{",
          "}",
          "[",
          "]",
          ":",
          "\n",
          "\t",
          "&a ",
          "*a ",
          "!!x ",
          "---\n",
          "- ",
          "<",
          ">",
          "/>",
          "&",
          "&#0;",
          "]]>",
          "<!--",
          "<!DOCTYPE x>",
          "e999",
          "-",
          ",",
          ";",
          "\u0000",
          "\u00e9",
          "\ud834\udd1e",
          "|\n",
          "? ",
          "M",
          "z",
          "0",
          "1e9",
          "../",
          "% ",
          "|",
          "\r");

  @TempDir Path parent;

  @ParameterizedTest
  @ValueSource(strings = {"pattern.yaml", "sizes.csv", "panels/front.svg", "steps/010-cut.md"})
  void damagedFilesGiveFindings(String name) throws Exception {
    Path folder = Files.createDirectory(parent.resolve("pouch"));
    FaultCase.copyBase(folder);
    damage(folder, folder.resolve(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pattern.yaml", "sizes.csv", "panels/end.svg", "steps/010-cut.md"})
  void damagedFilesOfTheDemoGiveFindings(String name) throws Exception {
    Path demo = Path.of("content", "towpath-handlebar-bag");
    Path folder = Files.createDirectory(parent.resolve("bag"));
    for (String file : List.of("pattern.yaml", "sizes.csv", "panels/end.svg", "steps/010-cut.md")) {
      Files.createDirectories(folder.resolve(file).getParent());
      Files.copy(demo.resolve(file), folder.resolve(file));
    }
    damage(folder, folder.resolve(name));
  }

  @Test
  void damagedCopiesAndLayersGiveFindings() throws Exception {
    Path folder = Files.createDirectory(parent.resolve("pouch"));
    FaultCase.copyBase(folder);
    Path file = folder.resolve("panels/front.svg");
    Files.writeString(
        file,
        """
        <svg xmlns="http://www.w3.org/2000/svg" xmlns:l="http://www.w3.org/1999/xlink"
            xmlns:p="program" width="100mm" height="80mm" viewBox="0 0 100 80">
          <style>.a { display: none }</style>
          <defs><symbol id="s" viewBox="0 0 2 2"><path id="dot" d="M 1 1 h 1"/></symbol></defs>
          <g p:label="outline" transform="scale(2 1)"><path d="M 0 0 H 50"/>
            <path d="M 0 80 H 50 V 0"/><path class="b" d="M 0 80.03 V 0"/></g>
          <use l:href="#dot" id="corner_x2E_a" x="-1" y="-1"/>
          <svg x="50%" y="0" width="100" height="100" viewBox="0 0 2 2">
            <use href="#s" data-name="corner.b-2" x="0" y="-1" width="2" height="2"/>
            <g style="display:none"><circle id="drill.c" cx="1em"/></g></svg>
          <switch><a><text>Guide</text></a></switch>
        </svg>
        """);
    damage(folder, file);
  }

  private static void damage(Path folder, Path file) throws Exception {
    byte[] original = Files.readAllBytes(file);
    Random random = new Random(20260504);
    int withFindings = 0;
    FindingText texts = new FindingText();
    for (int i = 0; i < MUTANTS; i++) {
      byte[] mutant = mutant(original, random);
      Files.write(file, mutant);
      Findings findings = new Findings();
      PatternSource source = PatternReader.read(folder, findings);
      if (source != null) {
        for (PanelSource panel : source.panels()) {
          if (panel.shape() instanceof ShapeSource.Drawn drawn) {
            drawn.drawing().resolve(formula -> 60.0, findings);
          }
        }
      }
      withFindings += findings.sorted().isEmpty() ? 0 : 1;
      for (Finding finding : findings.sorted()) {
        assertFalse(texts.messageOf(finding).isBlank());
        assertFalse(texts.hintOf(finding).isBlank());
      }
    }
    assertTrue(withFindings > MUTANTS / 10, "hardly any damage was noticed");
  }

  static byte[] mutant(byte[] original, Random random) {
    byte[] mutant = original;
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(mutant.length);
      int to = Math.min(mutant.length, at + 1 + random.nextInt(12));
      byte[] piece =
          switch (random.nextInt(5)) {
            case 0 -> new byte[] {(byte) random.nextInt(256)};
            case 1 -> new byte[0];
            case 2 -> Arrays.copyOfRange(original, 0, random.nextInt(original.length));
            default -> PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
          };
      byte[] next = new byte[at + piece.length + mutant.length - (random.nextBoolean() ? at : to)];
      System.arraycopy(mutant, 0, next, 0, at);
      System.arraycopy(piece, 0, next, at, piece.length);
      int rest = next.length - at - piece.length;
      System.arraycopy(mutant, mutant.length - rest, next, at + piece.length, rest);
      mutant = next.length == 0 ? original : next;
    }
    return mutant;
  }

  /** What is well-formed is what the platform's own parser finds so. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void theXmlParserAgreesWithAnotherOne(long seed) throws Exception {
    byte[] original =
        ("<?xml version=\"1.0\"?>\n<!-- a -->\n<s:svg xmlns:s=\"a\" xmlns=\"b\" b='&lt;&#65;'>"
                + "<g a=\"1\" s:a='2'><![CDATA[ < ]]> &amp; text</g><?pi x?><a/></s:svg>\n")
            .getBytes(StandardCharsets.UTF_8);
    SAXParserFactory factory = SAXParserFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    Random random = new Random(seed);
    int good = 0;
    for (int i = 0; i < 700; i++) {
      String text = new String(mutant(original, random), StandardCharsets.UTF_8);
      // What no text file may hold is found before; document types are refused on purpose.
      if (text.contains("<!DOCTYPE") || text.matches("(?s).*[\\p{Cc}\ufffd&&[^\n\t]].*")) {
        continue;
      }
      String theirs = platform(factory, text);
      String ours;
      try {
        XmlParser.read(new SourceFile("x.svg", text), Limits.STANDARD);
        ours = "well-formed";
        good++;
      } catch (FindingException e) {
        ours = "not well-formed";
      }
      assertEquals(theirs, ours, text);
    }
    assertTrue(good > 20);
  }

  private static String platform(SAXParserFactory factory, String text) throws Exception {
    try {
      factory.newSAXParser().parse(new InputSource(new StringReader(text)), new DefaultHandler());
      return "well-formed";
    } catch (SAXException e) {
      return "not well-formed";
    }
  }
}
