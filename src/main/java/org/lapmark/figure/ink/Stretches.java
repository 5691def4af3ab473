package org.lapmark.figure.ink;

import java.util.List;
import org.lapmark.geometry.Point;

/** Drawn stretches as numbers: which of them a leader crosses is asked often. */
final class Stretches {
  /** What a leader points at isn't crossed by it, in millimetres. */
  private static final double POINTED_AT = 0.3;

  private final List<Canvas.Stretch> all;
  private final double[] ends;

  Stretches(List<Canvas.Stretch> all) {
    this.all = all;
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
    double left = Math.min(start.x(), anchor.x());
    double right = Math.max(start.x(), anchor.x());
    double top = Math.min(start.y(), anchor.y());
    double bottom = Math.max(start.y(), anchor.y());
    int crossed = 0;
    for (int i = 0; i < ends.length; i += 4) {
      boolean apart =
          ends[i] < left && ends[i + 2] < left
              || ends[i] > right && ends[i + 2] > right
              || ends[i + 1] < top && ends[i + 3] < top
              || ends[i + 1] > bottom && ends[i + 3] > bottom;
      if (!apart && crosses(all.get(i / 4), start, anchor)) {
        crossed++;
      }
    }
    return crossed;
  }

  private static boolean crosses(Canvas.Stretch stretch, Point start, Point anchor) {
    return Polygons.side(start, anchor, stretch.from()) * Polygons.side(start, anchor, stretch.to())
            < 0
        && Polygons.side(stretch.from(), stretch.to(), start)
                * Polygons.side(stretch.from(), stretch.to(), anchor)
            < 0
        && Polygons.distance(anchor, stretch.from(), stretch.to()) > POINTED_AT;
  }
}
