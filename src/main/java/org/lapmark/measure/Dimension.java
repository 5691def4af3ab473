package org.lapmark.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What kind of thing a quantity counts; only like kinds are added. */
public enum Dimension {
  /** A length, held in millimetres. */
  LENGTH,
  /** An area, held in square millimetres. */
  AREA,
  /** An angle, held in degrees. */
  ANGLE,
  /** A number of things: whole, without a unit. */
  COUNT,
  /** A pure number. */
  PLAIN,
  /** A zero written without a unit: nothing is nothing of any dimension. Its amount is 0. */
  ZERO;

  /** A stable word for messages to choose by, which call a zero a plain number. */
  String word() {
    return (this == ZERO ? PLAIN : this).name().toLowerCase(Locale.ROOT);
  }

  /** The dimension of a word, unless that is the word of something else. */
  static Optional<Dimension> of(String word) {
    return Arrays.stream(values())
        .filter(dimension -> dimension != ZERO && dimension.word().equals(word))
        .findFirst();
  }

  /**
   * Whether it has no unit.
   *
   * @return true for counts, plain numbers and a written zero
   */
  public boolean isNumber() {
    return this == PLAIN || this == COUNT || this == ZERO;
  }

  /**
   * Whether what is of it will do where a dimension is needed.
   *
   * @param needed the dimension
   * @return true for the same, and for a zero
   */
  public boolean fits(Dimension needed) {
    return this == needed || this == ZERO;
  }

  /**
   * Whether two quantities can be added and compared.
   *
   * @param other the other one's dimension
   * @return true for the same, for two numbers, and where one is a zero
   */
  public boolean isLike(Dimension other) {
    return fits(other) || other == ZERO || isNumber() && other.isNumber();
  }
}
