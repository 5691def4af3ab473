package org.lapmark.geometry;

/**
 * Whole numbers beside a number. {@link Math} does the same through a slow detour wherever only the
 * first compiler is at work, and rasters ask millions of times.
 */
public final class Whole {
  private Whole() {}

  /**
   * As {@code (int) Math.floor(value)}.
   *
   * @param value any number
   * @return the greatest whole number that isn't greater, as far as there is one
   */
  public static int floor(double value) {
    int whole = (int) value;
    return value < whole && whole != Integer.MIN_VALUE ? whole - 1 : whole;
  }

  /**
   * As {@code (int) Math.ceil(value)}.
   *
   * @param value any number
   * @return the least whole number that isn't less, as far as there is one
   */
  public static int ceil(double value) {
    int whole = (int) value;
    return value > whole && whole != Integer.MAX_VALUE ? whole + 1 : whole;
  }
}
