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

/** The ends of a piping that goes all the way round, joined. */
public final class PipingEnds extends Craft {
  /** The kind. */
  public PipingEnds() {
    super(
        "piping_ends",
        Named.TRIM,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE, Amounts.CORD),
        List.of(Amounts.STRIP),
        List.of(Amounts.FIRST));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(4);
    double cord = bench.length(Amounts.CORD, 1, 12);
    double in = bench.length(Amounts.FIRST, 3, 30, 10);
    Material cloth = bench.cloth();
    Material strip = bench.material(Amounts.STRIP);
    double roll = wide + cord * 1.2;
    double open = 2 * wide + cord * StrictMath.PI;
    double lap = in * 1.2;
    double far = Math.max(lap * 3.4, wide * 4);
    Rim ground = Rim.from(-far, 0).edge(far, 0).on(far, open * 1.25).on(-far, open * 1.25).torn();
    double closed = -lap * 1.2;
    double apart = lap + in * 0.9;
    Plan opened = new Plan();
    opened
        .sheet(cloth, Side.RIGHT, ground)
        .more(
            strip,
            Side.RIGHT,
            Rim.from(-far, 0).edge(closed, 0).edge(closed, roll).edge(-far, roll).torn())
        .edge(line(-far, wide, closed, wide), "")
        .more(strip, Side.WRONG, Rim.box(closed, 0, lap, open))
        .more(strip, Side.RIGHT, Rim.box(lap - in, 0, lap, open))
        .more(Cord.of(bench), Side.RIGHT, Rim.box(closed, wide, 0, wide + cord))
        .label(bench.label("cord_cut"), at(-0.5, wide + cord / 2))
        .more(
            strip,
            Side.RIGHT,
            Rim.from(apart, 0).edge(far, 0).on(far, roll).edge(apart, roll).closed())
        .edge(line(apart, wide, far, wide), "")
        .label(strip.name(), at((apart + far) / 2, wide / 2))
        .dimension(at(lap - in, open), at(lap, open), Beside.BELOW, bench.printed(in));
    Plan joined = new Plan();
    joined
        .more(cloth, Side.RIGHT, ground)
        .more(strip, Side.RIGHT, Rim.from(0, 0).edge(far, 0).on(far, roll).edge(0, roll).closed())
        .more(
            strip,
            Side.RIGHT,
            Rim.from(-far, 0).edge(lap, 0).edge(lap, roll).edge(-far, roll).torn())
        .under(line(0, wide, 0, roll), bench.label("cords_meet"))
        .edge(line(lap, 0, lap, roll), bench.label("folded_end"))
        .sewn(line(-far, wide, far, wide), "")
        .dimension(at(far, 0), at(far, wide), Beside.RIGHT, bench.printed(wide));
    return List.of(bench.plan("opened", opened), bench.plan("joined", joined));
  }
}
