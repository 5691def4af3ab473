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

/** An eyelet set. */
public final class EyeletSet extends Craft {
  /** How wide an eyelet is for its hole. */
  private static final double RIM = 1.9;

  /** The kind. */
  public EyeletSet() {
    super(
        "eyelet_set",
        Named.ATTACHMENT,
        List.of(Amounts.CLOTH, Amounts.HOLE),
        List.of(),
        List.of(Amounts.WITH));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.HOLE, 2, 60);
    Material cloth = bench.cloth();
    Material with = bench.with();
    double half = wide / 2;
    double metal = wide * 0.09;
    double hole = half + metal * 1.4;
    double rim = half * RIM;
    double far = rim * 1.7;
    Cut through = new Cut();
    through
        .pierced(cloth, cloth.name(), 0, far, hole)
        .pierced(with, with.equals(cloth) ? "" : with.name(), NEXT, far, hole)
        .above(-half, half, bench.printed(wide));
    for (int side : new int[] {-1, 1}) {
      through
          .metal(barrel(side, half, metal, rim, -1.9, 0.3), side < 0 ? bench.label("eyelet") : "")
          .metal(
              Metal.box(side * hole, 2.2, side * rim, 2.5), side < 0 ? bench.label("washer") : "");
    }
    Cut set = new Cut();
    set.pierced(cloth, "", 0, far, hole).pierced(with, "", NEXT, far, hole);
    double washer = NEXT + 0.28;
    for (int side : new int[] {-1, 1}) {
      set.metal(Metal.box(side * hole, washer, side * rim, washer + 0.26), "")
          .metal(rolled(side, half, metal, rim, washer + 0.26), "");
    }
    set.label(bench.label("rolled"), at(-(half + metal * 2), washer + 0.5));
    set.tool(Tools.anvil(rim, washer + 0.75), bench.label("anvil"));
    return bench.heeding(
        "setting", List.of(bench.section("through", through), bench.section("set", set)));
  }

  /** A flange on a level with a barrel below it. */
  private static List<Spot> barrel(
      int side, double half, double metal, double rim, double level, double end) {
    return List.of(
        at(side * half, level),
        at(side * rim, level),
        at(side * rim, level + 0.26),
        at(side * (half + metal), level + 0.26),
        at(side * (half + metal), end),
        at(side * half, end));
  }

  /** The same through cloth, its end rolled over outward at a level. */
  private static List<Spot> rolled(int side, double half, double metal, double rim, double level) {
    double top = -0.54;
    double out = half + metal * 4;
    return List.of(
        at(side * half, top),
        at(side * rim, top),
        at(side * rim, top + 0.26),
        at(side * (half + metal), top + 0.26),
        at(side * (half + metal), level),
        at(side * out, level),
        at(side * out, level + 0.26),
        at(side * (half + metal), level + 0.4),
        at(side * half, level + 0.26));
  }
}
