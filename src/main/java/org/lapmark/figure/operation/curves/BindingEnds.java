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
import org.lapmark.figure.stitching.StitchKind;

/** The ends of a binding that goes all the way round, closed. */
public final class BindingEnds extends Craft {
  /** The kind. */
  public BindingEnds() {
    super(
        "binding_ends",
        Named.TRIM,
        List.of(Amounts.CLOTH, Amounts.STRIP),
        List.of(Amounts.WIDTH),
        List.of(Amounts.FIRST));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.WIDTH, 3, 60);
    double in = bench.length(Amounts.FIRST, 3, 60, 10);
    Material cloth = bench.cloth();
    Material strip = bench.material(Amounts.STRIP);
    double cut = 4 * wide;
    double far = Math.max(5 * wide, 3.2 * in);
    double lap = in * 1.5;
    bench.say("lap", bench.printed(lap));
    Rim ground = Rim.from(-far, 0).edge(far, 0).on(far, cut * 1.5).on(-far, cut * 1.5).torn();
    Rim beginning = Rim.from(0, 0).edge(far, 0).on(far, cut).edge(0, cut).closed();
    double start = lap * 1.15;
    Plan begun = new Plan();
    begun
        .sheet(cloth, Side.RIGHT, ground)
        .sheet(strip, Side.WRONG, beginning)
        .more(strip, Side.RIGHT, Rim.box(0, 0, in, cut))
        .secured(line(start, wide, far, wide), true, false, "")
        .dimension(at(0, cut), at(in, cut), Beside.BELOW, bench.printed(in))
        .dimension(at(far, 0), at(far, wide), Beside.RIGHT, bench.printed(wide));
    Plan lapped = new Plan();
    lapped
        .more(cloth, Side.RIGHT, ground)
        .more(strip, Side.WRONG, beginning)
        .more(strip, Side.RIGHT, Rim.box(0, 0, in, cut))
        .before(line(start, wide, far, wide))
        .sheet(
            strip, Side.WRONG, Rim.from(-far, 0).edge(lap, 0).edge(lap, cut).edge(-far, cut).torn())
        .under(line(0, 0, 0, cut), bench.label("folded_end"))
        .secured(line(-far, wide, start + wide, wide), false, true, "")
        .dimension(at(0, cut), at(lap, cut), Beside.BELOW, bench.printed(lap));
    Plan done = new Plan();
    done.sheet(
            cloth,
            Side.RIGHT,
            Rim.from(-far, wide).edge(far, wide).on(far, cut * 1.2).on(-far, cut * 1.2).torn())
        .sheet(
            strip, Side.RIGHT, Rim.from(-far, 0).edge(far, 0).on(far, wide).edge(-far, wide).torn())
        .sewn(StitchKind.SLIP, line(0, wide, 0, 0), true, "")
        .edge(line(0, 0, 0, wide), bench.label("folded_end"));
    return List.of(
        bench.plan("begun", begun), bench.plan("lapped", lapped), bench.plan("done", done));
  }
}
