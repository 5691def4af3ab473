package org.lapmark.figure.operation.closures;

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
import org.lapmark.geometry.Box;

/** An opening turned with a facing, with a zip behind it. */
public final class LetterboxPocket extends Craft {
  /** The kind. */
  public LetterboxPocket() {
    super(
        "letterbox_pocket",
        Named.NOTHING,
        List.of(),
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.LENGTH, Amounts.HEIGHT),
        List.of(Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double length = bench.length(Amounts.LENGTH, 40, 600);
    double high = bench.length(Amounts.HEIGHT, 6, Math.min(60, length / 3));
    double edge = bench.length(Amounts.DISTANCE, 0.5, high, 2);
    Material cloth = bench.cloth();
    Material facing = bench.with();
    double half = length / 2;
    double mid = high / 2;
    double out = Math.max(18, high * 1.4);
    double far = half + out * 1.6;
    double tall = mid + out * 1.7;
    Rim ground = Rim.from(-far, -tall).on(far, -tall).on(far, tall).on(-far, tall).torn();
    double point = half - mid;
    Plan sewn = new Plan();
    sewn.sheet(cloth, Side.RIGHT, ground)
        .sheet(facing, Side.WRONG, Rim.box(-half - out, -mid - out, half + out, mid + out))
        .sewn(
            line(
                -half * 0.5, mid, half, mid, half, -mid, -half, -mid, -half, mid, -half * 0.4, mid),
            "")
        .cut(line(-point, 0, point, 0), bench.label("cut_y"));
    for (int side : new int[] {-1, 1}) {
      sewn.cut(line(side * half, -mid, side * point, 0, side * half, mid), "");
    }
    sewn.dimension(at(-half, -mid), at(half, -mid), Beside.ABOVE, bench.printed(length))
        .dimension(at(half, -mid), at(half, mid), Beside.RIGHT, bench.printed(high));
    Plan done = new Plan();
    done.zip(
        new Box(-half - 12, -mid - out * 0.5, half + 12, mid + out * 0.5),
        -half - 12,
        half + 12,
        "");
    double lap = high * 0.02;
    // The zip lies behind: what is seen of it is in the window alone.
    done.sheet(
            cloth,
            Side.RIGHT,
            Rim.from(-far, -tall)
                .on(far, -tall)
                .on(far, lap)
                .inner(half, lap)
                .edge(half, -mid)
                .edge(-half, -mid)
                .edge(-half, lap)
                .inner(-far, lap)
                .torn())
        .more(
            cloth,
            Side.RIGHT,
            Rim.from(-far, 0)
                .inner(-half, 0)
                .edge(-half, mid)
                .edge(half, mid)
                .edge(half, 0)
                .inner(far, 0)
                .on(far, tall)
                .on(-far, tall)
                .torn());
    double box = mid + edge;
    double side = half + edge;
    done.sewn(
            StitchKind.TOPSTITCH,
            line(
                -side * 0.5, box, side, box, side, -box, -side, -box, -side, box, -side * 0.5, box),
            true,
            "")
        .label(bench.label("zip"), at(half * 0.3, 0), at(-half * 0.3, 0))
        .dimension(at(-side, box), at(-half, box), Beside.BELOW, bench.printed(edge));
    return List.of(bench.plan("sewn", sewn), bench.plan("done", done));
  }
}
