package org.lapmark.figure.operation.layers;

import static org.lapmark.figure.operation.frame.Cut.BEYOND;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.craft.Sectional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;

/** Layers quilted together. */
public final class Quilting extends Sectional {
  /** The kind. */
  public Quilting() {
    super(
        "quilting",
        Named.NOTHING,
        List.of(),
        List.of(Amounts.CLOTH, Amounts.WADDING, Amounts.WITH, Amounts.SPACING),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double apart = bench.length(Amounts.SPACING, 5, 300);
    Cut cut =
        new Cut()
            .layer(bench.cloth(), Side.RIGHT, at(-apart, 0, -BEYOND), at(apart, 0, BEYOND))
            .layer(
                bench.material(Amounts.WADDING),
                Side.RIGHT,
                at(-apart, 1, -BEYOND),
                at(apart, 1, BEYOND))
            .layer(bench.with(), Side.WRONG, at(-apart, 2, -BEYOND), at(apart, 2, BEYOND));
    for (int i = -1; i <= 1; i++) {
      cut.sewn(at(i * apart, 0), at(i * apart, 2));
    }
    cut.above(-apart, 0, bench.printed(apart));
    return List.of(bench.section("quilted", cut));
  }
}
