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
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A strap or a handle sewn on with a box and a cross. */
public final class BoxAndCross extends Craft {
  /** The kind. */
  public BoxAndCross() {
    super(
        "box_and_cross",
        Named.ATTACHMENT,
        List.of(Amounts.CLOTH, Amounts.STRIP, Amounts.WIDTH),
        List.of(),
        List.of(Amounts.LENGTH, Amounts.DISTANCE, Amounts.ALLOWANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.length(Amounts.WIDTH, 8, 200);
    double edge = bench.length(Amounts.DISTANCE, 1, wide / 4, Math.min(3, wide / 6));
    double high = bench.length(Amounts.LENGTH, 6, 200, wide);
    double in = bench.length(Amounts.ALLOWANCE, 3, high, Math.min(high * 0.6, 15));
    Material cloth = bench.cloth();
    Material strip = bench.material(Amounts.STRIP);
    double half = wide / 2;
    double box = half - edge;
    double bottom = -edge;
    double top = bottom - high;
    double up = top - wide * 0.75;
    double out = wide * 1.05;
    Rim strap = Rim.from(-half, up).on(half, up).edge(half, 0).edge(-half, 0).closed();
    Plan turned = new Plan();
    turned
        .sheet(strip, Side.WRONG, strap)
        .more(strip, Side.RIGHT, Rim.box(-half, -in, half, 0))
        .arrow(Path.polyline(Plan.arc(at(half * 1.15, 0), in * 0.6, 80, -80)))
        .label(bench.label("turned_end"), at(0, -in / 2), at(-half / 2, -in / 2))
        .dimension(at(-half, 0), at(half, 0), Beside.BELOW, bench.printed(wide))
        .dimension(at(-half, -in), at(-half, 0), Beside.LEFT, bench.printed(in));
    Plan sewn = new Plan();
    Point a = at(-box, bottom);
    Point b = at(box, bottom);
    Point c = at(box, top);
    Point d = at(-box, top);
    sewn.sheet(
            cloth,
            Side.RIGHT,
            Rim.from(-out, up).on(out, up).on(out, wide * 0.5).on(-out, wide * 0.5).torn())
        .more(strip, Side.RIGHT, strap)
        .under(line(-half, -in, half, -in), "")
        .secured(line(a, b, c, d, a, c, d, b), true, true, "")
        .turn(1, at(-half, bottom), at(-3.2, 0))
        .turn(2, at(half, bottom), at(3.2, 0))
        .turn(3, at(half, top), at(3.2, 0))
        .turn(4, at(-half, top), at(-3.2, 0))
        .dimension(c, b, Beside.RIGHT, bench.printed(high))
        .dimension(at(-half, 0), at(-box, 0), Beside.BELOW, bench.printed(edge));
    return List.of(bench.plan("turned", turned), bench.plan("sewn", sewn));
  }
}
