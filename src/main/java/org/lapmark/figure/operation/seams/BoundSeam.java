package org.lapmark.figure.operation.seams;

import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.TURN;
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
import org.lapmark.figure.section.SectionScene.Spot;

/** A seam with bound allowances. */
public final class BoundSeam extends Sectional {
  /** The kind. */
  public BoundSeam() {
    super(
        "bound_seam",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(Amounts.STRIP, Amounts.WIDTH),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(6);
    double width = bench.length(Amounts.WIDTH, 2, wide - 2);
    Material cloth = bench.cloth();
    Material with = bench.with();
    Material strip = bench.material(Amounts.STRIP);
    Cut sewn = Joins.together(new Cut(), cloth, with, wide);
    sewn.sewn(at(0, 0), at(0, NEXT)).above(0, wide, bench.printed(wide));
    double level = 1.5;
    Cut bound = new Cut();
    Joins.right(Joins.left(bound, cloth, wide, level), with, wide, level);
    bound
        .layer(strip, Side.RIGHT, wrap(-wide, -wide + width, -1, level))
        .more(strip, Side.RIGHT, wrap(wide, wide - width, 1, level))
        .before(at(0, level / 2, -TURN), at(0, level / 2, TURN));
    double stitch = wide - width * 0.75;
    bound
        .sewn(at(-stitch, level - 0.5), at(-stitch, level + 0.5))
        .sewn(at(stitch, level - 0.5), at(stitch, level + 0.5))
        .below(wide - width, wide, bench.printed(width));
    return List.of(bench.section("sewn", sewn), bench.section("bound", bound));
  }

  /** Round a raw edge. */
  private static Spot[] wrap(double edge, double inner, int out, double level) {
    return new Spot[] {
      at(inner, level + out * -0.5),
      at(edge, level + out * -0.5, out * 2.2),
      at(edge, level + out * 0.5, out * 2.2),
      at(inner, level + out * 0.5)
    };
  }
}
