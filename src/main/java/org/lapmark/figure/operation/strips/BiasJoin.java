package org.lapmark.figure.operation.strips;

import static org.lapmark.figure.operation.plan.Plan.at;
import static org.lapmark.figure.operation.plan.Plan.line;

import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.operation.plan.Plan;
import org.lapmark.figure.operation.plan.Rim;

/** Two bias strips joined. */
public final class BiasJoin extends Craft {
  private static final double DIAGONAL = StrictMath.sqrt(2);

  /** The kind. */
  public BiasJoin() {
    super(
        "bias_join",
        Named.NOTHING,
        List.of(),
        List.of(Amounts.CLOTH, Amounts.WIDTH),
        List.of(Amounts.ALLOWANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.WIDTH, 10, 300);
    double allowance = bench.length(Amounts.ALLOWANCE, 2, wide / 3, Math.min(6, wide / 4));
    Material cloth = bench.cloth();
    double out = allowance * DIAGONAL;
    double far = 2.1 * wide;
    Rim lying = Rim.from(-far, 0).edge(out, 0).edge(out + wide, wide).edge(-far, wide).torn();
    Rim standing = Rim.from(0, -out).edge(wide, wide - out).edge(wide, far).on(0, far).closed();
    Plan sewn = new Plan();
    sewn.more(cloth, Side.RIGHT, lying)
        .sheet(cloth, Side.WRONG, standing)
        .sewn(line(0, 0, wide, wide), bench.label("notch_to_notch"))
        .dimension(at(-far, 0), at(-far, wide), Beside.LEFT, bench.printed(wide));
    Plan open = new Plan();
    Rim left = Rim.from(-far, 0).edge(0, 0).edge(wide, wide).edge(-far, wide).torn();
    Rim right = Rim.from(0, 0).edge(far + wide, 0).on(far + wide, wide).edge(wide, wide).closed();
    open.sheet(cloth, Side.WRONG, left)
        .more(cloth, Side.WRONG, right)
        .more(
            cloth,
            Side.RIGHT,
            Rim.from(0, 0).edge(wide, wide).edge(wide - out, wide).edge(0, out).closed())
        .more(
            cloth,
            Side.RIGHT,
            Rim.from(0, 0).edge(out, 0).edge(wide, wide - out).edge(wide, wide).closed())
        .before(line(0, 0, wide, wide))
        .mark(line(out, 0, 0, -out, 0, 0), "")
        .mark(line(wide - out, wide, wide, wide + out, wide, wide), "")
        .cut(line(-out * 0.35, 0, out * 1.25, 0), bench.label("ears"))
        .cut(line(wide - out * 1.25, wide, wide + out * 0.35, wide), "");
    return List.of(bench.plan("sewn", sewn), bench.plan("open", open));
  }
}
