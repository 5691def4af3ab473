package org.lapmark.figure.operation.seams;

import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.craft.Sectional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Joins;
import org.lapmark.figure.operation.frame.Material;

/** Topstitching beside a seam. */
public final class Topstitching extends Sectional {
  /** The kind. */
  public Topstitching() {
    super(
        "topstitching",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(Amounts.DISTANCE),
        List.of(Amounts.PRESSED));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(3);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide - 1);
    Material cloth = bench.cloth();
    Material with = bench.with();
    boolean aside = bench.or(Amounts.PRESSED, "open").equals("aside");
    Cut cut = new Cut();
    String words = bench.label("topstitching");
    if (aside) {
      Joins.over(Joins.left(cut, cloth, wide, NEXT), with, wide, 2 * NEXT);
      cut.sewn(at(-edge, 0), at(-edge, 2 * NEXT), words);
    } else {
      Joins.right(Joins.left(cut, cloth, wide, NEXT), with, wide, NEXT);
      cut.sewn(at(-edge, 0), at(-edge, NEXT), words).sewn(at(edge, 0), at(edge, NEXT));
    }
    cut.above(-edge, 0, bench.printed(edge));
    return List.of(bench.section(aside ? "aside" : "open", cut));
  }
}
