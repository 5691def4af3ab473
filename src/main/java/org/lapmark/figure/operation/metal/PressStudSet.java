package org.lapmark.figure.operation.metal;

import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.ArrayList;
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

/** A press stud of four parts set. */
public final class PressStudSet extends Craft {
  /** The kind. */
  public PressStudSet() {
    super(
        "press_stud_set",
        Named.ATTACHMENT,
        List.of(Amounts.CLOTH, Amounts.DIAMETER),
        List.of(),
        List.of(Amounts.WITH));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.DIAMETER, 5, 40);
    Material cloth = bench.cloth();
    Material with = bench.with();
    double half = wide / 2;
    double post = wide * 0.12;
    double hole = post * 1.25;
    double far = wide * 0.8;
    Cut upper = new Cut();
    upper
        .pierced(cloth, cloth.name(), 0, far, hole)
        .metal(cap(half, post, -1.2, 0.9), bench.label("cap"))
        .metal(socket(half * 0.8, 1.8), bench.label("socket"))
        .above(-half, half, bench.printed(wide));
    Cut lower = new Cut();
    lower
        .pierced(with, with.name(), 0, far, hole)
        .metal(stud(half * 0.8, -1.4), bench.label("stud"))
        .metal(base(half, post, 1.5, -0.6), bench.label("post"));
    Cut set = new Cut();
    double below = 2.6;
    set.pierced(cloth, "", 0, far, hole)
        .metal(cap(half, post, -0.27, 0.3), "")
        .metal(socket(half * 0.8, 0.27), "")
        .pierced(with, "", below, far, hole)
        .metal(stud(half * 0.8, below - 0.62), "")
        .metal(base(half, post, below + 0.27, below - 0.3), "")
        .label(bench.label("closes"), at(0, 1.5));
    return bench.heeding(
        "setting",
        List.of(
            bench.section("upper", upper),
            bench.section("lower", lower),
            bench.section("set", set)));
  }

  /** A dome on a level with a post below it. */
  private static List<Spot> cap(double half, double post, double level, double end) {
    List<Spot> spots = new ArrayList<>(Metal.dome(0, half, level, 0.5));
    spots.add(at(post, level));
    spots.add(at(post, end));
    spots.add(at(-post, end));
    spots.add(at(-post, level));
    return spots;
  }

  /** A ring with a hollow below, its upper side on a level. */
  private static List<Spot> socket(double half, double level) {
    return List.of(
        at(-half, level),
        at(half, level),
        at(half, level + 0.75),
        at(half * 0.5, level + 0.75),
        at(half * 0.58, level + 0.3),
        at(-half * 0.58, level + 0.3),
        at(-half * 0.5, level + 0.75),
        at(-half, level + 0.75));
  }

  /** A plate with a knob above, its lower side a little below a level. */
  private static List<Spot> stud(double half, double level) {
    return List.of(
        at(-half, level + 0.35),
        at(-half, level + 0.1),
        at(-half * 0.4, level + 0.1),
        at(-half * 0.48, level - 0.4),
        at(half * 0.48, level - 0.4),
        at(half * 0.4, level + 0.1),
        at(half, level + 0.1),
        at(half, level + 0.35));
  }

  private static List<Spot> base(double half, double post, double level, double end) {
    return List.of(
        at(-half, level),
        at(-post, level),
        at(-post, end),
        at(post, end),
        at(post, level),
        at(half, level),
        at(half, level + 0.26),
        at(-half, level + 0.26));
  }
}
