package org.lapmark.figure.operation.metal;

import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.operation.frame.Metal;
import org.lapmark.figure.section.SectionScene.Spot;

/** A rivet set. */
public final class RivetSet extends Craft {
  /** The kind. */
  public RivetSet() {
    super(
        "rivet_set",
        Named.ATTACHMENT,
        List.of(Amounts.CLOTH, Amounts.DIAMETER),
        List.of(),
        List.of(Amounts.WITH));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.DIAMETER, 3, 40);
    Material cloth = bench.cloth();
    Material with = bench.with();
    double half = wide / 2;
    double post = wide * 0.15;
    double hole = post * 1.25;
    double far = wide * 1.1;
    Cut through = new Cut();
    through
        .pierced(cloth, cloth.name(), 0, far, hole)
        .pierced(with, with.equals(cloth) ? "" : with.name(), NEXT, far, hole)
        .metal(Metal.dome(0, half, -2, 0.6), bench.label("cap"))
        .metal(post(post, half, 2.4, -0.95), bench.label("post"))
        .above(-half, half, bench.printed(wide));
    Cut set = new Cut();
    double under = NEXT + 0.28;
    set.pierced(cloth, "", 0, far, hole)
        .pierced(with, "", NEXT, far, hole)
        .metal(post(post, half, under, -0.3), "")
        .metal(Metal.dome(0, half, -0.28, 0.6), "")
        .tool(Tools.anvil(half, under + 0.3), bench.label("anvil"))
        .tool(Tools.setter(half, -0.95), bench.label("setter"));
    return bench.heeding(
        "setting", List.of(bench.section("through", through), bench.section("set", set)));
  }

  private static List<Spot> post(double post, double half, double level, double end) {
    return List.of(
        at(-half, level),
        at(-post, level),
        at(-post, end),
        at(post, end),
        at(post, level),
        at(half, level),
        at(half, level + 0.3),
        at(-half, level + 0.3));
  }
}
