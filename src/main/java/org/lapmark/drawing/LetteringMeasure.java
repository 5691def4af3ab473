package org.lapmark.drawing;

/** Measures lettering with the very font in which it will be drawn. */
public interface LetteringMeasure {
  /**
   * The advance width of a line of text.
   *
   * @param text the text
   * @param style its style
   * @return millimetres
   */
  double width(String text, Style style);

  /**
   * How far the lettering reaches above the baseline.
   *
   * @param style its style
   * @return millimetres, positive
   */
  double ascent(Style style);

  /**
   * How far the lettering reaches below the baseline.
   *
   * @param style its style
   * @return millimetres, positive
   */
  double descent(Style style);
}
