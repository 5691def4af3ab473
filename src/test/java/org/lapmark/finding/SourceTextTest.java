package org.lapmark.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SourceTextTest {
  private static final SourceFile FILE = new SourceFile("towel/a.yaml", "ab\ncd🧵ef\n\nlast");

  @Test
  void columnsCountCodePoints() {
    assertEquals(new Position("towel/a.yaml", 2, 4, 1, "cd🧵ef"), FILE.position(7, 8));
    assertEquals(new Position("towel/a.yaml", 2, 3, 1, "cd🧵ef"), FILE.position(5, 7));
    assertEquals(new Position("towel/a.yaml", 1, 1, 2, "ab"), FILE.position(0, 6));
  }

  @Test
  void theEndOfTheTextIsAPlace() {
    int end = FILE.content().length();
    assertEquals(new Position("towel/a.yaml", 4, 5, 1, "last"), FILE.position(end, end));
    assertEquals(new Position("towel/a.yaml", 4, 5, 1, "last"), FILE.position(end + 9, end + 10));
    SourceText last = SourceText.verbatim(FILE, end - 4, end);
    assertEquals(new Position("towel/a.yaml", 4, 5, 1, "last"), last.position(4, 5));
    assertEquals(
        new Position("towel/b.yaml", 1, 1, 1, ""),
        new SourceFile("towel/b.yaml", "").position(0, 0));
  }

  @Test
  void mappedTextPointsIntoTheFile() {
    SourceFile file = new SourceFile("towel/a.yaml", "x: \"a\\tb\"");
    SourceText text = SourceText.mapped(file, "a\tb", new int[] {4, 5, 7, 8});
    assertEquals(8, text.position(2, 3).column());
    assertEquals(6, text.part(1, 3).position().column());
    assertEquals(3, text.part(1, 3).position().length());
  }

  @Property(tries = 200)
  void everyStretchHasAPlace(@ForAll String content, @ForAll int start, @ForAll int end) {
    SourceFile file = new SourceFile("towel/a.yaml", content);
    Position position = file.position(start, end);
    int points = position.lineText().codePointCount(0, position.lineText().length());
    assertTrue(position.line() >= 1 && position.length() >= 1);
    assertTrue(position.column() >= 1 && position.column() <= points + 1);
  }
}
