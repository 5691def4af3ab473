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
  static final double ROUNDING = 1e-9;

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

  /**
   * A place on a path.
   *
   * @param curve the index of a curve
   * @param parameter 0 to 1 on it
   */
  public record Place(int curve, double parameter) implements Comparable<Place> {
    /** In order of travel; the end of a curve comes before the start of the next. */
    @Override
    public int compareTo(Place other) {
      int order = Integer.compare(curve, other.curve);
      return order == 0 ? Double.compare(parameter, other.parameter) : order;
    }
  }

  /**
   * The place at an arc length from the start: at a join, the start of the later curve.
   *
   * @param length millimetres; clamped
   * @return the place
   */
  public Place place(double length) {
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
    return at(place(length));
  }

  /**
   * The point at a place.
   *
   * @param place a place of this path
   * @return the point
   */
  public Point at(Place place) {
    return curves.get(place.curve).at(place.parameter);
  }

  /**
   * The arc length from the start to a place.
   *
   * @param place a place of this path
   * @return millimetres, within 1e-6 a curve
   */
  public double lengthTo(Place place) {
    double before = 0;
    for (Curve curve : curves.subList(0, place.curve)) {
      before += curve.length();
    }
    return before + curves.get(place.curve).lengthTo(place.parameter);
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
    return PathPart.ofLengths(this, from, to);
  }

  /**
   * The part between two places, whose curves are parts of this path's.
   *
   * @param from where it begins
   * @param to where it ends
   * @return the part, unless nothing lies between them
   */
  public Optional<Path> between(Place from, Place to) {
    return PathPart.between(this, from, to);
  }

  /**
   * The part of a closed path from one arc length to another, over its start where that lies
   * between them.
   *
   * @param from millimetres from the start
   * @param to millimetres from the start; the same place makes a whole round
   * @return the part; less than {@link #JOIN_TOLERANCE} on one side of the start is left out
   */
  public Path around(double from, double to) {
    return PathPart.around(this, from, to);
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
      if (curve.bounds().distance(point) < bestDistance) {
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
      if (curve.bounds().distance(point) < best) {
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
    return new Path(curves.stream().map(curve -> curve.transformed(map)).toList());
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
    return curves.stream().map(Curve::bounds).reduce(Box::union).orElseThrow();
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
