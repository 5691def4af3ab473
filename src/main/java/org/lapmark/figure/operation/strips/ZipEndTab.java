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
import org.lapmark.figure.stitching.StitchKind;
import org.lapmark.geometry.Box;

/** A tab over the end of a zip. */
public final class ZipEndTab extends Craft {
  /** The kind. */
  public ZipEndTab() {
    super(
        "zip_end_tab",
        Named.TRIM,
        List.of(Amounts.TAPE),
        List.of(Amounts.STRIP, Amounts.ALLOWANCE),
        List.of(Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double tape = bench.length(Amounts.TAPE, 8, 100);
    double wide = bench.length(Amounts.ALLOWANCE, 3, 60);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide - 1, Math.min(2, wide / 3));
    Material strip = bench.material(Amounts.STRIP);
    String zip = bench.label("zip");
    double half = tape / 2;
    double tab = Math.max(tape * 1.1, 3.4 * wide);
    double far = Math.max(tape * 1.7, 6 * wide);
    Box band = new Box(-far, -half, 0, half);
    double stop = -wide - Math.max(3, wide * 0.4);
    Plan sewn = new Plan();
    sewn.zip(band, -far, stop, zip)
        .sheet(strip, Side.WRONG, Rim.box(-tab, -half, 0, half), at(0, 0), strip.name())
        .under(line(-tab, 0, stop, 0), "")
        .under(line(stop, -tape * 0.09, stop, tape * 0.09), bench.label("stop"))
        .secured(line(-wide, -half, -wide, half), true, true, "")
        .dimension(at(-wide, half), at(0, half), Beside.BELOW, bench.printed(wide));
    Plan turned = new Plan();
    turned
        .zip(new Box(-far, -half, -wide, half), -far, stop, zip)
        .sheet(strip, Side.RIGHT, Rim.box(-wide, -half, tab - 2 * wide, half))
        .under(line(0, -half, 0, half), bench.label("zip_end"))
        .sewn(StitchKind.TOPSTITCH, line(-wide + edge, -half, -wide + edge, half), true, "")
        .dimension(at(-wide, half), at(-wide + edge, half), Beside.BELOW, bench.printed(edge));
    return List.of(bench.plan("sewn", sewn), bench.plan("turned", turned));
  }
}
