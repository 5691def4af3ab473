package org.lapmark.figure.operation.metal;

import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.operation.frame.Metal;

/** Half a magnetic snap set. */
public final class MagneticSnapSet extends Craft {
  /** The kind. */
  public MagneticSnapSet() {
    super(
        "magnetic_snap_set",
        Named.ATTACHMENT,
        List.of(Amounts.CLOTH, Amounts.DIAMETER),
        List.of(),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.DIAMETER, 6, 60);
    Material cloth = bench.cloth();
    String name = bench.label("reinforcement");
    Material firm = new Material(Optional.of(Texture.INTERFACING), name, name);
    double half = wide / 2;
    double leg = half * 0.62;
    double metal = wide * 0.035;
    double far = wide * 0.85;
    Cut through = new Cut();
    slit(through, cloth, cloth.name(), 0, far, leg, metal * 2);
    slit(through, firm, name, NEXT * 0.8, far, leg, metal * 2);
    through.metal(Metal.box(-half, -1.9, half, -1.25), bench.label("snap"));
    through.above(-half, half, bench.printed(wide));
    for (int side : new int[] {-1, 1}) {
      through.metal(
          Metal.box(side * leg - metal, -1.25, side * leg + metal, 0.35),
          side < 0 ? bench.label("leg") : "");
    }
    washer(through, half, leg, metal, 2, bench.label("plate"));
    Cut set = new Cut();
    slit(set, cloth, "", 0, far, leg, metal * 2);
    slit(set, firm, "", NEXT * 0.8, far, leg, metal * 2);
    double under = NEXT * 0.8 + 0.2;
    set.metal(Metal.box(-half, -0.9, half, -0.27), "");
    washer(set, half, leg, metal, under, "");
    for (int side : new int[] {-1, 1}) {
      double in = side * (leg - metal);
      double out = side * (leg + metal);
      double end = side * half * 1.15;
      set.metal(
          List.of(
              at(in, -0.27),
              at(out, -0.27),
              at(out, under + 0.24),
              at(end, under + 0.24),
              at(end, under + 0.46),
              at(in, under + 0.46)),
          side < 0 ? bench.label("bent") : "");
    }
    return bench.heeding(
        "magnet", List.of(bench.section("through", through), bench.section("set", set)));
  }

  private static void slit(
      Cut cut, Material cloth, String name, double level, double far, double leg, double half) {
    cut.pierced(cloth, name, level, far, leg + half)
        .more(cloth, Side.RIGHT, at(-leg + half, level), at(leg - half, level));
  }

  private static void washer(
      Cut cut, double half, double leg, double metal, double level, String words) {
    double slot = metal * 1.6;
    double end = half * 0.95;
    cut.metal(Metal.box(-end, level, -leg - slot, level + 0.24), "")
        .metal(Metal.box(-leg + slot, level, leg - slot, level + 0.24), words)
        .metal(Metal.box(leg + slot, level, end, level + 0.24), "");
  }
}
