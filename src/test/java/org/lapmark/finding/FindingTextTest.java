package org.lapmark.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FindingTextTest {
  enum Code implements FindingCode {
    LOOSE_THREAD {
      // A body of its own makes the constant's class another than the enum's.
      @Override
      public Severity severity() {
        return Severity.NOTE;
      }
    },
    NO_HINT;

    @Override
    public Severity severity() {
      return Severity.ERROR;
    }
  }

  private static Finding finding(Object name, int count) {
    return Finding.of(
        Code.LOOSE_THREAD, Position.ofFile("towel/pattern.yaml"), "name", name, "count", count);
  }

  @Test
  void argumentsAreSetIn() {
    assertEquals("“hem” has one loose thread.", FindingText.message(finding("hem", 1)));
    assertEquals("“hem” has 2,000 loose threads.", FindingText.message(finding("hem", 2000)));
    assertEquals("It’s best cut off.", FindingText.hint(finding("hem", 1)));
  }

  @Test
  void bracesAndApostrophesInArgumentsStandForThemselves() {
    FindingText text = new FindingText();
    for (String awkward : new String[] {"{count}", "it's '{", "#", "}", "''", "{0", "|"}) {
      assertEquals("“" + awkward + "” has one loose thread.", text.messageOf(finding(awkward, 1)));
    }
  }

  @Test
  void aCodeWithoutWordsIsTheProgramsFault() {
    Finding silent = Finding.of(Code.NO_HINT, Position.ofFile("towel/pattern.yaml"));
    assertEquals("A message alone.", FindingText.message(silent));
    assertThrows(IllegalStateException.class, () -> FindingText.hint(silent));
  }
}
