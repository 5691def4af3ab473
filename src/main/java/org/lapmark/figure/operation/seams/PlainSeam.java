package org.lapmark.figure.operation.seams;

import static org.lapmark.figure.operation.frame.Cut.BEYOND;
import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.TURN;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.craft.Sectional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Joins;
import org.lapmark.figure.operation.frame.Material;

/** A plain seam. */
public final class PlainSeam extends Sectional {
  /** The kind. */
  public PlainSeam() {
    super(
        "seam",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(),
        List.of(Amounts.PRESSED, Amounts.BETWEEN));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(2);
    Material cloth = bench.cloth();
    Material with = bench.with();
    boolean caught = bench.has(Amounts.BETWEEN);
    boolean aside = bench.or(Amounts.PRESSED, caught ? "aside" : "open").equals("aside");
    double last = caught ? 2 * NEXT : NEXT;
    Cut sewn = new Cut();
    sewn.layer(with, Side.WRONG, at(-wide, 0, -BEYOND), at(wide, 0));
    if (caught) {
      Material between = bench.material(Amounts.BETWEEN);
      sewn.layer(between, Side.RIGHT, at(-wide, NEXT, -BEYOND / 2), at(wide, NEXT));
    }
    sewn.layer(cloth, Side.RIGHT, at(-wide, last, -BEYOND), at(wide, last));
    sewn.sewn(at(0, 0), at(0, last)).above(0, wide, bench.printed(wide));
    Cut pressed = new Cut();
    if (caught) {
      caught(bench, pressed, cloth, with, wide, aside);
    } else if (aside) {
      Joins.aside(pressed, cloth, with, wide);
    } else {
      Joins.open(pressed, cloth, with, wide);
    }
    String moment = (aside ? "aside" : "open") + (caught ? "_caught" : "");
    return List.of(
        bench.section(caught ? "sewn_caught" : "sewn", sewn), bench.section(moment, pressed));
  }

  /** What was caught stands out between the two and lies down on the right. */
  private static void caught(
      Bench bench, Cut cut, Material cloth, Material with, double wide, boolean aside) {
    Material between = bench.material(Amounts.BETWEEN);
    double under = 2 * NEXT;
    Joins.left(cut, cloth, wide, NEXT);
    cut.layer(
        between,
        Side.RIGHT,
        at(-wide, under),
        at(0, under, 0.2),
        at(0, -NEXT, 1.2),
        at(wide, -NEXT, BEYOND / 2));
    if (aside) {
      cut.layer(
          with,
          Side.RIGHT,
          at(-wide, 3 * NEXT),
          at(0, 3 * NEXT, 2.2),
          at(0, 0, 5.2),
          at(wide, 0, BEYOND));
      cut.before(at(0, NEXT, -2.6), at(0, 3 * NEXT, -2.6));
    } else {
      cut.layer(
          with,
          Side.RIGHT,
          at(wide, 0, BEYOND),
          at(0, 0, 3.2),
          at(0, NEXT, 3.2),
          at(wide, NEXT, 2));
      cut.before(at(0, NEXT / 2, -TURN), at(0, NEXT / 2, 3.2));
    }
  }
}
