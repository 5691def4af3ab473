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

/** A hem. */
public final class Hem extends Sectional {
  /** The kind. */
  public Hem() {
    super(
        "hem",
        Named.EDGE,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE),
        List.of(),
        List.of(Amounts.TURNS, Amounts.FIRST, Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    boolean twice = bench.or(Amounts.TURNS, 1) == 2;
    double wide = bench.allowance(twice ? 6 : 4);
    Material cloth = bench.cloth();
    if (!twice) {
      double edge = bench.length(Amounts.DISTANCE, 0.5, wide - 1, wide * 0.75);
      Cut once =
          new Cut()
              .layer(
                  cloth, Side.WRONG, at(-wide, NEXT, -BEYOND), at(0, NEXT), at(0, 0), at(-wide, 0))
              .sewn(at(-edge, 0), at(-edge, NEXT))
              .above(-wide, 0, bench.printed(wide));
      if (bench.has(Amounts.DISTANCE)) {
        once.below(-edge, 0, bench.printed(edge));
      }
      return List.of(bench.section("once", once));
    }
    double first = bench.length(Amounts.FIRST, 2, wide / 2, Math.min(wide / 2, wide / 3));
    double hem = wide - first;
    double edge = bench.length(Amounts.DISTANCE, 0.5, first - 0.5, Math.min(2, first / 2));
    bench.say("hem", bench.printed(hem));
    Cut fold =
        new Cut()
            .layer(
                cloth,
                Side.WRONG,
                at(-hem, NEXT, -BEYOND),
                at(hem, NEXT),
                at(hem, 0),
                at(hem - first, 0))
            .above(hem - first, hem, bench.printed(first));
    Cut done =
        new Cut()
            .layer(
                cloth,
                Side.WRONG,
                at(-hem, 2 * NEXT, -BEYOND),
                at(0, 2 * NEXT),
                at(0, 0),
                at(-hem, 0),
                at(-hem, NEXT),
                at(-hem + first, NEXT))
            .sewn(at(-hem + edge, 0), at(-hem + edge, 2 * NEXT))
            .above(-hem, 0, bench.printed(hem))
            .below(-hem, -hem + edge, bench.printed(edge));
    return List.of(bench.section("first", fold), bench.section("twice", done));
  }
}
