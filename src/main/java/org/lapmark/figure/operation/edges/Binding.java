package org.lapmark.figure.operation.edges;

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
import org.lapmark.figure.operation.frame.Material;

/** A bound edge. */
public final class Binding extends Sectional {
  /** The kind. */
  public Binding() {
    super(
        "binding",
        Named.TRIM,
        List.of(Amounts.CLOTH, Amounts.STRIP),
        List.of(Amounts.WIDTH),
        List.of(Amounts.DOUBLE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.WIDTH, 3, 60);
    Material cloth = bench.cloth();
    Material strip = bench.material(Amounts.STRIP);
    boolean twofold = bench.or(Amounts.DOUBLE, false);
    double strips = wide * (twofold ? 2.4 : 3.2);
    Cut sewn = new Cut();
    if (twofold) {
      sewn.layer(strip, Side.RIGHT, at(0, 0), at(-strips, 0), at(-strips, 0.5), at(0, 0.5));
    } else {
      sewn.layer(strip, Side.WRONG, at(-strips, 0.5), at(0, 0.5));
    }
    sewn.layer(cloth, Side.RIGHT, at(-strips, 1.2, -BEYOND), at(0, 1.2))
        .sewn(at(-wide, twofold ? 0 : 0.5), at(-wide, 1.2))
        .above(-wide, 0, bench.printed(wide));
    Cut done = twofold ? twofold(cloth, strip, wide) : single(cloth, strip, wide);
    done.above(-wide, 0, bench.printed(wide));
    return List.of(
        bench.section(twofold ? "sewn_double" : "sewn", sewn),
        bench.section(twofold ? "done_double" : "done", done));
  }

  private static Cut single(Material cloth, Material strip, double wide) {
    return new Cut()
        .layer(cloth, Side.RIGHT, at(-wide, 2, -BEYOND - 6), at(0, 2))
        .layer(
            strip,
            Side.WRONG,
            at(0, 1.4),
            at(-wide, 1.4),
            at(-wide, 0.8),
            at(0, 0.8, 3),
            at(0, 3.3, 3),
            at(-wide, 3.3, -3),
            at(-wide, 2.7, -3),
            at(-wide * 0.2, 2.7))
        .before(at(-wide, 1.4, 1.4), at(-wide, 2, 1.4))
        .sewn(at(-wide, 0.8, -1.8), at(-wide, 3.3, -1.8));
  }

  private static Cut twofold(Material cloth, Material strip, double wide) {
    return new Cut()
        .layer(cloth, Side.RIGHT, at(-wide, 2.6, -BEYOND - 6), at(0, 2.6))
        .layer(
            strip,
            Side.WRONG,
            at(0, 2),
            at(-wide, 2, -1),
            at(-wide, 0.5, -1),
            at(0, 0.5, 4.4),
            at(0, 3.8, 4.4),
            at(-wide, 3.8, -3.4),
            at(-wide, 3.25, -3.4),
            at(0, 3.25, 2.4),
            at(0, 1.05, 2.4),
            at(-wide, 1.05, 0.8),
            at(-wide, 1.5, 0.8),
            at(0, 1.5))
        .before(at(-wide, 1.5, 2.6), at(-wide, 2.6, 2.6))
        .sewn(at(-wide, 2.6, -2.4), at(-wide, 3.8, -2.4));
  }
}
