package org.lapmark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;

class GarbageTest {
  private static final List<String> SCRAPS =
      List.of(
          "{a}",
          "{a*n}",
          "{",
          "}",
          "{a|n}",
          "\\{",
          "\\|",
          "|",
          "|-|-|\n",
          "*",
          "**",
          "_",
          "`",
          "```",
          "````",
          "~~~",
          "```tip\n",
          "```warning\n",
          "```figure\n",
          "```tpi\n",
          "\n",
          "\n\n",
          "\n> ",
          "\n- ",
          "\n1. ",
          "    ",
          "\t",
          " ",
          "# ",
          "### ",
          "[",
          "]",
          "(",
          ")",
          "[^a]",
          "\n[^a]: ",
          "^[",
          "[](step:mark)",
          "](step:",
          "](https://example.org)",
          "![",
          "](art/a.svg)",
          "<b>",
          "<!--",
          "-->",
          "<",
          ">",
          "&amp;",
          "&#1;",
          "&#xD800;",
          "&#xe000;",
          "\u0000",
          "\u0001",
          "\u0085",
          "\ud83e",
          "\udff5",
          "\ue000",
          "\ue001",
          "\ufffe",
          "🧵",
          "é",
          "word",
          "\\",
          "---",
          "\n[r]: step:mark\n",
          "[r]",
          "\n===\n",
          "\\\n",
          "  \n",
          "\r",
          "\u2028");

  @Provide
  Arbitrary<String> garbage() {
    return Arbitraries.of(SCRAPS).list().ofMaxSize(60).map(scraps -> String.join("", scraps));
  }

  @Property(tries = 300)
  void nothingThrowsAndWhatIsWrittenIsWellFormed(@ForAll("garbage") String text) throws Exception {
    Findings findings = new Findings();
    Manuscript manuscript = Samples.read(text, findings);
    String html = Samples.html(manuscript, Samples.pattern("S", 20), Samples.pattern("M", 24));
    parse("<div>" + html + "</div>");
    String plain = PlainText.wordsOnly().text(manuscript);
    assertTrue(plain.codePoints().allMatch(Letters::isPlain), plain);
    for (Finding finding : findings.sorted()) {
      assertFalse(FindingText.message(finding).isBlank());
      assertFalse(FindingText.hint(finding).isBlank());
      assertTrue(finding.position().line() >= 1);
    }
  }

  @Property(tries = 200)
  void aValueSurvivesAnySurroundingsThatDontOpenABrace(@ForAll("garbage") String before) {
    String text = before.replaceAll("[`~{}<\\\\]", "") + "\n\nCut {a*n*a} here.";
    Findings findings = new Findings();
    Manuscript manuscript = Samples.read(text, findings);
    List<Inline.Value> values = manuscript.values();
    boolean unused = findings.sorted().stream().anyMatch(f -> f.code() == TextCode.FOOTNOTE_UNUSED);
    if (!unused) {
      assertEquals(
          1, values.stream().filter(value -> value.expression().equals("a*n*a")).count(), text);
    }
  }

  @Example
  void hostileTextsTakeNoTimeAndNoStack() throws Exception {
    int limit = Manuscript.MAX_LENGTH;
    for (String unit :
        List.of(
            "[", "![", "*a _b ", "`", "{", "^[", "> ", "[](", "<", "<!--", "<a ", "*a **b ", "[^",
            "|a", "`` ` ")) {
      String text = unit.repeat(limit / unit.length());
      Manuscript manuscript = Samples.read(text, new Findings());
      parse("<div>" + Samples.html(manuscript) + "</div>");
    }
    StringBuilder stairs = new StringBuilder();
    for (int i = 0; i < 100; i++) {
      stairs.append(" ".repeat(2 * i)).append("- a\n");
    }
    Findings findings = new Findings();
    Manuscript manuscript = Samples.read(stairs.toString(), findings);
    parse("<div>" + Samples.html(manuscript) + "</div>");
    assertEquals(TextCode.TEXT_TOO_DEEP, findings.sorted().get(0).code());
  }

  private static void parse(String xml) throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    builder.setErrorHandler(new DefaultHandler());
    builder.parse(new InputSource(new StringReader(xml)));
  }
}
