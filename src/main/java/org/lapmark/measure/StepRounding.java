package org.lapmark.measure;

/**
 * Rounding to multiples of a step. What lies within a 1e-9th of a multiple (of the multiple's
 * number, or of one step where that is more, and never more than a thousandth of a step) is taken
 * to be that multiple: 25.0000000001 is not rounded up to 26, and a half that arithmetic has put
 * just below is still a half.
 */
public final class StepRounding {
  private static final double GUARD = 1e-9;

  /** Large counts must not lose whole steps to the guard. */
  private static final double WIDEST = 1e-3;

  /** From here on every double is a whole number, and there is nothing to round. */
  private static final double WHOLE = 0x1p52;

  private StepRounding() {}

  static double up(double value, double step) {
    double count = value / step;
    return Math.abs(count) >= WHOLE ? value : multiple(Math.ceil(count - guard(count)), step);
  }

  static double down(double value, double step) {
    double count = value / step;
    return Math.abs(count) >= WHOLE ? value : multiple(Math.floor(count + guard(count)), step);
  }

  static double nearest(double value, double step) {
    double count = value / step;
    return Math.abs(count) >= WHOLE ? value : multiple(nearestCount(value, step), step);
  }

  /** How many steps are nearest to a value; a half goes away from zero. */
  static double nearestCount(double value, double step) {
    double count = value / step;
    if (Math.abs(count) >= WHOLE) {
      return count;
    }
    double size = Math.floor(Math.abs(count) + 0.5 + guard(count));
    return count < 0 ? -size : size;
  }

  /** How many steps a value comes to when it is rounded in a direction. */
  public static double count(double value, double step, Rounding rounding) {
    double count = value / step;
    if (Math.abs(count) >= WHOLE) {
      return count;
    }
    return switch (rounding) {
      case NEAREST -> nearestCount(value, step);
      case AT_MOST -> Math.floor(count + guard(count));
      case AT_LEAST -> Math.ceil(count - guard(count));
    };
  }

  private static double guard(double count) {
    return Math.min(WIDEST, GUARD * Math.max(1, Math.abs(count)));
  }

  private static double multiple(double count, double step) {
    // Tenths are not exact in binary, tens are: 3 steps of 0.1 are 3 / 10, not 0.30000000000000004.
    double inverse = Math.rint(1 / step);
    return inverse > 1 && inverse < 1e6 && 1 / inverse == step ? count / inverse : count * step;
  }
}
