package org.lapmark.source.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

class PassagesTest {
  private static SourceText text(String... lines) {
    String content = String.join("\n", lines) + "\n";
    return SourceText.verbatim(new SourceFile("a.md", content), 0, content.length());
  }

  private static String selected(SourceText text, String... holding) {
    return Passages.select(text, one -> List.of(holding).contains(one.text())).text();
  }

  @Test
  void leavesTextsWithoutPassagesAlone() {
    SourceText plain = text("When it is dry,", "```tip", "wait.", "```");
    assertSame(plain, Passages.select(plain, one -> false));
  }

  @Test
  void takesAPassageOrLeavesIt() {
    SourceText text = text("One.", "```when piping", "Two.", "```", "Three.");
    assertEquals("One.\n\nTwo.\n\nThree.\n", selected(text, "piping"));
    assertEquals("One.\n\n\nThree.\n", selected(text));
  }

  @Test
  void passagesAndTipsStandInEachOther() {
    SourceText text =
        text(
            "`````tip",
            "````when a",
            "A.",
            "```when b = c",
            "B.",
            "```",
            "````",
            "`````",
            "```figure",
            "~~~when a",
            "```");
    assertEquals(
        "`````tip\n\nA.\n\nB.\n\n\n`````\n```figure\n~~~when a\n```\n",
        selected(text, "a", "b = c"));
    assertEquals("`````tip\n\nA.\n\n\n\n`````\n```figure\n~~~when a\n```\n", selected(text, "a"));
    assertEquals("`````tip\n\n\n`````\n```figure\n~~~when a\n```\n", selected(text, "b = c"));
  }

  @Test
  void aListOrTableGoesOn() {
    SourceText text =
        text(
            "- one", "```when a", "- two", "```", "- three", "| a |", "~~~ when a", "| b |", "~~~");
    assertEquals("- one\n- two\n- three\n| a |\n| b |\n", selected(text, "a"));
    assertEquals("- one\n- three\n| a |\n", selected(text));
  }

  @Test
  void everyCharacterKeepsItsPlace() {
    SourceText text = text("One.", "```when a", "Two {x}.", "```", "Three {y}.");
    SourceText chosen = Passages.select(text, one -> true);
    assertEquals(
        3, chosen.position(chosen.text().indexOf("{x}"), chosen.text().indexOf("{x}") + 3).line());
    SourceText without = Passages.select(text, one -> false);
    int at = without.text().indexOf("{y}");
    assertEquals("{y}", without.position(at, at + 3).lineText().substring(6, 9));
    assertEquals(5, without.position(at, at + 3).line());
  }

  @Test
  void anOuterFenceEndsWhatIsOpenInIt() {
    SourceText text = text("````when a", "```when b", "B.", "````", "End.");
    assertEquals("\n\nEnd.\n", selected(text));
    assertEquals(1, Passages.unclosed(text).size());
    assertEquals("```when b", Passages.unclosed(text).get(0).text());
    assertEquals(
        List.of("a", "b"), Passages.conditions(text).stream().map(SourceText::text).toList());
  }

  @Property(tries = 300)
  void whatIsChosenIsPartOfTheText(@ForAll @Size(max = 12) List<Piece> pieces) {
    SourceText text = text(pieces.stream().map(piece -> piece.line).toArray(String[]::new));
    for (boolean holds : new boolean[] {true, false}) {
      SourceText chosen = Passages.select(text, one -> holds);
      int last = -1;
      for (int i = 0; i < chosen.text().length(); i++) {
        int place = chosen.offset(i);
        assertTrue(place > last);
        assertEquals(text.text().charAt(place), chosen.text().charAt(i));
        last = place;
      }
    }
  }

  enum Piece {
    WORDS("Words."),
    ITEM("- item"),
    OPEN("```when a"),
    LONGER("````when b"),
    TILDE("~~~ when c"),
    FIGURE("```figure"),
    TIP("````tip"),
    CLOSE("```"),
    CLOSE_LONGER("````"),
    CLOSE_TILDE("~~~"),
    INDENTED("   ```"),
    NOTHING("");

    private final String line;

    Piece(String line) {
      this.line = line;
    }
  }
}
