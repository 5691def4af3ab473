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

/** A zip under a lap. */
public final class LappedZip extends Sectional {
  /** The kind. */
  public LappedZip() {
    super(
        "lapped_zip",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(Amounts.DISTANCE),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(10);
    double lap = bench.length(Amounts.DISTANCE, 6, wide - 1);
    Material cloth = bench.cloth();
    Material with = bench.with();
    double level = 3 * NEXT + 0.2;
    Cut first =
        new Cut()
            .layer(
                with,
                Side.RIGHT,
                at(wide, 0, BEYOND),
                at(0, 0, 1.8),
                at(0, NEXT, 1.8),
                at(wide - 3, NEXT))
            .layer(bench.tape(), Side.RIGHT, at(0, 2 * NEXT, 1), at(wide, 2 * NEXT))
            .more(bench.tape(), Side.RIGHT, at(-wide, 2 * NEXT), at(0, 2 * NEXT, -2.4))
            .solid(
                at(0, 2 * NEXT, -0.7), Solid.box(-1.9, -1.1, 1.9, 1.1), null, bench.label("teeth"))
            .sewn(at(0, 0, 4.4), at(0, 2 * NEXT, 4.4));
    Cut lapped =
        new Cut()
            .layer(
                cloth,
                Side.RIGHT,
                at(-wide, 0, -BEYOND),
                at(0, 0, 4.6),
                at(0, NEXT, 4.6),
                at(-wide, NEXT))
            .layer(
                with,
                Side.RIGHT,
                at(wide, NEXT, BEYOND),
                at(0, NEXT, 7),
                at(0, 2 * NEXT, 7),
                at(wide, 2 * NEXT, 1))
            .layer(bench.tape(), Side.RIGHT, at(-wide, level), at(0, level, 1))
            .more(bench.tape(), Side.RIGHT, at(0, level, 4.2), at(wide, level))
            .solid(at(0, level, 2.6), Solid.box(-1.9, -1.1, 1.9, 1.1), null, bench.label("teeth"))
            .before(at(0, NEXT, 9.4), at(0, level, 9.4))
            .sewn(at(-lap, 0), at(-lap, level))
            .above(-lap, 0, bench.printed(lap));
    return List.of(bench.section("first", first), bench.section("lapped", lapped));
  }
}
