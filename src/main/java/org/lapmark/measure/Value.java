package org.lapmark.measure;

import java.util.Objects;

/** What a formula comes to. */
public sealed interface Value {
  /**
   * A number with a dimension.
   *
   * @param amount millimetres, square millimetres, degrees, or a bare number
   * @param dimension its dimension
   */
  record Quantity(double amount, Dimension dimension) implements Value {
    /** Checks the dimension; the sum of nothing is 0, never -0. */
    public Quantity {
      Objects.requireNonNull(dimension);
      amount = amount + 0.0;
    }

    /**
     * A length.
     *
     * @param millimetres the length
     * @return the quantity
     */
    public static Quantity length(double millimetres) {
      return new Quantity(millimetres, Dimension.LENGTH);
    }

    /**
     * A pure number.
     *
     * @param number the number
     * @return the quantity
     */
    public static Quantity plain(double number) {
      return new Quantity(number, Dimension.PLAIN);
    }
  }

  /**
   * A stock size that is sold under a metric and an inch name which are not conversions of each
   * other. In calculations it counts as its metric length.
   *
   * @param metric the metric length in millimetres
   * @param metricText how it was written, such as {@code 25 mm}
   * @param inches the inch length in millimetres
   * @param inchText how it was written, such as {@code 1 in}
   */
  record NominalPair(double metric, String metricText, double inches, String inchText)
      implements Value {}

  /**
   * Several stock sizes to choose from.
   *
   * @param sizes in the order stated
   */
  record StockSizes(java.util.List<NominalPair> sizes) implements Value {
    /** Copies the list. */
    public StockSizes {
      sizes = java.util.List.copyOf(sizes);
    }
  }

  /**
   * The outcome of a comparison, or a property that is either so or not.
   *
   * @param holds whether it is so
   */
  record Truth(boolean holds) implements Value {}

  /**
   * One of several that are known by their names: an option's choice, or the size. It is compared
   * with a name, never with another value.
   *
   * @param id the name of the one chosen
   * @param label what readers see
   * @param ids the names of all, in their order
   * @param ordered whether one that comes later is more: sizes are, choices aren't
   */
  record Choice(String id, String label, java.util.List<String> ids, boolean ordered)
      implements Value {
    /** Copies the list. */
    public Choice {
      Objects.requireNonNull(label);
      ids = java.util.List.copyOf(ids);
      if (!ids.contains(id)) {
        throw new IllegalArgumentException("no choice " + id);
      }
    }
  }
}
