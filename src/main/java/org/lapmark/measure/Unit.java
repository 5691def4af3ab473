package org.lapmark.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit in which quantities are written and printed. An inch is 25.4 mm exactly (international
 * yard and pound agreement of 1959), a foot 12, a yard 36 inches.
 */
public enum Unit {
  /** Millimetre. */
  MM(Dimension.LENGTH, 1, true),
  /** Centimetre. */
  CM(Dimension.LENGTH, 10, true),
  /** Metre. */
  M(Dimension.LENGTH, 1000, true),
  /** Inch. */
  IN(Dimension.LENGTH, 25.4, false),
  /** Foot. */
  FT(Dimension.LENGTH, 304.8, false),
  /** Yard. */
  YD(Dimension.LENGTH, 914.4, false),
  /** Degree of angle. */
  DEG(Dimension.ANGLE, 1, true);

  private final Dimension dimension;
  private final double size;
  private final boolean metric;

  Unit(Dimension dimension, double size, boolean metric) {
    this.dimension = dimension;
    this.size = size;
    this.metric = metric;
  }

  /**
   * What it measures.
   *
   * @return length or angle
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * How large it is.
   *
   * @return millimetres, or degrees
   */
  public double size() {
    return size;
  }

  /**
   * Whether it is one of the metric units.
   *
   * @return false for inch, foot and yard
   */
  public boolean metric() {
    return metric;
  }

  /**
   * How it is written in formulas and size tables.
   *
   * @return {@code mm}, {@code cm}, {@code m}, {@code in}, {@code ft}, {@code yd} or {@code deg}
   */
  public String symbol() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The unit written in a certain way.
   *
   * @param symbol the symbol
   * @return the unit, or nothing
   */
  public static Optional<Unit> of(String symbol) {
    return Arrays.stream(values()).filter(unit -> unit.symbol().equals(symbol)).findFirst();
  }

  /**
   * All symbols.
   *
   * @return in the order of this enum
   */
  public static List<String> symbols() {
    return Arrays.stream(values()).map(Unit::symbol).toList();
  }
}
