package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;

/**
 * A line redrawn after it was cut into stretches and each stretch was moved. Where two stretches
 * were moved apart, or over each other, a smooth curve replaces as much of both as it needs.
 */
final class Redrawing {
  /** Gaps below this are none. */
  static final double NOTHING = 1e-7;

  private final List<Curve> curves = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();
  private double drawn;

  /** Part of the old line and the part of the new one that stands for it, by arc lengths. */
  private record Stretch(double from, double cut, double to, double newFrom, double newTo) {}

  /** A stretch of the old line, moved. */
  void keep(Path line, double from, double to, Affine moved) {
    if (to - from <= LineTurns.STRAIGHT) {
      return;
    }
    double before = drawn;
    for (Curve curve : line.part(from, to).curves()) {
      add(curve.transformed(moved));
    }
    stretches.add(new Stretch(from, to, to, before, drawn));
  }

  /**
   * A curve in place of a stretch that was cut.
   *
   * @param from where the stretch begins
   * @param cut where it was cut
   * @param to where it ends
   */
  void replace(double from, double cut, double to, Curve curve) {
    double before = drawn;
    add(curve);
    stretches.add(new Stretch(from, cut, to, before, drawn));
  }

  private void add(Curve curve) {
    drawn += curve.length();
    int last = curves.size() - 1;
    if (last >= 0 && curve instanceof Line line && curves.get(last) instanceof Line before) {
      Line both = new Line(before.start(), line.end());
      if (LineTurns.isStraight(new Path(List.of(before, line)))) {
        curves.set(last, both);
        return;
      }
    }
    curves.add(curve);
  }

  /** The line as redrawn. */
  Path path() {
    return new Path(curves);
  }

  /**
   * Where a place of the old line has come to.
   *
   * @param at its arc length on the old line
   * @return its arc length on the new one
   */
  double moved(double at) {
    for (Stretch stretch : stretches) {
      if (at <= stretch.to || stretch == stretches.get(stretches.size() - 1)) {
        double within =
            at <= stretch.cut
                ? stretch.newFrom + Math.max(0, at - stretch.from)
                : stretch.newTo - Math.max(0, stretch.to - at);
        return Math.max(stretch.newFrom, Math.min(stretch.newTo, within));
      }
    }
    return at;
  }
}
