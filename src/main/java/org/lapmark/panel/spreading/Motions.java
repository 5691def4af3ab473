package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;

/** How the parts move. */
final class Motions {
  private final Cuts all;
  private final List<Cut> cuts;
  private final List<Boolean> fixed;
  private final Affine first;

  Motions(Panel panel, Cuts cuts) {
    this.all = cuts;
    this.cuts = cuts.all();
    Point grain = null;
    for (Mark.Grainline line : panel.marks(Mark.Grainline.class)) {
      grain = line.from().towards(line.to(), 0.5);
    }
    List<Boolean> sides = grain == null ? all.sides(firstStretch()) : all.sides(grain);
    Affine before = Affine.IDENTITY;
    for (int i = 0; i < this.cuts.size() && grain != null; i++) {
      if (this.cuts.get(i).line().distance(grain) <= Cuts.SNAP) {
        sides = new ArrayList<>(sides);
        sides.set(i, true);
        before = motion(this.cuts.get(i), true, 0.5);
      }
    }
    this.fixed = List.copyOf(sides);
    this.first = before;
  }

  /** The middle of the stretch from the first edge's start to the first cut. */
  private double firstStretch() {
    double least = all.length();
    for (Cut cut : cuts) {
      for (double at : List.of(cut.from(), cut.to())) {
        if (at > 0) {
          least = Math.min(least, at);
        }
      }
    }
    return least / 2;
  }

  /** The motion of what lies at a place of the outline. */
  Affine at(double place) {
    return of(all.sides(place));
  }

  /** The motion of what lies at a point. */
  Affine at(Point point) {
    return of(all.sides(point));
  }

  /** The motion of the part that lies on these sides of the lines. */
  private Affine of(List<Boolean> sides) {
    List<Integer> between = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      if (!sides.get(i).equals(fixed.get(i))) {
        between.add(i);
      }
    }
    // From the part that stays to this one: what lies beyond a line shrinks from each to the
    // next.
    between.sort(Comparator.comparingDouble(i -> -beyond(cuts.get(i), sides.get(i))));
    Affine motion = first;
    for (int i : between) {
      motion = motion.after(motion(cuts.get(i), sides.get(i), 1));
    }
    return motion;
  }

  private double beyond(Cut cut, boolean after) {
    double between = all.clockwise(cut.from(), cut.to());
    return after ? between : all.length() - between;
  }

  /** How one side of a line moves against the other, or by a share of that. */
  private Affine motion(Cut cut, boolean after, double share) {
    Point along = cut.end().minus(cut.start());
    double open = (after ? 1 : -1) * cut.slash().open();
    if (cut.slash().hinge() == Slash.Hinge.NONE) {
      Point shift = along.unit().quarterTurn().times(-open * share);
      return Affine.translation(shift.x(), shift.y());
    }
    boolean atEnd = cut.slash().hinge() == Slash.Hinge.TO;
    Point pivot = atEnd ? cut.end() : cut.start();
    double angle = 2 * StrictMath.asin(open / (2 * along.norm())) * share * (atEnd ? 1 : -1);
    return Affine.translation(pivot.x(), pivot.y())
        .after(Affine.rotation(StrictMath.toDegrees(angle)))
        .after(Affine.translation(-pivot.x(), -pivot.y()));
  }
}
