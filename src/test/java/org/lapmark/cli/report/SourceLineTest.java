package org.lapmark.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Position;

class SourceLineTest {
  @Test
  void underlinesWhatIsMeant() {
    assertShown("widht: 3 mm", "^~~~~", 1, 5, "widht: 3 mm");
    assertShown("widht: 3 mm", "       ^", 8, 1, "widht: 3 mm");
  }

  @Test
  void keepsInStepWithTabsWideAndCombiningLetters() {
    assertShown("a   b", "    ^", 3, 1, "a\tb");
    assertShown("a   b", " ^~~", 2, 1, "a\tb");
    assertShown("大小 x", "^~~~", 1, 2, "大小 x");
    assertShown("大小 x", "     ^", 4, 1, "大小 x");
    assertShown("e\u0301x", " ^", 3, 1, "e\u0301x");
    assertShown("👜x", "  ^", 2, 1, "👜x");
  }

  @Test
  void showsSteeringCharactersAsEscapes() {
    assertShown("a\\u001b[2Jb", "^~~~~~~", 1, 2, "a\u001b[2Jb");
    assertShown("\\u202ea", "      ^", 2, 1, "\u202ea");
    assertShown("\\ud800", "^~~~~~", 1, 1, "\ud800");
    assertShown("\\u009b\\u{e0001}", "^~~~~~", 1, 1, "\u009b\udb40\udc01");
  }

  @Test
  void marksThePlaceBehindTheEnd() {
    assertShown("ab", "  ^", 3, 1, "ab");
    assertShown("", "^", 1, 1, "");
  }

  @Test
  void cutsLongLinesAroundThePlace() {
    String line = "a".repeat(500) + "X" + "b".repeat(500);
    assertShown(
        "…" + "a".repeat(40) + "X" + "b".repeat(59) + "…", " ".repeat(41) + "^", 501, 1, line);
    assertShown(
        "…" + "a".repeat(40) + "X" + "b".repeat(59) + "…",
        " ".repeat(41) + "^" + "~".repeat(59),
        501,
        400,
        line);
  }

  @Property(tries = 200)
  void alwaysTwoLinesWithOneMark(
      @ForAll String line,
      @ForAll @IntRange(max = 300) int column,
      @ForAll @IntRange(max = 300) int length) {
    String shown = SourceLine.underlined(new Position("f", 1, column, length, line), "");
    assertEquals(2, shown.chars().filter(c -> c == '\n').count());
    assertEquals(
        2,
        shown
            .codePoints()
            .filter(c -> c == '\n' || Character.getType(c) == Character.CONTROL)
            .count());
    String under = shown.substring(shown.indexOf('\n') + 1, shown.length() - 1);
    assertTrue(under.matches(" *\\^~*"), under);
  }

  private static void assertShown(
      String line, String under, int column, int length, String source) {
    assertEquals(
        line + "\n" + under + "\n",
        SourceLine.underlined(new Position("f", 1, column, length, source), ""));
  }
}
