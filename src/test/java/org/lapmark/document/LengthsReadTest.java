package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reader of published lengths sees what it is to see, and nothing else. */
class LengthsReadTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Cut 101 mm (4 in) and 103 mm (4 in).",
        "Cut 4 in (101 mm) and 4 in (103 mm).",
        "A strip of 6 mm (1/4 in), turned by 6.6 mm (1/4 in).",
        "A seam of 6 mm (1 in).",
        "Clip 10 mm (3/8 in) deep. Sew 10 mm (3/8 in) from the edge.",
        "Clip every 10 mm, 12 mm deep. Sew 10 mm (3/8 in) from the edge.",
        "A hem of 10 mm (⅜ in)."
      })
  void whatIsAmissIsSeen(String text) {
    assertThrows(AssertionError.class, () -> LengthsRead.held("here", text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Cut 101 mm (4 in) and 102 mm (4 in).",
        "Cut 101 mm (3 15/16 in) and 103 mm (4 1/16 in).",
        "Cut 101 mm (4 in), and 101 mm (4 in) again.",
        "Clip 8 mm (5/16 in) deep. Sew 10 mm (3/8 in) from the edge.",
        "Clip 7 mm deep. Sew 10 mm (3/8 in) from the edge."
      })
  void whatIsRightPasses(String text) {
    assertTrue(LengthsRead.held("here", text) > 0);
  }
}
