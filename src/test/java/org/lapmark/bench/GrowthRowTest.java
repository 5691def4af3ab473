package org.lapmark.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrowthRowTest {
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 1.1, 2})
  void findsTheExponent(double exponent) {
    double[] numbers = {1, 2, 5, 24, 200};
    double[] times = new double[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      times[i] = 3 * StrictMath.pow(numbers[i], exponent);
    }
    assertEquals(exponent, GrowthRow.exponent(numbers, times), 1e-9);
  }
}
