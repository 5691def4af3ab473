package org.lapmark.print;

import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.grade.GradedPattern;
import org.lapmark.wording.Wording;

/**
 * Arranges pieces and draws tiles, page map and printing page.
 *
 * @param wording the words on paper
 * @param styles the look of each role
 * @param lettering how wide words come out
 */
public record SheetPlanner(Wording wording, StyleSheet styles, LetteringMeasure lettering) {
  /**
   * Arranges the pieces that need paper and draws the tiles.
   *
   * @param pattern the pattern in one variant
   * @param paper the paper
   * @return sheet and tiles; no tiles when no piece needs paper
   */
  public SheetPlan plan(GradedPattern pattern, Paper paper) {
    throw new UnsupportedOperationException();
  }

  /**
   * The page map: the sheet in small with tile codes, page numbers and piece numbers.
   *
   * @param plan the sheet
   * @param pages the PDF page number of each tile, by tile code
   * @param width the width to draw it in, in millimetres
   * @param height the greatest height, in millimetres
   * @return the drawing
   */
  public Drawing pageMap(SheetPlan plan, Map<String, Integer> pages, double width, double height) {
    throw new UnsupportedOperationException();
  }

  /**
   * What the printing page shows at true scale: test squares, bars and card outline.
   *
   * @param paper the paper
   * @return a drawing as large as the paper, to be printed unscaled
   */
  public Drawing printingPage(Paper paper) {
    throw new UnsupportedOperationException();
  }
}
