package org.lapmark.lay;

import java.util.List;

/**
 * What a layout needs to know of a material.
 *
 * @param id the material's id
 * @param name what readers see
 * @param widths the widths in which it is sold, as stated
 * @param oneWay whether it has a nap or a print, so that all pieces lie the same way up
 * @param noGrain whether pieces may be turned by quarters
 * @param selvedgeMargin what is kept free along each selvedge, in millimetres
 * @param margin the share of the length that is bought in addition; 0 for none
 * @param marginStated whether that is stated
 * @param shrinkage the share of its length that the material loses when it is first washed
 */
public record Cloth(
    String id,
    String name,
    List<ClothWidth> widths,
    boolean oneWay,
    boolean noGrain,
    double selvedgeMargin,
    double margin,
    boolean marginStated,
    double shrinkage) {
  /** Copies the list. */
  public Cloth {
    widths = List.copyOf(widths);
  }

  /**
   * Whether pieces have to lie along it: it has a grain, or a direction.
   *
   * @return false where they may be turned as one likes
   */
  public boolean hasGrain() {
    return !noGrain || oneWay;
  }

  /**
   * What to buy of a length that is used.
   *
   * @param length millimetres
   * @return the purchase
   */
  Purchase purchase(double length) {
    return Purchase.of(length, margin, shrinkage);
  }

  /**
   * What to buy of lengths that are cut from a tape.
   *
   * @param length millimetres, all together
   * @return the purchase
   */
  Purchase goods(double length) {
    return Purchase.of(length, marginStated ? margin : Purchase.FOR_ENDS, shrinkage);
  }
}
