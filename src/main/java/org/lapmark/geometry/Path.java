package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Curves joined end to start. Immutable. Consecutive curves meet within {@link #JOIN_TOLERANCE}.
 *
 * @param curves at least one curve, in order of travel
 */
public record Path(List<Curve> curves) {
  /** The greatest gap between the end of one curve and the start of the next, in millimetres. */
  public static final double JOIN_TOLERANCE = 1e-6;

  /** Lengths nearer than this to a join are the join's. */
  private static final double ROUNDING = 1e-9;

  /**
   * Copies the list and checks that the curves meet.
   *
   * @throws IllegalArgumentException when there is no curve or two of them don't meet
   */
  public Path {
    curves = List.copyOf(curves);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a path has at least one curve");
    }
    for (int i = 1; i < curves.size(); i++) {
      double gap = curves.get(i - 1).end().distance(curves.get(i).start());
      if (!(gap <= JOIN_TOLERANCE)) {
        throw new IllegalArgumentException(
            "curve " + i + " starts " + gap + " mm off the one before");
      }
    }
  }

  /**
   * A closed or open run of straight lines. Points that repeat the one before are left out.
   *
   * @param points at least two points
   * @return the path
   */
  public static Path polyline(List<Point> points) {
    List<Curve> lines = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      if (!points.get(i).equals(points.get(i - 1))) {
        lines.add(new Line(points.get(i - 1), points.get(i)));
      }
    }
    return new Path(lines);
  }

  /**
   * An upright rectangle, clockwise on paper from its top left corner.
   *
   * @param box the rectangle
   * @return a closed path of four lines
   */
  public static Path rectangle(Box box) {
    Point first = new Point(box.minX(), box.minY());
    return polyline(
        List.of(
            first,
            new Point(box.maxX(), box.minY()),
            new Point(box.maxX(), box.maxY()),
            new Point(box.minX(), box.maxY()),
            first));
  }

  /**
   * A full circle, clockwise on paper from its rightmost point, as arcs.
   *
   * @param centre the centre
   * @param radius the radius in millimetres
   * @return a closed path
   */
  public static Path circle(Point centre, double radius) {
    return new Path(
        List.of(
            Arc.ofCircle(centre, radius, 0, Math.PI),
            Arc.ofCircle(centre, radius, Math.PI, Math.PI)));
  }

  /**
   * Where it begins.
   *
   * @return the first curve's start
   */
  public Point start() {
    return curves.get(0).start();
  }

  /**
   * Where it ends.
   *
   * @return the last curve's end
   */
  public Point end() {
    return curves.get(curves.size() - 1).end();
  }

  /**
   * Whether the end meets the start.
   *
   * @return true for an outline
   */
  public boolean isClosed() {
    return start().distance(end()) <= JOIN_TOLERANCE;
  }

  /**
   * The arc length.
   *
   * @return millimetres
   */
  public double length() {
    double sum = 0;
    for (Curve curve : curves) {
      sum += curve.length();
    }
    return sum;
  }

  /** A curve of this path and a parameter on it. */
  private record Place(int curve, double parameter) {}

  /** At a join, the start of the later curve. */
  private Place place(double length) {
    double left = Math.max(0, length);
    for (int i = 0; i < curves.size(); i++) {
      Curve curve = curves.get(i);
      double own = curve.length();
      if (left < own - ROUNDING) {
        return new Place(i, left < ROUNDING ? 0 : curve.parameterAt(left));
      }
      if (i == curves.size() - 1) {
        return new Place(i, 1);
      }
      left = Math.max(0, left - own);
    }
    throw new IllegalStateException("a path has at least one curve");
  }

  /**
   * The point at an arc length from the start.
   *
   * @param length millimetres; clamped
   * @return the point
   */
  public Point atLength(double length) {
    Place place = place(length);
    return curves.get(place.curve).at(place.parameter);
  }

  /**
   * The unit tangent at an arc length from the start; at a corner, that of the curve that begins
   * there.
   *
   * @param length millimetres; clamped
   * @return a vector of length 1
   */
  public Point tangentAtLength(double length) {
    Place place = place(length);
    return curves.get(place.curve).tangent(place.parameter);
  }

  /**
   * The part between two arc lengths.
   *
   * @param from millimetres from the start
   * @param to millimetres from the start, above {@code from}
   * @return the part
   * @throws IllegalArgumentException when nothing lies between them
   */
  public Path part(double from, double to) {
    Place first = place(from);
    Place last = place(to);
    List<Curve> parts = new ArrayList<>();
    for (int i = first.curve; i <= last.curve; i++) {
      Curve curve = curves.get(i);
      double start = i == first.curve ? first.parameter : 0;
      double end = i == last.curve ? last.parameter : 1;
      // The join before the last curve belongs to the part, the curve without length doesn't.
      boolean atJoin = i > first.curve && i == last.curve && curve.lengthTo(end) <= ROUNDING;
      if (end > start && !atJoin) {
        parts.add(start == 0 && end == 1 ? curve : curve.part(start, end));
      }
    }
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a part ends after its start");
    }
    return new Path(parts);
  }

  /**
   * The arc length at the point of the path that is nearest to a point.
   *
   * @param point the point
   * @return millimetres from the start, within 1e-4
   */
  public double nearestLength(Point point) {
    double before = 0;
    double best = 0;
    double bestDistance = Double.POSITIVE_INFINITY;
    for (Curve curve : curves) {
      Box box = curve.bounds();
      double aside = Math.max(0, Math.max(box.minX() - point.x(), point.x() - box.maxX()));
      double above = Math.max(0, Math.max(box.minY() - point.y(), point.y() - box.maxY()));
      if (aside * aside + above * above < bestDistance * bestDistance) {
        double t = curve.nearest(point);
        double distance = curve.at(t).distance(point);
        if (distance < bestDistance - ROUNDING) {
          bestDistance = distance;
          best = before + curve.lengthTo(t);
        }
      }
      before += curve.length();
    }
    return best;
  }

  /**
   * The distance from a point to the path.
   *
   * @param point the point
   * @return millimetres, 0 or more, within 1e-7
   */
  public double distance(Point point) {
    double best = Double.POSITIVE_INFINITY;
    for (Curve curve : curves) {
      Box box = curve.bounds();
      double aside = Math.max(0, Math.max(box.minX() - point.x(), point.x() - box.maxX()));
      double above = Math.max(0, Math.max(box.minY() - point.y(), point.y() - box.maxY()));
      if (aside * aside + above * above < best * best) {
        best = Math.min(best, curve.at(curve.nearest(point)).distance(point));
      }
    }
    return best;
  }

  /**
   * How often a closed path goes round a point, clockwise on paper counted positive.
   *
   * @param point a point off the path
   * @return the winding number
   */
  public int windingNumber(Point point) {
    return Winding.number(curves, point);
  }

  /**
   * Whether a point lies inside a closed path, by the rule that a winding number other than 0 is
   * inside. Of points on the path itself some are inside and some are not.
   *
   * @param point the point
   * @return true when it does
   */
  public boolean encloses(Point point) {
    return windingNumber(point) != 0;
  }

  /**
   * Where the path crosses or touches itself, judged on chords within 0.001 mm of it. Ends that
   * meet their neighbours don't count, unless the path turns back on itself there.
   *
   * @return a point of it that is crossed, the first one in order of travel
   */
  public Optional<Point> selfCrossing() {
    return SelfCrossing.first(this);
  }

  /**
   * The same path travelled backwards.
   *
   * @return the reversed path
   */
  public Path reversed() {
    List<Curve> backwards = new ArrayList<>();
    for (int i = curves.size() - 1; i >= 0; i--) {
      backwards.add(curves.get(i).reversed());
    }
    return new Path(backwards);
  }

  /**
   * The image under an affine map.
   *
   * @param map the map
   * @return the image
   */
  public Path transformed(Affine map) {
    List<Curve> images = new ArrayList<>();
    for (Curve curve : curves) {
      images.add(curve.transformed(map));
    }
    return new Path(images);
  }

  /**
   * This path and then another that starts at its end.
   *
   * @param next the other
   * @return both as one path
   * @throws IllegalArgumentException when they don't meet
   */
  public Path then(Path next) {
    List<Curve> both = new ArrayList<>(curves);
    both.addAll(next.curves);
    return new Path(both);
  }

  /**
   * The tight upright box around it.
   *
   * @return the box
   */
  public Box bounds() {
    Box box = curves.get(0).bounds();
    for (Curve curve : curves) {
      box = box.union(curve.bounds());
    }
    return box;
  }

  /**
   * The enclosed area of a closed path, exact for lines, arcs and cubics (Green's theorem):
   * positive when it runs clockwise on paper (y down).
   *
   * @return square millimetres, signed
   */
  public double signedArea() {
    return Area.signed(curves);
  }

  /**
   * Roughly how much a closed path encloses, however often it crosses itself: the two halves of a
   * figure of eight add up here, and make up for each other in {@link #signedArea()}.
   *
   * @return square millimetres, 0 or more; a path there and back again has 0
   */
  public double enclosedArea() {
    return Area.enclosed(this);
  }

  /**
   * Points on the path whose chords stay within a distance of it, start and end included; a closed
   * path repeats its start at the end.
   *
   * @param tolerance the greatest distance between chord and curve in millimetres
   * @return the points in order
   */
  public List<Point> flattened(double tolerance) {
    List<Point> points = new ArrayList<>();
    points.add(start());
    for (Curve curve : curves) {
      points.addAll(curve.flattened(tolerance));
    }
    if (isClosed()) {
      points.set(points.size() - 1, start());
    }
    return points;
  }
}
