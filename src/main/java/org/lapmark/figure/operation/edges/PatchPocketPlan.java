package org.lapmark.figure.operation.edges;

import static org.lapmark.figure.operation.plan.Plan.at;
import static org.lapmark.figure.operation.plan.Plan.line;

import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.operation.plan.Plan;
import org.lapmark.figure.operation.plan.Rim;

/** A patch pocket seen from above. */
final class PatchPocketPlan {
  private PatchPocketPlan() {}

  static List<Frame> frames(Bench bench, double in, double edge, Material cloth, Material ground) {
    double wide = bench.length(Amounts.WIDTH, 30, 600);
    double high = bench.length(Amounts.LENGTH, 30, 600, wide);
    double hem = bench.length(Amounts.FIRST, in, high / 3, Math.min(2 * in, high / 3));
    double half = wide / 2;
    Plan turned = new Plan();
    turned
        .sheet(cloth, Side.WRONG, Rim.box(-half, 0, half, high))
        .more(cloth, Side.RIGHT, Rim.box(-half, 0, half, hem))
        .before(line(-half, hem - Math.min(2, hem / 4), half, hem - Math.min(2, hem / 4)))
        .more(
            cloth,
            Side.RIGHT,
            Rim.from(-half, 0)
                .edge(-half + in, 0)
                .edge(-half + in, high - in)
                .edge(-half, high)
                .closed())
        .more(
            cloth,
            Side.RIGHT,
            Rim.from(half, 0)
                .edge(half, high)
                .edge(half - in, high - in)
                .edge(half - in, 0)
                .closed())
        .more(
            cloth,
            Side.RIGHT,
            Rim.from(-half, high)
                .edge(-half + in, high - in)
                .edge(half - in, high - in)
                .edge(half, high)
                .closed())
        .label(bench.label("mouth_hem"), at(0, hem * 0.4), at(half * 0.5, hem * 0.4))
        .dimension(at(-half, high), at(-half + in, high), Beside.BELOW, bench.printed(in));
    double out = Math.max(8, wide * 0.14);
    Plan sewn = new Plan();
    double box = half - edge;
    double tack = Math.min(8, wide / 8);
    sewn.sheet(
            ground,
            Side.RIGHT,
            Rim.from(-half - out, -out)
                .on(half + out, -out)
                .on(half + out, high + out)
                .on(-half - out, high + out)
                .torn())
        .sheet(cloth, Side.RIGHT, Rim.box(-half, 0, half, high))
        .before(line(-half, hem - Math.min(2, hem / 4), half, hem - Math.min(2, hem / 4)))
        .sewn(line(-box, 0, -box, high - edge, box, high - edge, box, 0), "")
        .sewn(line(-box, 0, -box + tack, 0.6, -box, tack * 1.5), "")
        .sewn(line(box, 0, box - tack, 0.6, box, tack * 1.5), bench.label("mouth_corner"))
        .dimension(at(-half, 0), at(half, 0), Beside.ABOVE, bench.printed(wide))
        .dimension(at(half, 0), at(half, high), Beside.RIGHT, bench.printed(high));
    return List.of(bench.plan("turned", turned), bench.plan("sewn_on", sewn));
  }
}
