package org.lapmark.packing;

/**
 * How long and how finely to search. The search is bounded by counted work, never by a clock, so
 * that the same shapes are always arranged alike.
 *
 * @param gap the least distance between two shapes in millimetres
 * @param runs how often an arrangement is changed at most
 * @param patience after how many changes in a row that save neither a tile nor a join to stop, for
 *     four shapes; for more of them in proportion
 * @param work how many comparisons of rows are made at most; at least one arrangement is always
 *     finished
 * @param seed what the random choices start from
 */
public record Search(double gap, int runs, int patience, long work, long seed) {
  /** A gap of 2 mm, and about three tenths of a second at most. */
  public static final Search DEFAULT = new Search(2, 40_000, 2_000, 30_000_000L, 20_261_012L);

  /** One arrangement, without searching on. */
  public static final Search ONCE = new Search(2, 0, 0, 2_000_000L, DEFAULT.seed());

  /** The search that an effort stands for. */
  public static Search of(Effort effort) {
    return effort == Effort.FULL ? DEFAULT : ONCE;
  }
}
