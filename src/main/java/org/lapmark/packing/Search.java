package org.lapmark.packing;

/**
 * How long and how finely to search. The search is bounded by counted work, never by a clock, so
 * that the same shapes are always arranged alike.
 *
 * @param gap the least distance between two shapes in millimetres
 * @param runs how many arrangements are tried at most
 * @param patience after how many arrangements in a row that save neither a tile nor a join to stop
 * @param work how many comparisons of rows are made at most; at least one arrangement is always
 *     finished
 * @param seed what the random choices start from
 */
public record Search(double gap, int runs, int patience, long work, long seed) {
  /** A gap of 3 mm, and some tens of milliseconds. */
  public static final Search DEFAULT = new Search(3, 400, 40, 6_000_000L, 20_261_012L);
}
