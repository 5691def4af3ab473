package org.lapmark.document.section;

import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.print.Paper;
import org.lapmark.print.SheetPlan;
import org.lapmark.print.SheetPlanner;

/** The drawings that a document asks for once it knows its page numbers. */
public interface Plates {
  /**
   * The sheet in small, at most so wide and high in millimetres, with page numbers by tile code.
   */
  Drawing pageMap(SheetPlan plan, Map<String, Integer> pages, double width, double height);

  /** The page that proves the scale, as large as the paper. */
  Drawing printingPage(Paper paper);

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
    };
  }
}
