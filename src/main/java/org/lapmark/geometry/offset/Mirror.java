package org.lapmark.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Parallel;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Mirrors what lies inside a side over the side's own line, which goes on straight beyond its ends.
 * Over a straight side the image is exact. Over a curved one every point is moved along the side's
 * normal through it, to the same distance on the other side, as cloth is turned over a curved edge;
 * such images are cubics within {@link Parallel#TOLERANCE} or so.
 */
final class Mirror {
  private static final double STEP = 1e-5;
  private static final int DEEPEST = 8;
  private static final int CHECKS = 5;

  private final Path side;
  private final double length;
  private final Point corner;
  private final Point tangent;
  private final boolean atEnd;
  private final double fold;
  private final boolean straight;

  /**
   * A mirror.
   *
   * @param side the side, clockwise on paper around its outline
   * @param atEnd whether its end is at stake, else its start
   * @param fold how far outside the side the second fold lies
   */
  Mirror(Path side, boolean atEnd, double fold) {
    this.side = side;
    this.length = side.length();
    this.corner = atEnd ? side.end() : side.start();
    List<Curve> curves = side.curves();
    this.tangent = atEnd ? curves.get(curves.size() - 1).tangent(1) : curves.get(0).tangent(0);
    this.atEnd = atEnd;
    this.fold = fold;
    this.straight =
        curves.stream()
            .allMatch(
                curve ->
                    curve.isStraight()
                        && Math.abs(curve.tangent(0).cross(tangent)) < 1e-12
                        && curve.tangent(0).dot(tangent) > 0);
  }

  private record Foot(Point at, Point out) {}

  private Foot foot(Point point) {
    double beyond = point.minus(corner).dot(tangent);
    if (straight || (atEnd ? beyond >= 0 : beyond <= 0)) {
      return new Foot(corner.plus(tangent.times(beyond)), Parallel.outwards(tangent));
    }
    double at = side.nearestLength(point);
    Point out = Parallel.outwards(side.tangentAtLength(Math.min(at, length * (1 - 1e-12))));
    return new Foot(side.atLength(at), out);
  }

  /** How far inside the side's line a point lies. */
  double depth(Point point) {
    Foot foot = foot(point);
    return -point.minus(foot.at).dot(foot.out);
  }

  /** The side's outer normal through a point. */
  Point outwards(Point point) {
    return foot(point).out;
  }

  private Point over(Point point, double level) {
    Foot foot = foot(point);
    double height = point.minus(foot.at).dot(foot.out);
    return point.plus(foot.out.times(2 * (level - height)));
  }

  /** The image of a curve over the side's line. */
  List<Curve> image(Curve curve) {
    return image(curve, 0);
  }

  /** The image of a curve over the second fold. */
  List<Curve> again(Curve curve) {
    return image(curve, fold);
  }

  private List<Curve> image(Curve curve, double level) {
    if (straight) {
      Point shift = over(corner, level).minus(corner);
      // A reflection's matrix from the direction of its line.
      double c = tangent.x() * tangent.x() - tangent.y() * tangent.y();
      double s = 2 * tangent.x() * tangent.y();
      Point to = corner.plus(shift);
      Affine map =
          new Affine(
              c,
              s,
              s,
              -c,
              to.x() - c * corner.x() - s * corner.y(),
              to.y() - s * corner.x() + c * corner.y());
      return List.of(curve.transformed(map));
    }
    List<Curve> fitted = new ArrayList<>();
    fit(curve, level, 0, 1, 0, fitted);
    return fitted;
  }

  private void fit(Curve curve, double level, double from, double to, int depth, List<Curve> all) {
    double third = (to - from) / 3;
    Point start = over(curve.at(from), level);
    Point end = over(curve.at(to), level);
    Cubic cubic =
        new Cubic(
            start,
            start.plus(slope(curve, level, from, to - from).times(third)),
            end.minus(slope(curve, level, to, from - to).times(third)),
            end);
    boolean strays = false;
    for (int i = 1; i <= CHECKS; i++) {
      double u = i / (CHECKS + 1.0);
      Point wanted = over(curve.at(from + (to - from) * u), level);
      strays |= cubic.at(u).distance(wanted) > Parallel.TOLERANCE;
    }
    if (strays && depth < DEEPEST) {
      double middle = (from + to) / 2;
      fit(curve, level, from, middle, depth + 1, all);
      fit(curve, level, middle, to, depth + 1, all);
    } else {
      all.add(cubic);
    }
  }

  /** The image's derivative, from two points inside the stretch. */
  private Point slope(Curve curve, double level, double t, double stretch) {
    double step = STEP * stretch;
    Point here = over(curve.at(t), level);
    Point next = over(curve.at(t + step), level);
    Point after = over(curve.at(t + 2 * step), level);
    return next.minus(here).times(4).minus(after.minus(here)).times(1 / (2 * step));
  }
}
