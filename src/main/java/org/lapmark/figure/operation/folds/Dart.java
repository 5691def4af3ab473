package org.lapmark.figure.operation.folds;

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

/** A dart. */
public final class Dart extends Craft {
  /** The kind. */
  public Dart() {
    super(
        "dart",
        Named.DART,
        List.of(Amounts.CLOTH, Amounts.WIDTH, Amounts.DEPTH),
        List.of(),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.WIDTH, 2, 400);
    double deep = bench.length(Amounts.DEPTH, 10, 800);
    Material cloth = bench.cloth();
    double half = wide / 2;
    double side = Math.max(deep * 0.45, wide * 1.1);
    double down = deep * 1.3;
    double knot = deep * 0.06;
    Plan marked = new Plan();
    marked
        .sheet(
            cloth,
            Side.WRONG,
            Rim.from(-side, 0).edge(side, 0).on(side, down).on(-side, down).torn())
        .mark(line(-half, 0, 0, deep), bench.label("leg"))
        .mark(line(half, 0, 0, deep), "")
        .thin(line(0, 0, 0, deep), bench.label("fold"))
        .dimension(at(-half, 0), at(half, 0), Beside.ABOVE, bench.printed(wide))
        .dimension(at(side, 0), at(side, deep), Beside.RIGHT, bench.printed(deep));
    Plan sewn = new Plan();
    sewn.sheet(
            cloth, Side.WRONG, Rim.from(-side, 0).edge(0, 0).edge(0, down).on(-side, down).torn())
        .secured(line(-half, 0, 0, deep), true, false, "")
        .thin(
            line(0, deep, knot * 0.8, deep + knot, knot * 0.5, deep + 2.6 * knot),
            bench.label("knotted"))
        .thin(line(0, deep, knot * 1.2, deep + knot * 1.2, knot * 1.7, deep + 2.6 * knot), "")
        .label(bench.label("folded_edge"), at(0, deep * 0.4), at(0, deep * 0.5));
    Plan pressed = new Plan();
    // The edge beyond the dart has come round by its angle.
    pressed
        .sheet(
            cloth,
            Side.WRONG,
            Rim.from(-side, 0).edge(side * 0.75, 0).on(side * 0.75, down).on(-side, down).torn())
        .more(cloth, Side.WRONG, Rim.from(0, 0).edge(0, deep).edge(-half, 0).closed())
        .before(line(0, 0, 0, deep))
        .arrow(line(side * 0.3, deep * 0.3, -half - side * 0.12, deep * 0.3));
    return List.of(
        bench.plan("marked", marked), bench.plan("sewn", sewn), bench.plan("pressed", pressed));
  }
}
