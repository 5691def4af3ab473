package org.lapmark.figure.operation.edges;

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

/** A faced edge. */
public final class Facing extends Sectional {
  /** The kind. */
  public Facing() {
    super(
        "facing",
        Named.EDGE,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE),
        List.of(Amounts.WITH),
        List.of(Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(4);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide - 1, Math.min(2, wide / 3));
    Material cloth = bench.cloth();
    Material facing = bench.with();
    Cut sewn = Joins.together(new Cut(), cloth, facing, wide);
    sewn.sewn(at(0, 0), at(0, NEXT)).above(0, wide, bench.printed(wide));
    Cut under = new Cut();
    Joins.over(Joins.left(under, facing, wide, NEXT), cloth, wide, 2 * NEXT);
    under
        .sewn(at(-edge, 0), at(-edge, 2 * NEXT), bench.label("understitching"))
        .above(-edge, 0, bench.printed(edge));
    Cut turned =
        new Cut()
            .layer(
                cloth,
                Side.RIGHT,
                at(-wide, 0, -BEYOND),
                at(0, 0, 1.4),
                at(0, NEXT, 1.4),
                at(-wide, NEXT))
            .layer(
                facing,
                Side.WRONG,
                at(-wide, 3 * NEXT, -BEYOND),
                at(0, 3 * NEXT),
                at(0, 2 * NEXT),
                at(-wide, 2 * NEXT))
            .before(at(-edge, NEXT), at(-edge, 3 * NEXT));
    return List.of(
        bench.section("sewn", sewn),
        bench.section("understitched", under),
        bench.section("turned", turned));
  }
}
