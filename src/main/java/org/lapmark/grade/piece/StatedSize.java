package org.lapmark.grade.piece;

import java.util.List;

/**
 * The cut size of a rectangle or strip, which can be ruled onto the cloth without paper.
 *
 * @param width millimetres across, allowances included
 * @param height millimetres along the grain, or along a bias strip's length, allowances included
 * @param bias whether it is cut at 45 degrees to the grain
 * @param marks what is to be marked on it, by measurements
 */
public record StatedSize(double width, double height, boolean bias, List<RuledMark> marks) {
  /** Copies the list. */
  public StatedSize {
    marks = List.copyOf(marks);
  }

  /**
   * A size without marks.
   *
   * @param width millimetres across, allowances included
   * @param height millimetres along the grain, or along a bias strip's length
   * @param bias whether it is cut at 45 degrees to the grain
   */
  public StatedSize(double width, double height, boolean bias) {
    this(width, height, bias, List.of());
  }

  /**
   * The distances by which the marks are found.
   *
   * @return millimetres, in the order of the marks
   */
  public List<Double> places() {
    return marks.stream().flatMap(mark -> mark.distances().stream()).toList();
  }
}
