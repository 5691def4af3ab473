package org.lapmark.figure.symbol;

/** What is stated of a thing, in millimetres. */
public interface Measures {
  /**
   * A measure without which it can’t be drawn.
   *
   * @param property its name where the thing is stated
   * @param least the least that it can be
   * @param most the most
   */
  double need(String property, double least, double most);

  /**
   * A measure that has a usual value.
   *
   * @param property its name where the thing is stated
   * @param usual what it is where nobody says so
   * @param least the least that it can be
   * @param most the most
   */
  double or(String property, double usual, double least, double most);

  /** Which of its parts is meant: the first where nobody says so. */
  String part();
}
