package org.lapmark.print.piece;

import java.util.List;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.wording.Wording;

/**
 * What it takes to write on paper.
 *
 * @param wording the words on paper
 * @param styles the look of each role
 * @param lettering how wide words come out
 */
public record Typesetting(Wording wording, StyleSheet styles, LetteringMeasure lettering) {
  /** No line of lettering is as wide as this, in millimetres. */
  private static final double UNBROKEN = 1000;

  public String text(String key) {
    return wording.text(key);
  }

  public Style style(String role) {
    return styles.style(role);
  }

  /** How wide a text of a role comes out, in millimetres. */
  public double width(String text, String role) {
    return lettering.width(text, style(role));
  }

  /** Texts broken so that no line is wider than a limit, in millimetres, unless one word is. */
  public TextBlock block(List<TextBlock.Text> texts, double limit) {
    return TextBlock.of(texts, limit, styles, lettering);
  }

  /** One text broken in the same way. */
  public TextBlock block(String text, String role, double limit) {
    return block(List.of(new TextBlock.Text(text, role)), limit);
  }

  /** One text on one line. */
  public TextBlock line(String text, String role) {
    return block(text, role, UNBROKEN);
  }
}
