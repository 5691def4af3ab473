package org.lapmark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.finding.Findings;

class HtmlTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '§',
      value = {
        "Cut {a}. ¦ <p>Cut <span class=\"value\">200~mm</span>.</p>",
        "*a* **b** `<` ¦ <p><em>a</em> <strong>b</strong> <code>&lt;</code></p>",
        "a<b & c ¦ <p>a&lt;b &amp; c</p>",
        "# A ¦ <h3>A</h3>",
        "***** ¦ <hr/>",
        "> a ¦ <blockquote><p>a</p>⏎</blockquote>",
        "- a⏎- b ¦ <ul><li>a</li><li>b</li></ul>",
        "3. a⏎⏎4. b ¦ <ol start=\"3\"><li><p>a</p>⏎</li><li><p>b</p>⏎</li></ol>",
        "a\\⏎b ¦ <p>a<br/>b</p>",
        "[](step:mark) ¦ <p><a class=\"reference\" href=\"#step-mark\">step-mark</a></p>",
        "[*it*](piece:2) ¦ <p><a class=\"reference\" href=\"#piece-2\"><em>it</em></a></p>",
        "<mailto:maud@example.org> ¦"
            + " <p><a href=\"mailto:maud@example.org\">mailto:maud@example.org</a></p>",
        "<maud@example.org> ¦" + " <p><a href=\"mailto:maud@example.org\">maud@example.org</a></p>",
        "```tip⏎*a*⏎``` ¦ <div class=\"tip\"><p class=\"label\">TIP</p><p><em>a</em></p>⏎</div>",
        "```figure⏎a<b⏎``` ¦ <figure>a&lt;b⏎</figure>",
        "![{a} \"wide\"](art/b.svg) ¦ <img src=\"art/b.svg\" alt=\"200~mm &quot;wide&quot;\"/>",
        "a|b⏎-|-:⏎c|d ¦ <table><thead><tr><th scope=\"col\">a</th>"
            + "<th scope=\"col\" class=\"right\">b</th></tr></thead>"
            + "<tbody><tr><td>c</td><td class=\"right\">d</td></tr></tbody></table>",
        "a^[b] ¦ <p>a<sup class=\"note\"><a href=\"#s1-note-1\" title=\"note 1\">1</a></sup></p>⏎"
            + "<ol class=\"notes\"><li id=\"s1-note-1\">b</li></ol>",
      })
  void writesXhtml(String markdown, String html) {
    Manuscript manuscript = Samples.read(markdown.replace('⏎', '\n'));
    String written = Samples.html(manuscript, Samples.pattern("M", 200));
    assertEquals(html.replace('⏎', '\n').replace('~', '\u00a0'), written.stripTrailing());
  }

  @Test
  void htmlIsShownAsText() {
    Manuscript manuscript =
        Samples.read("<script>alert(1)</script>\n\n<div onclick='x'>*a*</div>", new Findings());
    String html = Samples.html(manuscript);
    assertFalse(html.contains("<script") || html.contains("<div"), html);
    assertEquals(
        "<p>&lt;script&gt;alert(1)&lt;/script&gt;</p>\n"
            + "<p>&lt;div onclick='x'&gt;<em>a</em>&lt;/div&gt;</p>\n",
        html);
  }

  @Test
  void refusedLinksAndPicturesLeaveTheirWords() {
    Manuscript manuscript =
        Samples.read("[a](javascript:x) ![b](art/c.svg) [d](step:e)", new Findings());
    assertEquals("<p>a b d</p>\n", Samples.html(manuscript));
  }

  @Test
  void aLinkNeverStandsInALink() {
    Manuscript manuscript = Samples.read("[a^[b] {a}](https://example.org)");
    String html = Samples.html(manuscript, Samples.pattern("M", 200));
    assertEquals(1, html.split("<a ", -1).length - 1, html);
  }

  @Test
  void inAllSizesAValueIsListedBySize() {
    Manuscript manuscript = Samples.read("{a} {a as cm} {n}");
    String html = Samples.html(manuscript, Samples.pattern("S", 200), Samples.pattern("M", 240.4));
    assertEquals(
        "<p><span class=\"value\">S 200\u00a0mm, M 240\u00a0mm</span>"
            + " <span class=\"value\">S 20\u00a0cm, M 24\u00a0cm</span>"
            + " <span class=\"value\">3</span></p>\n",
        html);
  }

  @Test
  void whatCantBeComputedIsReportedOnceAndTheRestPrinted() {
    Manuscript manuscript = Samples.read("{a} {b}");
    Findings findings = new Findings();
    Printing printing =
        Printing.of(
            manuscript.values(),
            List.of(Samples.pattern("S", 200), Samples.pattern("M", 240)),
            Samples.METRIC,
            findings);
    assertEquals(1, findings.sorted().size());
    assertEquals(
        List.of("200\u00a0mm", "240\u00a0mm"), printing.all().stream().map(v -> v.text()).toList());
    assertEquals("S", printing.of(manuscript.values().get(0)).get(0).variant().size());
  }

  @Test
  void notesCanBeNumberedOn() {
    Manuscript manuscript = Samples.read("a^[b]");
    HtmlText writer =
        new HtmlText(
            Samples.printing(manuscript), new HtmlText.Frame(5, "x", 4), new Samples.Plain());
    assertEquals(
        "<p>a<sup class=\"note\"><a href=\"#x-note-1\" title=\"note 5\">5</a></sup></p>\n"
            + "<ol class=\"notes\" start=\"5\"><li id=\"x-note-1\">b</li></ol>\n",
        writer.text(manuscript));
  }

  @Test
  void headingsEndAtTheSixthLevel() {
    Manuscript manuscript = Samples.read("# a\n\n## b");
    HtmlText writer =
        new HtmlText(
            Samples.printing(manuscript), new HtmlText.Frame(5, "x", 0), new Samples.Plain());
    assertEquals("<h6>a</h6>\n<h6>b</h6>\n", writer.text(manuscript));
  }

  @Test
  void noLevelOfHeadingsIsLeftOut() {
    Manuscript manuscript = Samples.read("## a\n\n## b\n\n# c\n\n## d");
    HtmlText writer =
        new HtmlText(
            Samples.printing(manuscript), new HtmlText.Frame(2, "x", 0), new Samples.Plain());
    assertEquals("<h3>a</h3>\n<h3>b</h3>\n<h3>c</h3>\n<h4>d</h4>\n", writer.text(manuscript));
  }

  @Test
  void markupStaysWellFormed() {
    assertEquals(
        "<p class=\"&lt;&quot;&amp;\">a&gt;b</p>",
        new Markup().open("p", "class", "<\"&", "id", null).text("a\u0000>\ud800b").close() + "");
    assertThrows(IllegalStateException.class, () -> new Markup().open("p").toString());
    assertThrows(IllegalArgumentException.class, () -> new Markup().open("p onclick"));
  }
}
