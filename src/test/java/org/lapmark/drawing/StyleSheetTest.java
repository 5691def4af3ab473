package org.lapmark.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class StyleSheetTest {
  @Test
  void readsEveryProperty() {
    StyleSheet sheet =
        StyleSheet.parse(
            """
            # a comment
            seam.stroke = 0.3
            seam.dash = 3 1.5
            seam.grey = 0.2
            name.size = 9.5
            name.bold = true
            name.halo = 0.4
            cloth.fill = 0.9
            """);
    assertEquals(new Style(0.3, List.of(3.0, 1.5), 0.2, -1, 0, false, 0), sheet.style("seam"));
    assertEquals(new Style(0, List.of(), 0, -1, 9.5, true, 0.4), sheet.style("name"));
    assertEquals(new Style(0, List.of(), 0, 0.9, 0, false, 0), sheet.style("cloth"));
    assertEquals(List.of("cloth", "name", "seam"), List.copyOf(sheet.styles().keySet()));
  }

  @Test
  void namesTheKeyThatIsWrong() {
    for (String line :
        List.of(
            "seam.colour = 1",
            "seam.stroke = thick",
            "seam.stroke = -1",
            "seam.stroke = NaN",
            "seam.grey = 1.5",
            "seam.bold = yes",
            "seam.dash = 1 x",
            "stroke = 1")) {
      Exception e = assertThrows(IllegalArgumentException.class, () -> StyleSheet.parse(line));
      assertTrue(e.getMessage().contains(line.substring(0, line.indexOf(' '))), e.getMessage());
      assertFalse(e.getMessage().contains("input string"), e.getMessage());
    }
  }

  @Test
  void refusesARoleItDoesNotHave() {
    assertThrows(IllegalArgumentException.class, () -> StyleSheet.parse("").style("seam"));
  }
}
