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

/** A French seam. */
public final class FrenchSeam extends Sectional {
  /** The kind. */
  public FrenchSeam() {
    super(
        "french_seam",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.SECOND),
        List.of(Amounts.FIRST),
        List.of(Amounts.TRIMMED));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double least = 3;
    double first = bench.length(Amounts.FIRST, 2, 60);
    double second = bench.second(first, least);
    double left = bench.length(Amounts.TRIMMED, 1, second - 1, Math.min(first, second * 0.6));
    Material cloth = bench.cloth();
    Material with = bench.with();
    double last = 3 * NEXT;
    Cut wrong =
        new Cut()
            .layer(with, Side.RIGHT, at(-first, 0, -BEYOND), at(first, 0))
            .layer(cloth, Side.WRONG, at(-first, NEXT, -BEYOND), at(first, NEXT))
            .sewn(at(0, 0), at(0, NEXT))
            .above(0, first, bench.printed(first));
    Cut right =
        new Cut()
            .layer(
                with,
                Side.WRONG,
                at(-second, 0, -BEYOND),
                at(second, 0),
                at(second, NEXT),
                at(second - left, NEXT))
            .layer(
                cloth,
                Side.RIGHT,
                at(-second, last, -BEYOND),
                at(second, last),
                at(second, 2 * NEXT),
                at(second - left, 2 * NEXT))
            .before(at(second, NEXT, -2.4), at(second, 2 * NEXT, -2.4))
            .sewn(at(0, 0), at(0, last))
            .above(0, second, bench.printed(second));
    double deep = 4 * NEXT;
    Cut done =
        new Cut()
            .layer(
                cloth,
                Side.RIGHT,
                at(-second, 0, -BEYOND),
                at(0, 0, -TURN),
                at(0, NEXT, -TURN),
                at(-second, NEXT),
                at(-second, 2 * NEXT),
                at(-second + left, 2 * NEXT))
            .layer(
                with,
                Side.WRONG,
                at(-second + left, 3 * NEXT),
                at(-second, 3 * NEXT),
                at(-second, deep),
                at(0, deep, 0.6),
                at(0, 0, 5.4),
                at(second / 2, 0, BEYOND))
            .before(at(0, NEXT, -2.8), at(0, deep, -2.8));
    return List.of(
        bench.section("wrong", wrong), bench.section("right", right), bench.section("done", done));
  }
}
