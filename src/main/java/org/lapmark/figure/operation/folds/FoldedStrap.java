package org.lapmark.figure.operation.folds;

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
import org.lapmark.figure.operation.frame.Material;

/** A strap folded in four. */
public final class FoldedStrap extends Sectional {
  /** The kind. */
  public FoldedStrap() {
    super(
        "folded_strap",
        Named.NOTHING,
        List.of(),
        List.of(Amounts.CLOTH, Amounts.WIDTH),
        List.of(Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.WIDTH, 6, 120);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide / 3, Math.min(2, wide / 8));
    Material cloth = bench.cloth();
    Cut folded =
        new Cut()
            .layer(
                cloth,
                Side.RIGHT,
                at(0, 0, -0.6),
                at(-wide, 0),
                at(-wide, NEXT),
                at(wide, NEXT),
                at(wide, 0),
                at(0, 0, 0.6))
            .above(-wide, 0, bench.printed(wide));
    Cut sewn =
        new Cut()
            .layer(
                cloth,
                Side.WRONG,
                at(wide, NEXT, -2),
                at(0, NEXT),
                at(0, 0),
                at(wide, 0),
                at(wide, 3 * NEXT),
                at(0, 3 * NEXT),
                at(0, 2 * NEXT),
                at(wide, 2 * NEXT, -2))
            .sewn(at(edge, 0), at(edge, 3 * NEXT))
            .sewn(at(wide - edge, 0), at(wide - edge, 3 * NEXT))
            .above(0, wide, bench.printed(wide))
            .below(0, edge, bench.printed(edge));
    return List.of(bench.section("folded", folded), bench.section("sewn", sewn));
  }
}
