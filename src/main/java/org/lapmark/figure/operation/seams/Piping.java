package org.lapmark.figure.operation.seams;

import static org.lapmark.figure.operation.frame.Cut.BEYOND;
import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.craft.Sectional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Joins;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.section.SectionScene.Spot;
import org.lapmark.figure.section.Solid;

/** A seam with piping. */
public final class Piping extends Sectional {
  /** The kind. */
  public Piping() {
    super(
        "piped_seam",
        Named.SEAM,
        List.of(Amounts.CLOTH, Amounts.WITH, Amounts.ALLOWANCE),
        List.of(Amounts.STRIP, Amounts.CORD),
        List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(4);
    double cord = bench.length(Amounts.CORD, 1, 12);
    Material cloth = bench.cloth();
    Material with = bench.with();
    Material strip = bench.material(Amounts.STRIP);
    double middle = 2;
    Cut sewn =
        new Cut()
            .layer(
                with,
                Side.WRONG,
                at(-wide, 0.55, -BEYOND),
                at(0, 0.55, -3.2),
                at(0, 1.15, -0.2),
                at(wide, 1.15))
            .layer(
                cloth,
                Side.RIGHT,
                at(-wide, 3.45, -BEYOND),
                at(0, 3.45, -3.2),
                at(0, 2.85, -0.2),
                at(wide, 2.85))
            .layer(strip, strip.name(), Side.RIGHT, round(wide, at(0, middle, -4.6), 0.3))
            .solid(at(0, middle, -4.6), Solid.round(2.1), Texture.INTERFACING, bench.label("cord"))
            .sewn(at(0, 1.15, 0.6), at(0, 2.85, 0.6))
            .above(0, wide, bench.printed(wide));
    Cut open = new Cut();
    Joins.left(open, cloth, wide, NEXT);
    List<Spot> loop = new ArrayList<>();
    loop.add(at(-wide, 2 * NEXT));
    loop.add(at(0, 2 * NEXT, 0.2));
    loop.add(at(0, 0, 0.2));
    loop.addAll(Cut.round(at(0, -1.1, 1.1), 2.7, 120, 420));
    loop.add(at(0, 0, 2));
    loop.add(at(0, 2 * NEXT + 0.5, 2));
    loop.add(at(-wide, 2 * NEXT + 0.5));
    open.layer(strip, strip.name(), Side.WRONG, loop)
        .solid(at(0, -1.1, 1.1), Solid.round(2), Texture.INTERFACING, "")
        .layer(
            with,
            Side.RIGHT,
            at(-wide, 3.6 * NEXT),
            at(0, 3.6 * NEXT, 2),
            at(0, 0, 5.4),
            at(wide, 0, BEYOND))
        .before(at(0, NEXT, -2.8), at(0, 3.6 * NEXT, -2.8));
    return List.of(bench.section("sewn", sewn), bench.section("open", open));
  }

  /** Along one side of a seam, round a cord left of it, and back. */
  private static List<Spot> round(double wide, Spot cord, double half) {
    List<Spot> spots = new ArrayList<>();
    spots.add(at(wide, cord.level() + half));
    spots.add(at(0, cord.level() + half, -1.2));
    spots.addAll(Cut.round(cord, 2.8, 60, 300));
    spots.add(at(0, cord.level() - half, -1.2));
    spots.add(at(wide, cord.level() - half));
    return spots;
  }
}
