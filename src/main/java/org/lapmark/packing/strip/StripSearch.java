package org.lapmark.packing.strip;

/**
 * How long and how closely to search.
 *
 * @param gap how far shapes stay apart, in millimetres
 * @param runs the greatest number of arrangements tried
 * @param work the greatest number of columns compared, after which no further one is begun
 * @param seed what the variations start from
 */
public record StripSearch(double gap, int runs, long work, long seed) {
  /** Checks the components. */
  public StripSearch {
    if (!(gap >= 0) || runs < 1) {
      throw new IllegalArgumentException("a gap is 0 or more, and one arrangement is tried");
    }
  }
}
