package org.lapmark.figure.operation.curves;

import static org.lapmark.figure.operation.plan.Plan.at;
import static org.lapmark.figure.operation.plan.Plan.line;

import java.util.ArrayList;
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

/** A corner sewn, trimmed and turned. */
public final class Corner extends Craft {
  private static final Point TIP = at(0, 0);

  /** The kind. */
  public Corner() {
    super(
        "corner",
        Named.CORNER,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE),
        List.of(),
        List.of(Amounts.WITH, Amounts.TRIMMED));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(4);
    double left = bench.length(Amounts.TRIMMED, 1, wide, Math.min(3, wide / 2));
    Material cloth = bench.cloth();
    Material with = bench.with();
    Shape shape = Shape.of(bench.angle(), wide, left);
    Plan sewn = new Plan();
    sewn.sheet(with, Side.RIGHT, shape.trimmed(), Plan.OUT, with.name())
        .sheet(cloth, Side.WRONG, shape.trimmed())
        .mark(line(shape.cut(0), shape.corner(), shape.cut(1)), "")
        .sewn(line(shape.far(0), TIP, shape.far(1)), "")
        .cut(
            line(shape.cut(0), shape.cut(1)),
            bench.label("cut_corner", "left", bench.printed(left)))
        .dimension(shape.far(0), shape.far(0).plus(at(0, -wide)), Beside.LEFT, bench.printed(wide));
    Plan turned = new Plan();
    turned.sheet(cloth, Side.RIGHT, shape.turned());
    for (int side = 0; side < 2; side++) {
      turned.under(
          line(shape.folded(side, shape.end(side)), shape.folded(side, shape.cut(side))), "");
    }
    double blunt = wide * 0.16;
    Point in = shape.out().times(-1);
    Point across = in.quarterTurn().times(blunt);
    Point tip = in.times(wide * 0.35);
    Point handle = in.times(shape.reach() * 0.95);
    List<Point> tool = new ArrayList<>();
    tool.add(handle.plus(across));
    tool.add(tip.plus(across));
    tool.add(tip.minus(in.times(blunt)).plus(across.times(0.4)));
    tool.add(tip.minus(in.times(blunt)).minus(across.times(0.4)));
    tool.add(tip.minus(across));
    tool.add(handle.minus(across));
    turned.mark(Path.polyline(tool), bench.label("point_turner"));
    return List.of(bench.plan("sewn", sewn), bench.plan("turned", turned));
  }

  /**
   * The geometry of a corner whose tip is the origin: the cloth lies to the left of one seam and
   * below the other.
   *
   * @param ways from the tip along both seams
   * @param outs from both seams to their raw edges, of length 1
   * @param out the way out of the corner
   * @param wide the allowance
   * @param reach how far each seam is shown
   * @param left how far from the tip it is cut
   */
  private record Shape(
      List<Point> ways, List<Point> outs, Point out, double wide, double reach, double left) {
    static Shape of(double angle, double wide, double left) {
      double inside = StrictMath.toRadians(angle);
      double sin = StrictMath.sin(inside);
      double cos = StrictMath.cos(inside);
      Point corner = at((1 + cos) / sin, -1);
      return new Shape(
          List.of(at(-1, 0), at(-cos, sin)),
          List.of(at(0, -1), at(sin, cos)),
          corner.unit(),
          wide,
          wide * 4.5,
          left);
    }

    Point far(int side) {
      return ways.get(side).times(reach);
    }

    /** Where the raw edge leaves the picture. */
    Point end(int side) {
      return far(side).plus(outs.get(side).times(wide));
    }

    /** Where the cut meets a raw edge. */
    Point cut(int side) {
      Point start = outs.get(side).times(wide);
      Point way = ways.get(side);
      double along = (left - start.dot(out)) / way.dot(out);
      return start.plus(way.times(along));
    }

    /** Where the raw edges meet. */
    Point corner() {
      return out.times(wide / out.dot(outs.get(0)));
    }

    Rim trimmed() {
      return Rim.from(end(0).x(), end(0).y())
          .edge(cut(0))
          .edge(cut(1))
          .edge(end(1))
          .on(end(1).plus(far(0)).minus(outs.get(1).times(wide)))
          .torn();
    }

    Rim turned() {
      return Rim.from(far(0).x(), far(0).y()).edge(TIP).edge(far(1)).on(far(1).plus(far(0))).torn();
    }

    /** A point of an allowance where it lies when that is folded in. */
    Point folded(int side, Point point) {
      Point out = outs.get(side);
      return point.minus(out.times(2 * point.dot(out)));
    }
  }
}
