package org.lapmark.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestWordTest {
  @ParameterizedTest
  @CsvSource({
    "strap, strap, 0",
    "strap, straps, 1",
    "strap, trap, 1",
    "strap, strip, 1",
    "strap, srtap, 1",
    "gusset, gussets_, 2",
    "ca, abc, 3",
    "zip, '', 3"
  })
  void editsAreCounted(String a, String b, int edits) {
    assertEquals(edits, NearestWord.distance(a, b));
    assertEquals(edits, NearestWord.distance(b, a));
  }

  @Test
  void onlyANearWordIsOffered() {
    List<String> known = List.of("strap_length", "strap_width", "mm", "rim");
    assertEquals(Optional.of("strap_width"), NearestWord.of("strap_widht", known));
    assertEquals(Optional.of("strap_length"), NearestWord.of("straplength", known));
    assertEquals(Optional.of("mm"), NearestWord.of("mmm", known));
    assertEquals(Optional.empty(), NearestWord.of("gusset", known));
    assertEquals(Optional.of("M"), NearestWord.of("m", List.of("S", "M")));
    assertEquals(Optional.of("LINING"), NearestWord.of("lining", List.of("binding", "LINING")));
    assertEquals(Optional.empty(), NearestWord.of("x", List.of("y")));
    assertEquals(Optional.empty(), NearestWord.of("", known));
    assertEquals(Optional.empty(), NearestWord.of("x".repeat(1000), List.of("x".repeat(1000))));
  }

  @Test
  void ofEquallyNearWordsTheFirstIsTaken() {
    assertEquals(Optional.of("tape"), NearestWord.of("tap", List.of("tape", "taps")));
    assertEquals(Optional.of("taps"), NearestWord.of("tap", List.of("taps", "tape")));
  }

  @Property(tries = 200)
  void distanceIsSymmetricAndBounded(
      @ForAll @AlphaChars @StringLength(max = 12) String a,
      @ForAll @AlphaChars @StringLength(max = 12) String b) {
    int distance = NearestWord.distance(a, b);
    assertEquals(distance, NearestWord.distance(b, a));
    assertEquals(a.equals(b), distance == 0);
    assertEquals(true, distance <= Math.max(a.length(), b.length()));
    assertEquals(true, distance >= Math.abs(a.length() - b.length()));
  }
}
