package org.lapmark.panel.derivation;

import org.lapmark.geometry.Box;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;

/** Where the grainline of a derived panel has room. */
final class GrainRoom {
  /** A grainline shorter than this, in millimetres, is drawn anew where there is more room. */
  private static final double SHORT_GRAIN = 40;

  /** A grainline shows a direction: chords this near to the outline, in millimetres, will do. */
  private static final double CHORD = 1e-3;

  private static final int RAYS = 15;

  private GrainRoom() {}

  /**
   * A grainline of the same direction inside an outline: itself, or as much of it as lies inside,
   * or one where there is more room.
   */
  static Mark.Grainline grainline(Mark.Grainline grain, Path outline) {
    Inside inside = new Inside(Path.polyline(outline.flattened(CHORD)), 0);
    Line own = inside.longest(grain.from(), grain.to()).orElse(null);
    double length = grain.from().distance(grain.to());
    if (own != null && own.length() >= length - 2 * ClippedMarks.MARGIN
        || isAlong(outline, grain)) {
      return grain;
    }
    if (own != null && own.length() >= Math.min(SHORT_GRAIN, length / 2)) {
      return between(own, 0.05);
    }
    Point along = grain.to().minus(grain.from()).unit();
    Point aside = along.quarterTurn();
    Box box = outline.bounds();
    Point middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    double reach = box.width() + box.height();
    Line best = null;
    for (int i = 0; i < RAYS; i++) {
      // From the middle outwards, so that the middle is taken where several are alike.
      int step = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
      Point at = middle.plus(aside.times(reach / 2 * step / (RAYS / 2 + 1)));
      Line here =
          inside.longest(at.minus(along.times(reach)), at.plus(along.times(reach))).orElse(null);
      if (here != null && (best == null || here.length() > 1.02 * best.length())) {
        best = here;
      }
    }
    return best == null ? grain : between(best, 0.15);
  }

  /** Whether a grainline lies on the outline, as one on a fold does. */
  private static boolean isAlong(Path outline, Mark.Grainline grain) {
    return outline.distance(grain.from()) <= ClippedMarks.MARGIN
        && outline.distance(grain.to()) <= ClippedMarks.MARGIN
        && outline.distance(grain.from().towards(grain.to(), 0.5)) <= ClippedMarks.MARGIN;
  }

  private static Mark.Grainline between(Line line, double margin) {
    return new Mark.Grainline(
        line.start().towards(line.end(), margin), line.end().towards(line.start(), margin));
  }
}
