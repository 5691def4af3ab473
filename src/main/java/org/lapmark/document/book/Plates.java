package org.lapmark.document.book;

import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.wording.Wording;

/** The drawings that a document asks for once it knows its page numbers, their words and look. */
public interface Plates {
  /**
   * The sheet in small, at most so wide and high in millimetres, with page numbers by tile code.
   */
  Drawing pageMap(SheetPlan plan, Map<String, Integer> pages, double width, double height);

  /** The page that proves the scale, as large as the paper. */
  Drawing printingPage(Paper paper);

  /** The document's words. */
  Wording wording();

  /** The look of drawings. */
  StyleSheet styles();

  static Plates of(SheetPlanner planner) {
    return new Plates() {
      @Override
      public Drawing pageMap(
          SheetPlan plan, Map<String, Integer> pages, double width, double height) {
        return planner.pageMap(plan, pages, width, height);
      }

      @Override
      public Drawing printingPage(Paper paper) {
        return planner.printingPage(paper);
      }

      @Override
      public Wording wording() {
        return planner.wording();
      }

      @Override
      public StyleSheet styles() {
        return planner.styles();
      }
    };
  }
}
