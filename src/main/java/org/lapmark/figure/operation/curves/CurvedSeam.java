package org.lapmark.figure.operation.curves;

import static org.lapmark.figure.operation.plan.Plan.arc;
import static org.lapmark.figure.operation.plan.Plan.at;
import static org.lapmark.figure.operation.plan.Plan.line;
import static org.lapmark.figure.operation.plan.Plan.round;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
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

/** A curved seam whose allowances are cut into. */
abstract class CurvedSeam extends Craft {
  private static final Point MIDDLE = at(0, 0);

  private final boolean outward;

  CurvedSeam(String word, boolean outward) {
    super(
        word,
        Named.CURVE,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE, Amounts.RADIUS),
        List.of(),
        List.of(Amounts.WITH, Amounts.SPACING, Amounts.DISTANCE));
    this.outward = outward;
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double wide = bench.allowance(4);
    double radius = bench.radius(outward, wide * 1.6, wide * 4.5);
    double left = bench.length(Amounts.DISTANCE, 0.5, wide - 1, 2);
    double apart = bench.length(Amounts.SPACING, 4, 100, outward ? wide * 1.2 : wide * 1.1);
    bench.say("depth", bench.printed(wide - left));
    Material cloth = bench.cloth();
    Material with = bench.with();
    Curve curve = Curve.of(outward, radius, wide, apart, left);
    Plan cut = new Plan();
    Rim raw = curve.sheet(wide, -3 * wide);
    cut.sheet(with, Side.RIGHT, raw, at(0, -2), with.name())
        .sheet(cloth, Side.WRONG, raw)
        .before(Path.polyline(curve.arc(0)));
    String words =
        bench.label(
            outward ? "notches" : "clips",
            "left",
            bench.printed(left),
            "spacing",
            bench.printed(apart));
    List<Double> places = curve.places();
    for (int i = 0; i < places.size(); i++) {
      double place = places.get(i);
      String label = i == places.size() / 2 ? words : "";
      if (outward) {
        double half = curve.surplus() / 2;
        cut.cut(
            line(curve.at(place - half, wide), curve.at(place, left), curve.at(place + half, wide)),
            label);
      } else {
        cut.cut(line(curve.at(place, wide), curve.at(place, left)), label);
      }
    }
    Plan turned = new Plan();
    turned.sheet(cloth, Side.RIGHT, curve.sheet(0, -3 * wide));
    double from = curve.first;
    double half = curve.surplus() / 2;
    for (int i = 0; i <= places.size(); i++) {
      boolean last = i == places.size();
      double to = last ? curve.last : places.get(i);
      double start = !outward && i > 0 ? from + half : from;
      double end = !outward && !last ? to - half : to;
      turned.under(Path.polyline(Plan.arc(MIDDLE, curve.radius(-wide), start, end)), "");
      if (!last) {
        turned.under(line(curve.at(to, -left), curve.at(outward ? to : end, -wide)), "");
        if (!outward) {
          turned.under(
              line(curve.at(to, -left), curve.at(to + half, -wide)),
              i == places.size() / 2 ? bench.label("spread") : "");
        } else if (i == places.size() / 2) {
          turned.label(bench.label("closed"), curve.at(to, -(wide + left) / 2));
        }
      }
      from = to;
    }
    return List.of(bench.plan("cut", cut), bench.plan("turned", turned));
  }

  /**
   * A stretch of a curve about the origin; what is outside of the cloth counts above 0.
   *
   * @param outward whether the cloth lies inside of it
   * @param seam its radius
   * @param wide the allowance
   * @param apart how far cuts are apart
   * @param left how far from the seam they end
   * @param first the angle where it begins
   * @param last the angle where it ends
   */
  private record Curve(
      boolean outward,
      double seam,
      double wide,
      double apart,
      double left,
      double first,
      double last) {
    static Curve of(boolean outward, double seam, double wide, double apart, double left) {
      double half = Math.min(58, StrictMath.toDegrees(4.5 * wide / seam));
      double middle = outward ? 270 : 90;
      return new Curve(outward, seam, wide, apart, left, middle - half, middle + half);
    }

    double radius(double out) {
      return Math.max(0.01, outward ? seam + out : seam - out);
    }

    Point at(double angle, double out) {
      return round(MIDDLE, radius(out), angle);
    }

    List<Point> arc(double out) {
      return Plan.arc(MIDDLE, radius(out), first, last);
    }

    Rim sheet(double out, double in) {
      double inner = outward ? Math.max(in, -seam * 0.8) : in;
      List<Point> back = new ArrayList<>(arc(inner));
      Collections.reverse(back);
      Point start = at(first, out);
      return Rim.from(start.x(), start.y()).edge(arc(out)).on(at(last, inner)).on(back).torn();
    }

    List<Double> places() {
      double length = seam * StrictMath.toRadians(last - first);
      int count = (int) Math.max(1, Math.round(length / apart));
      List<Double> places = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        places.add(first + (last - first) * (i + 0.5) / count);
      }
      return places;
    }

    /** What each stretch of allowance is too long or too short when it is turned, in degrees. */
    double surplus() {
      double each = (last - first) / places().size();
      double most = 0.8 * each;
      return Math.min(most, each * 2 * wide / (outward ? seam + wide : seam + wide));
    }
  }
}
