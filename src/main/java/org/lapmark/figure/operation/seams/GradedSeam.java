package org.lapmark.figure.operation.seams;

import static org.lapmark.figure.operation.frame.Cut.BEYOND;
import static org.lapmark.figure.operation.frame.Cut.NEXT;
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

/** A seam whose allowances are trimmed. */
public final class GradedSeam extends Sectional {
  /** The kind. */
  public GradedSeam() {
    super(
        "graded_seam",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(Amounts.FIRST, Amounts.SECOND),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(4);
    double first = bench.length(Amounts.FIRST, 2, wide);
    double second = bench.length(Amounts.SECOND, 1, first - 1);
    Material cloth = bench.cloth();
    Material with = bench.with();
    Cut sewn = Joins.together(new Cut(), cloth, with, wide);
    sewn.sewn(at(0, 0), at(0, NEXT)).above(0, wide, bench.printed(wide));
    Cut graded =
        new Cut()
            .layer(with, Side.WRONG, at(-wide, 0, -BEYOND), at(second, 0))
            .layer(cloth, Side.RIGHT, at(-wide, NEXT, -BEYOND), at(first, NEXT))
            .before(at(0, 0), at(0, NEXT))
            .above(0, second, bench.printed(second))
            .below(0, first, bench.printed(first));
    return List.of(bench.section("sewn", sewn), bench.section("graded", graded));
  }
}
