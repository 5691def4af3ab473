package org.lapmark.measure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a formula comes to. */
public sealed interface Value {
  /**
   * A stable word for messages to choose by.
   *
   * @return a dimension's word, {@code truth}, {@code stock} or {@code choice}
   */
  String kind();

  /**
   * Says what it is to somebody who treats each kind in a way of its own.
   *
   * @param reader who asks
   * @param <R> what the reader makes of it
   * @return what was made
   */
  <R> R read(Reader<R> reader);

  /**
   * What is made of each kind of value.
   *
   * @param <R> what is made
   */
  interface Reader<R> {
    /**
     * Takes a number with a dimension.
     *
     * @param quantity the value
     * @return what is made of it
     */
    R quantity(Quantity quantity);

    /**
     * Takes a stock size.
     *
     * @param pair the value
     * @return what is made of it
     */
    R pair(NominalPair pair);

    /**
     * Takes a list of stock sizes.
     *
     * @param stock the value
     * @return what is made of it
     */
    R stock(StockSizes stock);

    /**
     * Takes what holds or doesn't.
     *
     * @param truth the value
     * @return what is made of it
     */
    R truth(Truth truth);

    /**
     * Takes one of several that have names.
     *
     * @param choice the value
     * @return what is made of it
     */
    R choice(Choice choice);
  }

  /**
   * What it counts as in calculations.
   *
   * @return the quantity, a pair's metric length; nothing for what isn't calculated with
   */
  default Optional<Quantity> quantity() {
    return Optional.empty();
  }

  /**
   * How much it is of one dimension.
   *
   * @param dimension the dimension
   * @return the amount, a pair's metric length; nothing for anything of another dimension. A zero
   *     written without a unit is 0 of each
   */
  default OptionalDouble amount(Dimension dimension) {
    return quantity()
        .filter(quantity -> quantity.dimension().fits(dimension))
        .map(quantity -> OptionalDouble.of(quantity.amount()))
        .orElse(OptionalDouble.empty());
  }

  /**
   * How much it is where a bare number is meant, such as a share or how many of something.
   *
   * @return the amount; nothing for what has another dimension
   */
  default OptionalDouble number() {
    OptionalDouble plain = amount(Dimension.PLAIN);
    return plain.isPresent() ? plain : amount(Dimension.COUNT);
  }

  /**
   * What it is where a length is meant.
   *
   * @return the length, or the two of a pair; nothing for what is none
   */
  default Optional<Lengths> lengths() {
    return quantity()
        .filter(quantity -> quantity.dimension().fits(Dimension.LENGTH))
        .map(quantity -> new Lengths(quantity.amount(), quantity.amount()));
  }

  /**
   * A length as those have it who go by millimetres, and those who go by inches; they differ for a
   * pair alone.
   *
   * @param metric millimetres
   * @param inches millimetres, too
   */
  record Lengths(double metric, double inches) {
    /**
     * The shorter.
     *
     * @return millimetres
     */
    public double least() {
      return Math.min(metric, inches);
    }

    /**
     * The longer.
     *
     * @return millimetres
     */
    public double most() {
      return Math.max(metric, inches);
    }
  }

  /**
   * Whether it is the outcome of a comparison that holds.
   *
   * @return false for all that is no truth, too
   */
  default boolean isTrue() {
    return false;
  }

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
      if (dimension == Dimension.ZERO && amount != 0) {
        throw new IllegalArgumentException("no zero: " + amount);
      }
    }

    @Override
    public String kind() {
      return dimension.word();
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.quantity(this);
    }

    @Override
    public Optional<Quantity> quantity() {
      return Optional.of(this);
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
      implements Value {
    @Override
    public String kind() {
      return Dimension.LENGTH.word();
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.pair(this);
    }

    @Override
    public Optional<Quantity> quantity() {
      return Optional.of(Quantity.length(metric));
    }

    @Override
    public Optional<Lengths> lengths() {
      return Optional.of(new Lengths(metric, inches));
    }
  }

  /**
   * Several stock sizes to choose from.
   *
   * @param sizes in the order stated
   */
  record StockSizes(List<NominalPair> sizes) implements Value {
    /** Copies the list. */
    public StockSizes {
      sizes = List.copyOf(sizes);
    }

    @Override
    public String kind() {
      return "stock";
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.stock(this);
    }
  }

  /**
   * The outcome of a comparison, or a property that is either so or not.
   *
   * @param holds whether it is so
   */
  record Truth(boolean holds) implements Value {
    @Override
    public String kind() {
      return "truth";
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.truth(this);
    }

    @Override
    public boolean isTrue() {
      return holds;
    }
  }

  /**
   * One of several that are known by their names: an option's choice, or the size. It is compared
   * with a name, never with another value.
   *
   * @param id the name of the one chosen
   * @param label what readers see
   * @param ids the names of all, in their order
   * @param ordered whether one that comes later is more: sizes are, choices aren't
   */
  record Choice(String id, String label, List<String> ids, boolean ordered) implements Value {
    /** Copies the list. */
    public Choice {
      Objects.requireNonNull(label);
      ids = List.copyOf(ids);
      if (!ids.contains(id)) {
        throw new IllegalArgumentException("no choice " + id);
      }
    }

    @Override
    public String kind() {
      return "choice";
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.choice(this);
    }
  }
}
