package org.lapmark.publish.product;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lapmark.grade.GradedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.print.arrange.PlanQuality;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;

/** How pieces lie on pages, told in a fixed order when all are laid out. */
public final class Arrangements {
  private final Map<String, PlanQuality> qualities = new ConcurrentHashMap<>();
  private final Map<String, Boolean> empty = new ConcurrentHashMap<>();

  /** Is told what came of arranging. */
  public interface Listener {
    /** The pieces of one size lie on pages. */
    void arranged(String size, Paper paper, PlanQuality quality);

    /** Nothing lies on a paper; what says why, as a sentence without a full stop. */
    void omitted(String what);
  }

  private static String key(Variant variant, Paper paper) {
    return paper.id() + ' ' + variant;
  }

  void add(Variant variant, SheetPlan plan) {
    if (plan.tiles().isEmpty()) {
      empty.put(key(variant, plan.paper()), true);
    } else if (plan.paper().filling().isPaged()) {
      qualities.put(key(variant, plan.paper()), plan.quality());
    }
  }

  void addEmptyStack(Paper paper) {
    empty.put(paper.id(), true);
  }

  /** Tells all, by pattern and paper. */
  public void tell(List<GradedPattern> patterns, List<Paper> papers, Listener listener) {
    for (GradedPattern pattern : patterns) {
      for (Paper paper : papers) {
        String size = pattern.variant().size();
        PlanQuality quality = qualities.get(key(pattern.variant(), paper));
        if (quality != null) {
          listener.arranged(size, paper, quality);
        } else if (empty.containsKey(key(pattern.variant(), paper))) {
          listener.omitted(nothing(size, paper, pattern.pieces().isEmpty()));
        }
      }
    }
    for (Paper paper : papers) {
      if (empty.containsKey(paper.id())) {
        listener.omitted(nothing("all sizes", paper, false));
      }
    }
  }

  private static String nothing(String sizes, Paper paper, boolean bare) {
    return "no tiles of "
        + sizes
        + " on "
        + paper.id()
        + (bare
            ? ": there is no piece to print"
            : ": each piece is cut by the measurements in the cutting table");
  }
}
