package org.lapmark.lay;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.wording.Wording;

/**
 * Draws layouts in small. The cloth lies along or across the page, whichever is larger; a long one
 * is broken into rows. A piece carries its number and, where there is room, its name; where there
 * is none, the number stands outside and a leader leads to the piece.
 *
 * @param wording the words on paper
 * @param styles the look of each role
 * @param lettering how wide words come out
 * @param form how values are printed
 */
public record LayDrawing(
    Wording wording, StyleSheet styles, LetteringMeasure lettering, PrintForm form) {
  /** Pieces are never drawn larger than this. */
  private static final double LARGEST_SCALE = 0.2;

  private static final int MOST_ROWS = 8;

  /** Room kept for leaders when the scale is chosen. */
  private static final double LEADER_ROWS = 2;

  /**
   * Draws a layout.
   *
   * @param lay the layout
   * @param width the drawing's width in millimetres
   * @param height the height that the drawing should keep to; leaders and key may add to it
   * @return the drawing
   */
  public Drawing draw(Lay lay, double width, double height) {
    LaySketch best = null;
    for (LaySketch sketch : sketches(lay, width, height)) {
      // More rows than one only where pieces would otherwise be too small for their numbers.
      if (sketch.rows() > 1 && best.hasRoomForNumbers()) {
        break;
      }
      if (best == null || sketch.betterThan(best)) {
        best = sketch;
      }
    }
    return best.draw(width);
  }

  /** The ways to lay the cloth on the page: along it, in more and more rows, and across it. */
  private List<LaySketch> sketches(Lay lay, double width, double height) {
    Board measure = new Board(styles, lettering);
    LayWords words = new LayWords(wording, form);
    double text = measure.height(Board.LABEL);
    double cloth = lay.width().usable();
    double dimension = text + LayDimensions.OFF + Board.AIR;
    double room = width - dimension - 2 * Board.EDGE - Board.AIR;
    List<LaySketch> sketches = new ArrayList<>();
    double turnedScale =
        Math.min(
            (width - 2 * (text + Board.AIR) - dimension - 2 * Board.EDGE) / cloth,
            (height - LayDimensions.ARROW - dimension - LEADER_ROWS * (text + Board.AIR))
                / lay.length());
    LaySketch turned =
        new LaySketch(words, measure.another(), lay, true, cap(turnedScale), LayRows.one(lay), 0);
    for (int rows = 1; rows <= MOST_ROWS; rows++) {
      LayRows parts = LayRows.of(lay, rows);
      double row = 2 * (text + Board.AIR) + dimension + LEADER_ROWS * (text + Board.AIR);
      double scale = Math.min(room / parts.longest(), (height / rows - row) / cloth);
      if (scale > 0 || rows == 1) {
        sketches.add(
            new LaySketch(
                words, measure.another(), lay, false, cap(Math.max(scale, 0.005)), parts, room));
      }
      if (rows == 1 && turnedScale > 0) {
        sketches.add(turned);
      }
    }
    return sketches;
  }

  private static double cap(double scale) {
    return Math.min(scale, LARGEST_SCALE);
  }
}
