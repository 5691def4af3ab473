package org.lapmark.publish.product;

import java.util.List;
import org.lapmark.document.Document;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;

/** Lays out and writes documents, for one thread. */
public interface Desk {
  /** Arranges the pieces on a paper and draws them. */
  SheetPlan plan(EvaluatedPattern pattern, Paper paper);

  /** Arranges the pieces on a paper, to see whether they can be. */
  default void arrange(EvaluatedPattern pattern, Paper paper) {
    plan(pattern, paper);
  }

  /** Arranges the pieces of all sizes, stacked, on a paper. */
  NestedPlan nested(List<EvaluatedPattern> patterns, Paper paper);

  /** What the instructions say, whatever the paper. */
  Manual manual(EvaluatedPattern pattern, Findings findings);

  /** The same in large print. */
  Manual enlarged(Manual manual, Findings findings);

  /** Draws sheets in a size of type. */
  SheetPlanner planner(Look look);

  /** Makes a file. */
  byte[] write(Document document, Findings findings);
}
