package org.lapmark.lay;

/**
 * A length to buy. Shops cut by 10 cm or by an eighth of a yard; each is rounded up from the exact
 * length, never from the other.
 *
 * @param exact millimetres needed, margin and shrinkage included
 * @param margin the share added
 * @param shrinkage the share that is lost
 */
public record Purchase(double exact, double margin, double shrinkage) {
  /**
   * The share that is added to tapes and cords where no margin is stated: their ends are trimmed,
   * knotted or melted, and no shop cuts to the millimetre.
   */
  public static final double FOR_ENDS = 0.05;

  private static final double TEN_CENTIMETRES = 100;
  private static final double EIGHTH_OF_A_YARD = 914.4 / 8;

  /** The noise of sums doesn't buy another step. */
  private static final double NOISE = 1e-6;

  /** Checks the components. */
  public Purchase {
    if (!(exact >= 0) || !(margin >= 0) || !(shrinkage >= 0 && shrinkage < 1)) {
      throw new IllegalArgumentException("a length and its shares are 0 or more");
    }
  }

  /**
   * What has to be bought for a length that is used: the length and its margin, of which the
   * shrinkage is then lost.
   *
   * @param length millimetres used
   * @param margin the share added, 0.1 for ten per cent
   * @param shrinkage the share lost, below 1
   * @return the purchase
   */
  public static Purchase of(double length, double margin, double shrinkage) {
    return new Purchase(length * (1 + margin) / (1 - shrinkage), margin, shrinkage);
  }

  /**
   * The length rounded up to 10 cm.
   *
   * @return millimetres
   */
  public double metric() {
    return steps(TEN_CENTIMETRES) * TEN_CENTIMETRES;
  }

  /**
   * The length rounded up to an eighth of a yard.
   *
   * @return a number of eighths
   */
  public long eighthsOfAYard() {
    return steps(EIGHTH_OF_A_YARD);
  }

  private long steps(double step) {
    return (long) Math.ceil((exact - NOISE) / step);
  }
}
