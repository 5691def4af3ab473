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
import org.lapmark.figure.operation.frame.Material;

/** The edge of a patch pocket. */
public final class PatchPocket extends Sectional {
  /** The kind. */
  public PatchPocket() {
    super(
        "patch_pocket",
        Named.NOTHING,
        List.of(),
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE, Amounts.DISTANCE),
        List.of(Amounts.WITH, Amounts.WIDTH, Amounts.LENGTH, Amounts.FIRST));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.ALLOWANCE, 4, 60);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide - 1);
    Material cloth = bench.cloth();
    Material ground = bench.with();
    Cut cut =
        new Cut()
            .layer(cloth, Side.RIGHT, at(-wide, 0, -BEYOND), at(0, 0), at(0, NEXT), at(-wide, NEXT))
            .layer(ground, Side.RIGHT, at(-wide, 2 * NEXT, -BEYOND), at(wide / 2, 2 * NEXT, BEYOND))
            .sewn(at(-edge, 0), at(-edge, 2 * NEXT))
            .above(-edge, 0, bench.printed(edge))
            .below(-wide, 0, bench.printed(wide));
    return bench.has(Amounts.WIDTH)
        ? PatchPocketPlan.frames(bench, wide, edge, cloth, ground)
        : List.of(bench.section("sewn", cut));
  }
}
