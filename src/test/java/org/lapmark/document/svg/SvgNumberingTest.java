package org.lapmark.document.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers are those that are written, rounded as decimals: halves away from zero. */
class SvgNumberingTest {
  private static void isRounded(double value, int decimals) {
    BigDecimal exact = new BigDecimal(Double.toString(value));
    BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP);
    String text = new SvgNumbering(decimals).number(value);
    assertEquals(0, rounded.compareTo(new BigDecimal(text)), text);
    String shortest = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    assertEquals(shortest, text);
  }

  @Property
  void lengthsAreRounded(
      @ForAll @DoubleRange(min = -2000, max = 2000) double value,
      @ForAll @IntRange(min = 0, max = 6) int decimals) {
    isRounded(value, decimals);
  }

  @Property
  void anyNumberIsRounded(
      @ForAll @DoubleRange(min = -1e300, max = 1e300) double value,
      @ForAll @IntRange(min = 0, max = 6) int decimals) {
    isRounded(value, decimals);
  }

  @Property
  void halvesAndTheirNeighboursAreRounded(
      @ForAll @LongRange(min = -2_000_000, max = 2_000_000) long thousandths,
      @ForAll @IntRange(min = 0, max = 4) int decimals) {
    double half =
        BigDecimal.valueOf(2 * thousandths + 1).movePointLeft(decimals + 1).doubleValue() * 5;
    isRounded(half, decimals);
    isRounded(BigDecimal.valueOf(10 * thousandths + 5, decimals + 1).doubleValue(), decimals);
    isRounded(Math.nextUp(half), decimals);
    isRounded(Math.nextDown(half), decimals);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "-0.0004, 0",
    "-0.0005, -0.001",
    "0.0005, 0.001",
    "1.0005, 1.001",
    "0.05, 0.05",
    "12.340, 12.34",
    "100, 100",
    "0.9996, 1",
    "-7.009, -7.009",
    "1234567890.1235, 1234567890.124"
  })
  void writtenWithoutZerosAtTheEnd(double value, String text) {
    assertEquals(text, new SvgNumbering(3).number(value));
  }

  @Test
  void whatIsNoNumberIsRefused() {
    assertThrows(NumberFormatException.class, () -> new SvgNumbering(3).number(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new SvgNumbering(7));
  }
}
