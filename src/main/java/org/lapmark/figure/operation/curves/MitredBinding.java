package org.lapmark.figure.operation.curves;

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

/** Binding taken round a corner with a mitre. */
public final class MitredBinding extends Craft {
  /** The kind. */
  public MitredBinding() {
    super(
        "mitred_binding",
        Named.TRIM,
        List.of(Amounts.CLOTH, Amounts.STRIP),
        List.of(Amounts.WIDTH),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.WIDTH, 3, 60);
    Material cloth = bench.cloth();
    Material strip = bench.material(Amounts.STRIP);
    double cut = 4 * wide;
    double far = 8 * wide;
    double up = 3 * wide;
    Rim ground = Rim.from(-far, 0).edge(0, 0).edge(0, far).on(-far, far).torn();
    Plan folded = new Plan();
    folded
        .sheet(cloth, Side.RIGHT, ground)
        .sheet(
            strip, Side.WRONG, Rim.from(-far, 0).edge(0, 0).edge(-cut, cut).edge(-far, cut).torn())
        .secured(line(-far, wide, -wide, wide), false, true, "")
        .more(
            strip,
            Side.RIGHT,
            Rim.from(0, 0).edge(-cut, cut).edge(-cut, -up).on(0, -up).edge(0, 0).closed())
        .arrow(line(-cut / 2, cut * 0.1, -cut / 2, -up * 0.7))
        .dimension(at(-wide, wide), at(0, wide), Beside.BELOW, bench.printed(wide))
        .label(bench.label("at_45"), at(-cut * 0.5, cut * 0.5));
    Plan down = new Plan();
    down.sheet(cloth, Side.RIGHT, ground)
        .more(
            strip, Side.WRONG, Rim.from(-far, 0).edge(0, 0).edge(-cut, cut).edge(-far, cut).torn())
        .before(line(-far, wide, -wide, wide))
        .sheet(
            strip,
            Side.WRONG,
            Rim.from(-cut, 0).edge(0, 0).edge(0, far).on(-cut, far).edge(-cut, 0).closed())
        .under(line(0, 0, -cut, cut), "")
        .secured(line(-wide, 0, -wide, far), true, false, "")
        .label(bench.label("fold_level"), at(-cut * 0.6, 0), at(-cut * 0.4, 0));
    Plan done = new Plan();
    done.sheet(
            cloth,
            Side.RIGHT,
            Rim.from(-far, wide).edge(-wide, wide).edge(-wide, far).on(-far, far).torn())
        .sheet(
            strip,
            Side.RIGHT,
            Rim.from(-far, 0)
                .edge(0, 0)
                .edge(0, far)
                .on(-wide, far)
                .edge(-wide, wide)
                .edge(-far, wide)
                .torn())
        .edge(line(-wide, wide, 0, 0), bench.label("mitre"));
    return List.of(
        bench.plan("folded", folded), bench.plan("down", down), bench.plan("done", done));
  }
}
