package org.lapmark.document;

import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.SheetPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.wording.Wording;

/**
 * Writes the documents of one pattern. An instance is used by one thread.
 *
 * @param templates the templates
 */
public record DocumentWriter(Templates templates) {
  /**
   * The words of a language, from {@code words/<tag>.properties} over {@code words/en.properties}.
   *
   * @param locale the language
   * @return the words
   */
  public Wording wording(java.util.Locale locale) {
    throw new UnsupportedOperationException();
  }

  /**
   * The look of drawings, from {@code drawing/styles.properties}.
   *
   * @return the style sheet
   */
  public StyleSheet styles() {
    throw new UnsupportedOperationException();
  }

  /**
   * Measures lettering in the fonts that documents embed.
   *
   * @return the measure, for use by one thread
   */
  public LetteringMeasure lettering() {
    throw new UnsupportedOperationException();
  }

  /**
   * The complete document: cover, printing page, finished measurements, cutting table, page map,
   * tiles.
   *
   * @param pattern the pattern in one variant
   * @param plan its tiles
   * @param planner draws page map and printing page
   * @return a PDF/A-3a and PDF/UA-1 file
   */
  public byte[] complete(GradedPattern pattern, SheetPlan plan, SheetPlanner planner) {
    throw new UnsupportedOperationException();
  }

  /**
   * The tiles alone, the test squares on their first page.
   *
   * @param pattern the pattern in one variant
   * @param plan its tiles
   * @param planner draws page map and printing page
   * @return a PDF/A-3a and PDF/UA-1 file
   */
  public byte[] tiles(GradedPattern pattern, SheetPlan plan, SheetPlanner planner) {
    throw new UnsupportedOperationException();
  }
}
