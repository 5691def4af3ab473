package org.lapmark.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WholeTest {
  @ParameterizedTest
  @ValueSource(
      doubles = {
        0,
        -0.0,
        0.5,
        -0.5,
        3,
        -3,
        -1e-300,
        1e-300,
        2147483646.5,
        2147483647,
        2147483647.5,
        2147483648.0,
        -2147483647.5,
        -2147483648.0,
        -2147483648.5,
        -2147483649.0,
        1e300,
        -1e300,
        Double.MIN_VALUE,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY
      })
  void areThoseThatMathGives(double value) {
    assertEquals((int) Math.floor(value), Whole.floor(value));
    assertEquals((int) Math.ceil(value), Whole.ceil(value));
  }

  @Property(tries = 2000)
  void areThoseThatMathGivesOfAny(@ForAll double value) {
    areThoseThatMathGives(value);
  }

  @Property(tries = 2000)
  void areThoseThatMathGivesOfLengths(@ForAll @DoubleRange(min = -1e4, max = 1e4) double value) {
    areThoseThatMathGives(value);
    areThoseThatMathGives(Math.rint(value));
  }
}
