package org.lapmark.figure.operation.curves;

import static org.lapmark.figure.operation.plan.Plan.arc;
import static org.lapmark.figure.operation.plan.Plan.at;
import static org.lapmark.figure.operation.plan.Plan.line;
import static org.lapmark.figure.operation.plan.Plan.round;

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
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A hem on a curve, with its fullness drawn up. */
public final class CurvedHem extends Craft {
  private static final Point MIDDLE = at(0, 0);

  /** The kind. */
  public CurvedHem() {
    super(
        "curved_hem",
        Named.CURVE,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE, Amounts.RADIUS),
        List.of(),
        List.of(Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(6);
    double radius = bench.radius(true, wide * 1.6, wide * 6);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide / 2, Math.min(2, wide / 4));
    Material cloth = bench.cloth();
    long fullness = Math.round(100 * ((radius + wide) / (radius - wide) - 1));
    bench.say("fullness", Long.toString(fullness));
    double half = Math.min(55, StrictMath.toDegrees(4.2 * wide / radius));
    double from = 90 + half;
    double to = 90 - half;
    double in = Math.max(radius * 0.2, radius - 3.2 * wide);
    double thread = Math.min(5, wide / 3);
    Plan eased = new Plan();
    eased
        .sheet(cloth, Side.WRONG, sheet(radius + wide, in, from, to))
        .mark(Path.polyline(arc(MIDDLE, radius, from, to)), bench.label("hem_line"))
        .sewn(
            StitchKind.GATHER,
            Path.polyline(
                arc(MIDDLE, radius + wide - thread, from - half * 0.08, to + half * 0.08)),
            true,
            bench.label("ease_thread"));
    Point right = round(MIDDLE, radius, to);
    eased.dimension(right, round(MIDDLE, radius + wide, to), Beside.RIGHT, bench.printed(wide));
    Plan done = new Plan();
    done.sheet(cloth, Side.WRONG, sheet(radius, in, from, to))
        .more(cloth, Side.RIGHT, band(radius, radius - wide, from, to));
    int tucks = 9;
    for (int i = 1; i < tucks; i++) {
      double angle = from + (to - from) * i / tucks;
      done.thin(
          line(
              round(MIDDLE, radius - wide + edge * 0.3, angle),
              round(MIDDLE, radius - wide * 0.62, angle)),
          i == 3 ? bench.label("fullness") : "");
    }
    done.sewn(Path.polyline(arc(MIDDLE, radius - wide + edge, from, to)), "");
    return List.of(bench.plan("eased", eased), bench.plan("done", done));
  }

  private static Rim sheet(double edge, double in, double from, double to) {
    Point start = round(MIDDLE, edge, from);
    return Rim.from(start.x(), start.y())
        .edge(arc(MIDDLE, edge, from, to))
        .on(round(MIDDLE, in, to))
        .on(arc(MIDDLE, in, to, from))
        .torn();
  }

  private static Rim band(double edge, double in, double from, double to) {
    Point start = round(MIDDLE, edge, from);
    return Rim.from(start.x(), start.y())
        .edge(arc(MIDDLE, edge, from, to))
        .on(round(MIDDLE, in, to))
        .edge(arc(MIDDLE, in, to, from))
        .torn();
  }
}
