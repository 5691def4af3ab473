package org.lapmark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;

class ManuscriptTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Cut {a*n*2} wide.",
        "Cut **wide: {a*n*2}**.",
        "Cut *{a*n*2} and* more.",
        "Cut [{a*n*2}](https://example.org).",
        "Cut [{a*n*2}](step:mark).",
        "- Cut\n  1. and\n     - {a*n*2}",
        "> Cut {a*n*2}",
        "## {a*n*2}",
        "| Cut | {a*n*2} |\n|--|--|\n| b | c |",
        "| Cut | Sew |\n|--|--|\n| \\| {a*n*2} | c |",
        "```tip\n- Cut {a*n*2}\n```",
        "- Cut\n\n  ~~~warning\n  Cut {a*n*2}\n  ~~~",
        "Cut.[^1]\n\n[^1]: By {a*n*2}",
        "Cut.^[By {a*n*2}]",
        "![by {a*n*2}](art/cut.svg)",
        "\tCut {a*n*2}",
        "-\t🧵\tCut\n\n\t{a*n*2}",
        "Cut \\{b\\} `{b}` {a*n*2}",
      })
  void aPlaceholderStaysWholeWhereverItStands(String text) {
    Manuscript manuscript = Samples.read(text);
    assertEquals(List.of("a*n*2"), expressions(manuscript));
    Position position = manuscript.values().get(0).placeholder().formula().text().position();
    assertEquals(at(text, "a*n*2"), position);
  }

  private static Position at(String text, String part) {
    int start = text.indexOf(part);
    return new SourceFile("bag/steps/010-a.md", text).position(start, start + part.length());
  }

  private static List<String> expressions(Manuscript manuscript) {
    return manuscript.values().stream().map(Inline.Value::expression).toList();
  }

  @Test
  void everyPlaceholderOfATextKeepsItsPlaceBehindEscapesTabsAndAstralLetters() {
    String text =
        "\t\u0001🧵 {a} \\* &amp; {n}\n> | \\| {a+a} | {a+n*a} \\| `\\|` | {n+1} |\n"
            + "> |--|--|--|\n>\t| \\|\\| | {n+2}|{n+3} |\n";
    Findings findings = new Findings();
    List<Inline.Value> values = Samples.read(text, findings).values();
    List<String> names = List.of("{a}", "{n}", "a+a", "a+n*a", "n+1", "n+2", "n+3");
    List<Position> expected = new ArrayList<>();
    for (String name : names) {
      String bare = name.replaceAll("[{}]", "");
      Position braces = at(text, name);
      expected.add(
          name.equals(bare)
              ? braces
              : new Position(
                  braces.file(), braces.line(), braces.column() + 1, 1, braces.lineText()));
    }
    assertEquals(
        expected, values.stream().map(v -> v.placeholder().formula().text().position()).toList());
    assertEquals(
        List.of("text-strange-character"),
        findings.sorted().stream().map(finding -> finding.code().id()).toList());
  }

  @Test
  void aPlaceholderMayRunOverALineEndAndItsPrefix() {
    Manuscript manuscript = Samples.read("> Cut {a +\n>   n * a as\n> cm}.");
    assertEquals(List.of("a+n*a as cm"), expressions(manuscript));
  }

  @Test
  void bracesInCodeAndEscapedBracesAreLiteral() {
    Manuscript manuscript = Samples.read("Write `{a*b} \\|` and \\{a\\}.");
    Block.Paragraph paragraph = (Block.Paragraph) manuscript.blocks().get(0);
    assertEquals(
        List.of(
            new Inline.Words("Write "), new Inline.Code("{a*b} |"), new Inline.Words(" and {a}.")),
        paragraph.content());
  }

  @Test
  void aFaultyPlaceholderStaysAsWrittenAndTheOthersAreRead() {
    Findings findings = new Findings();
    Manuscript manuscript = Samples.read("{a +} {a} {§} {n}", findings);
    assertEquals(List.of("a", "n"), expressions(manuscript));
    assertEquals(2, findings.sorted().size());
    assertEquals("{a +} 1 {§} 1", new PlainText(v -> "1", r -> "").text(manuscript));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "a*2; a * 2",
        "a*2; a*\u00a0 2 ",
        "(a+2)*n; ( a + 2 ) * n",
        "1 3/8 in; 1  3/8  in",
        "min(a,b); min(a, b)",
        "a.b and c; a.b  and c",
        "a.b and c; a.b and\u202fc",
      })
  void expressionsAreComparedWhateverTheirSpaces(String normalised, String written) {
    assertEquals(normalised, Expressions.normalised(written));
    assertEquals(normalised, Expressions.normalised(normalised));
  }

  @Test
  void aTranslationIsComparedByItsExpressions() {
    Manuscript original = Samples.read("Cut {a*2} and {n} of {a as cm}.[^a]\n\n[^a]: {a}");
    Manuscript translation = Samples.read("{n} mal {a as  cm}, dann { a * 2 }.\n\n{a}");
    assertEquals(Set.of("a", "a as cm", "a*2", "n"), original.expressions());
    assertEquals(original.expressions(), translation.expressions());
  }

  @Test
  void referencesKnowWhatTheyReferTo() {
    Manuscript manuscript =
        Samples.read("See [](step:mark), [the *end*](piece:3) and [ ](page:printing).");
    List<Inline.Reference> references =
        ((Block.Paragraph) manuscript.blocks().get(0))
            .content().stream()
                .filter(Inline.Reference.class::isInstance)
                .map(Inline.Reference.class::cast)
                .toList();
    List<String> found =
        references.stream().map(r -> r.kind() + " " + r.target() + " " + r.words().size()).toList();
    assertEquals(List.of("STEP mark 0", "PIECE 3 2", "PAGE printing 0"), found);
    assertEquals(8, references.get(0).position().column());
  }

  @Test
  void theNearestTargetIsOffered() {
    Findings findings = new Findings();
    Samples.read("[](step:fues) [](stap:mark) [](piece:99)", findings);
    List<Object> nearest = new ArrayList<>();
    for (Finding finding : findings.sorted()) {
      nearest.add(finding.arguments().get("nearest"));
    }
    assertEquals(List.of("fuse", "step", "9"), nearest);
  }

  @Test
  void aFigureKeepsItsLinesAsWritten() {
    String text = "1. Sew.\n\n   ```figure  \n   pieces:\n\n\t  - {a|b} \\|\n   ```\n";
    Manuscript manuscript = Samples.read(text);
    Block.Figure figure = manuscript.figures().get(0);
    assertEquals("pieces:\n\n   - {a|b} \\|\n", figure.content().text());
    int at = figure.content().text().indexOf("{a|b}");
    assertEquals(at(text, "{a|b}"), figure.content().position(at, at + 5));
    assertEquals(3, figure.position().line());
    assertEquals(0, manuscript.values().size());
  }

  @Test
  void boxesHoldMarkdown() {
    Manuscript manuscript =
        Samples.read("```` warning\n- Hot: {a}\n\n  ```figure\n  x\n  ```\n````\nCool.");
    Block.Box box = (Block.Box) manuscript.blocks().get(0);
    assertEquals(Block.Box.Kind.WARNING, box.kind());
    assertEquals(1, box.content().size());
    assertInstanceOf(Block.ItemList.class, box.content().get(0));
    assertEquals("x\n", manuscript.figures().get(0).content().text());
    assertEquals(List.of("a"), expressions(manuscript));
    assertEquals(2, manuscript.blocks().size());
  }

  @Test
  void footnotesAreNumberedByTheirMarks() {
    Manuscript manuscript =
        Samples.read("A[^z] b[^y] c[^z] d^[Here.]\n\n[^y]: Second.\n\n[^z]: First.");
    PlainText plain = PlainText.wordsOnly();
    List<String> notes =
        manuscript.footnotes().stream()
            .map(
                note ->
                    note.number()
                        + " "
                        + plain.inlines(((Block.Paragraph) note.content().get(0)).content()))
            .toList();
    assertEquals(List.of("1 First.", "2 Second.", "3 Here."), notes);
  }

  @Test
  void aTableHasItsAlignmentsAndFullRows() {
    Manuscript manuscript = Samples.read("a|b|c|d\n-|:-|:-:|-:\n1|2\n1|2|3|{a}");
    Block.Table table = (Block.Table) manuscript.blocks().get(0);
    assertEquals(
        List.of(
            Block.Table.Alignment.NONE,
            Block.Table.Alignment.LEFT,
            Block.Table.Alignment.CENTER,
            Block.Table.Alignment.RIGHT),
        table.columns());
    assertTrue(table.rows().stream().allMatch(row -> row.size() == 4));
  }

  @Test
  void aTitleBecomesALine() {
    SourceText title = Samples.source("Sew *{a}* \\{");
    List<Inline> line = Manuscript.line(TemplateText.parse(title, new Findings()));
    assertEquals(new Inline.Words("Sew *"), line.get(0));
    assertInstanceOf(Inline.Value.class, line.get(1));
    assertEquals(new Inline.Words("* {"), line.get(2));
  }
}
