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
import org.lapmark.figure.operation.frame.Material;

/** A flat-felled seam. */
public final class FlatFelledSeam extends Sectional {
  /** The kind. */
  public FlatFelledSeam() {
    super(
        "flat_felled_seam",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(),
        List.of(Amounts.TRIMMED, Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(6);
    double fell = wide * 0.55;
    double left = bench.length(Amounts.TRIMMED, 1, fell - 0.5, fell * 0.75);
    double edge = bench.length(Amounts.DISTANCE, 0.5, fell / 2, Math.min(2, fell / 4));
    Material cloth = bench.cloth();
    Material with = bench.with();
    Cut sewn =
        new Cut()
            .layer(with, Side.RIGHT, at(-wide, 0, -BEYOND), at(wide, 0))
            .layer(cloth, Side.WRONG, at(-wide, NEXT, -BEYOND), at(left, NEXT))
            .sewn(at(0, 0), at(0, NEXT))
            .above(0, wide, bench.printed(wide))
            .below(0, left, bench.printed(left));
    Cut done =
        new Cut()
            .layer(
                cloth,
                Side.RIGHT,
                at(-wide, 3 * NEXT, -BEYOND),
                at(0, 3 * NEXT, -TURN),
                at(0, NEXT, -TURN),
                at(-left, NEXT))
            .layer(
                with,
                Side.WRONG,
                at(-fell + (wide - fell), 2 * NEXT),
                at(-fell, 2 * NEXT),
                at(-fell, 0),
                at(0, 0, 1),
                at(0, 3 * NEXT, 6),
                at(wide / 2, 3 * NEXT, BEYOND))
            .before(at(0, 0, -3), at(0, NEXT, -3))
            .sewn(at(-fell + edge, 0), at(-fell + edge, 3 * NEXT))
            .above(-fell, -fell + edge, bench.printed(edge));
    return List.of(bench.section("sewn", sewn), bench.section("done", done));
  }
}
