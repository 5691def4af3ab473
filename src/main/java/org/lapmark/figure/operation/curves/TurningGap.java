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
import org.lapmark.geometry.Path;

/** Turning through a gap that is closed afterwards. */
public final class TurningGap extends Craft {
  /** The kind. */
  public TurningGap() {
    super(
        "turning_gap",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(Amounts.GAP),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(3);
    double gap = bench.length(Amounts.GAP, 20);
    Material cloth = bench.cloth();
    Material with = bench.with();
    double half = Math.max(gap * 0.95, gap / 2 + 5 * wide);
    double high = half * 1.25;
    Rim raw = Rim.box(-half - wide, -wide, half + wide, high + wide);
    Path seam = line(gap / 2, high, half, high, half, 0, -half, 0, -half, high, -gap / 2, high);
    Plan sewn = new Plan();
    sewn.sheet(with, Side.RIGHT, raw, Plan.OUT, with.name())
        .sheet(cloth, Side.WRONG, raw)
        .secured(seam, true, true, "")
        .dimension(at(-gap / 2, high), at(gap / 2, high), Beside.BELOW, bench.printed(gap));
    Plan turning = new Plan();
    double out = gap * 0.34;
    turning
        .more(cloth, Side.WRONG, raw)
        .before(seam)
        .more(
            cloth,
            Side.RIGHT,
            Rim.from(-out, high)
                .edge(-out * 1.15, high + out * 0.9)
                .edge(-out * 0.7, high + out * 1.6)
                .edge(out * 0.1, high + out * 1.45)
                .edge(out * 0.75, high + out * 1.75)
                .edge(out * 1.2, high + out * 0.8)
                .edge(out, high)
                .closed())
        .thin(line(-out * 0.3, high, -out * 0.45, high + out * 0.8), "")
        .thin(line(out * 0.4, high, out * 0.6, high + out * 0.9), "")
        .arrow(line(0, high * 0.45, 0, high * 0.86))
        .label(bench.label("right_side"), at(0, high + out * 0.8), at(out / 2, high + out));
    Plan closed = new Plan();
    Rim turned = Rim.box(-half, 0, half, high);
    closed
        .sheet(cloth, Side.RIGHT, turned)
        .under(
            line(
                half - wide,
                high - wide,
                half - wide,
                wide,
                -half + wide,
                wide,
                -half + wide,
                high - wide,
                half - wide,
                high - wide),
            bench.label("inside"))
        .sewn(
            StitchKind.LADDER,
            line(gap / 2, high, -gap / 2, high),
            true,
            bench.label("ladder_stitch"));
    return List.of(
        bench.plan("sewn", sewn), bench.plan("turning", turning), bench.plan("closed", closed));
  }
}
