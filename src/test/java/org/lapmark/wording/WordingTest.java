package org.lapmark.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class WordingTest {
  private static Wording wording() {
    Map<String, String> messages = new TreeMap<>();
    messages.put("pieces", "{count, plural, one {one piece} other {# pieces}} of {material}");
    messages.put("seam", "seam allowance");
    return new Wording(Locale.UK, messages);
  }

  @Test
  void argumentsAreSetInByName() {
    assertEquals("seam allowance", wording().text("seam"));
    Map<String, Object> arguments = new TreeMap<>();
    arguments.put("count", 2);
    arguments.put("material", "{main}");
    assertEquals("2 pieces of {main}", wording().text("pieces", arguments));
    arguments.put("count", 1);
    assertEquals("one piece of {main}", wording().text("pieces", arguments));
  }

  @Test
  void aMissingKeyIsSaid() {
    assertThrows(IllegalArgumentException.class, () -> wording().text("gusset"));
  }

  @Test
  void theOrderOfTheBundleIsKept() {
    assertEquals(List.of("pieces", "seam"), List.copyOf(wording().messages().keySet()));
  }
}
