package org.lapmark.figure.operation.folds;

import static org.lapmark.figure.operation.plan.Plan.at;
import static org.lapmark.figure.operation.plan.Plan.line;

import java.util.ArrayList;
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
import org.lapmark.geometry.Point;

/** Gathers. */
public final class Gathers extends Craft {
  /** So many times the allowance is shown of what is gathered. */
  private static final double SHOWN = 7;

  /** The kind. */
  public Gathers() {
    super(
        "gathers",
        Named.GATHERED_SEAM,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE, Amounts.FULL, Amounts.WIDTH),
        List.of(),
        List.of(Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(6);
    double width = bench.length(Amounts.WIDTH, 10);
    double full = bench.length(Amounts.FULL, width * 1.02);
    double beside = bench.length(Amounts.DISTANCE, 1, wide - 2, Math.min(4, wide / 2.5));
    Material cloth = bench.cloth();
    double ratio = full / width;
    double shown = Math.min(full, SHOWN * wide * Math.min(ratio, 2));
    double drawn = shown / ratio;
    double down = wide * 3.4;
    Plan rows = new Plan();
    double half = shown / 2;
    double tail = wide * 0.5;
    rows.sheet(
            cloth,
            Side.RIGHT,
            Rim.from(-half, 0).edge(half, 0).on(half, down).on(-half, down).torn())
        .mark(line(-half, wide, half, wide), bench.label("seam_line"))
        .sewn(
            StitchKind.GATHER,
            line(-half + tail, wide - beside, half - tail, wide - beside),
            true,
            bench.label("gathering_rows"))
        .sewn(
            StitchKind.GATHER,
            line(-half + tail, wide + beside, half - tail, wide + beside),
            true,
            "")
        .dimension(
            at(-half, 0),
            at(half, 0),
            Beside.ABOVE,
            bench.label("in_all", "length", bench.printed(full)))
        .dimension(at(half, 0), at(half, wide), Beside.RIGHT, bench.printed(wide));
    Plan drawnUp = new Plan();
    double end = drawn / 2;
    List<Point> edge = new ArrayList<>();
    int waves = (int) Math.max(6, Math.round(drawn / wide * 2));
    for (int i = 0; i <= waves * 6; i++) {
      double x = -end + drawn * i / (waves * 6);
      edge.add(at(x, wide * 0.05 * StrictMath.sin(2 * StrictMath.PI * i / 6)));
    }
    double flare = Math.min((shown - drawn) / 2, drawn * 0.22);
    drawnUp.sheet(
        cloth,
        Side.RIGHT,
        Rim.from(-end, 0).edge(edge).on(end + flare, down).on(-end - flare, down).torn());
    for (int i = 1; i < waves; i++) {
      double x = -end + drawn * i / waves;
      double share = 2 * x / drawn;
      double length = i % 2 == 0 ? 0.85 : 0.55;
      drawnUp.thin(
          line(
              x,
              wide * 0.2,
              x + flare * share * 0.2,
              wide,
              x + flare * share * length * 0.7,
              down * length),
          "");
    }
    for (double y : new double[] {wide - beside, wide + beside}) {
      drawnUp.sewn(StitchKind.GATHER, line(-end, y, end, y), true, "");
    }
    drawnUp.dimension(
        at(-end, 0),
        at(end, 0),
        Beside.ABOVE,
        bench.label("in_all", "length", bench.printed(width)));
    return List.of(bench.plan("rows", rows), bench.plan("drawn", drawnUp));
  }
}
