package org.lapmark.lay;

import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;

/** How a panel may be turned so that its grainline runs along the cloth. */
final class Grain {
  private static final Affine HALF_TURN = Affine.rotation(180);
  private static final Affine QUARTER_TURN = Affine.rotation(90);
  private static final Affine THREE_QUARTERS = Affine.rotation(270);
  private static final Affine MIRROR = Affine.scaling(1, -1);

  private Grain() {}

  /** The direction along the grain that is up. Without a grainline it is the panel's own up. */
  static Point up(Panel panel) {
    return panel.marks(Mark.Grainline.class).stream()
        .findFirst()
        .map(Mark.Grainline::up)
        .orElse(new Point(0, -1));
  }

  /** The poses of a piece on a cloth; the tops of all pieces lie towards the cut end first. */
  static List<Affine> poses(Panel panel, Cloth cloth, boolean reversed) {
    Point up = cloth.hasGrain() ? up(panel) : new Point(0, -1);
    // Turns up to (-1, 0) without the rounding of an angle; 0.0 is added to make -0 a 0.
    Affine turn = new Affine(0.0 - up.x(), up.y() + 0.0, 0.0 - up.y(), 0.0 - up.x(), 0, 0);
    Affine first = reversed ? MIRROR.after(turn) : turn;
    if (cloth.oneWay()) {
      return List.of(first);
    }
    Affine half = HALF_TURN.after(first);
    return cloth.noGrain()
        ? List.of(first, QUARTER_TURN.after(first), half, THREE_QUARTERS.after(first))
        : List.of(first, half);
  }
}
