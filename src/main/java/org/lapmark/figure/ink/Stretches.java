package org.lapmark.figure.ink;

import java.util.List;
import org.lapmark.geometry.Point;

/** Drawn stretches as numbers: which of them a leader crosses is asked often. */
final class Stretches {
  /** What a leader points at isn't crossed by it, in millimetres. */
  private static final double POINTED_AT = 0.3;

  private final double[] ends;

  Stretches(List<Canvas.Stretch> all) {
    this.ends = new double[4 * all.size()];
    for (int i = 0; i < all.size(); i++) {
      Point from = all.get(i).from();
      Point to = all.get(i).to();
      ends[4 * i] = from.x();
      ends[4 * i + 1] = from.y();
      ends[4 * i + 2] = to.x();
      ends[4 * i + 3] = to.y();
    }
  }

  /** How many stretches a leader crosses, without those that it ends at. */
  int crossed(Point start, Point anchor) {
    double fromX = start.x();
    double fromY = start.y();
    double toX = anchor.x();
    double toY = anchor.y();
    double left = Math.min(fromX, toX);
    double right = Math.max(fromX, toX);
    double top = Math.min(fromY, toY);
    double bottom = Math.max(fromY, toY);
    int crossed = 0;
    for (int i = 0; i < ends.length; i += 4) {
      boolean apart =
          ends[i] < left && ends[i + 2] < left
              || ends[i] > right && ends[i + 2] > right
              || ends[i + 1] < top && ends[i + 3] < top
              || ends[i + 1] > bottom && ends[i + 3] > bottom;
      if (!apart
          && crosses(ends[i], ends[i + 1], ends[i + 2], ends[i + 3], fromX, fromY, toX, toY)) {
        crossed++;
      }
    }
    return crossed;
  }

  private static boolean crosses(
      double ax,
      double ay,
      double bx,
      double by,
      double fromX,
      double fromY,
      double toX,
      double toY) {
    return Polygons.side(fromX, fromY, toX, toY, ax, ay)
                * Polygons.side(fromX, fromY, toX, toY, bx, by)
            < 0
        && Polygons.side(ax, ay, bx, by, fromX, fromY) * Polygons.side(ax, ay, bx, by, toX, toY) < 0
        && Polygons.distance(toX, toY, ax, ay, bx, by) > POINTED_AT;
  }
}
