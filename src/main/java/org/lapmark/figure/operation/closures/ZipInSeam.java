package org.lapmark.figure.operation.closures;

import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.craft.Sectional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Joins;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.section.Solid;

/** A zip behind a seam. */
public final class ZipInSeam extends Sectional {
  /** The kind. */
  public ZipInSeam() {
    super(
        "zip_in_seam",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(Amounts.DISTANCE),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(8);
    double edge = bench.length(Amounts.DISTANCE, 3, wide - 1);
    Material cloth = bench.cloth();
    Material with = bench.with();
    Cut basted = Joins.together(new Cut(), cloth, with, wide);
    basted.before(at(0, 0), at(0, NEXT)).above(0, wide, bench.printed(wide));
    Cut zip = new Cut();
    Joins.right(Joins.left(zip, cloth, wide, NEXT), with, wide, NEXT);
    double level = 2 * NEXT + 0.1;
    zip.layer(bench.tape(), Side.RIGHT, at(-wide, level), at(0, level, -1.6))
        .more(bench.tape(), Side.RIGHT, at(0, level, 1.6), at(wide, level))
        .solid(at(0, level), Solid.box(-1.9, -1.1, 1.9, 1.1), null, bench.label("teeth"))
        .sewn(at(-edge, 0), at(-edge, level))
        .sewn(at(edge, 0), at(edge, level))
        .above(0, edge, bench.printed(edge));
    return List.of(bench.section("basted", basted), bench.section("sewn", zip));
  }
}
