package org.lapmark.figure.operation.closures;

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
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.section.Solid;

/** A zip between two layers. */
public final class ZipBetween extends Sectional {
  /** The kind. */
  public ZipBetween() {
    super(
        "zip_between",
        Named.TRIM,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE),
        List.of(Amounts.WITH),
        List.of(Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(4);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide, Math.min(2, wide / 2));
    Material cloth = bench.cloth();
    Material lining = bench.with();
    Cut sewn =
        new Cut()
            .layer(cloth, Side.WRONG, at(-wide, 0, -BEYOND), at(wide, 0))
            .layer(bench.tape(), Side.WRONG, at(0, NEXT, -3.4), at(wide, NEXT))
            .solid(at(0, NEXT, -5), Solid.box(-1.8, -0.8, 1.8, 0.8), null, "")
            .layer(lining, Side.RIGHT, at(-wide, 2 * NEXT, -BEYOND), at(wide, 2 * NEXT))
            .sewn(at(0, 0), at(0, 2 * NEXT))
            .above(0, wide, bench.printed(wide));
    Cut turned =
        new Cut()
            .layer(cloth, Side.RIGHT, at(wide, 0, BEYOND), at(0, 0), at(0, NEXT), at(wide, NEXT))
            .layer(bench.tape(), Side.RIGHT, at(0, 2 * NEXT, -5), at(wide, 2 * NEXT))
            .solid(at(0, 2 * NEXT, -6.6), Solid.box(-1.8, -1, 1.8, 1), null, bench.label("teeth"))
            .layer(
                lining,
                Side.WRONG,
                at(wide, 4 * NEXT, BEYOND),
                at(0, 4 * NEXT),
                at(0, 3 * NEXT),
                at(wide, 3 * NEXT))
            .sewn(at(edge, 0), at(edge, 4 * NEXT))
            .above(0, edge, bench.printed(edge));
    return List.of(bench.section("sewn", sewn), bench.section("turned", turned));
  }
}
