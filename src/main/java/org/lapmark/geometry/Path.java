package org.lapmark.geometry;

import java.util.List;

/**
 * Curves joined end to start. Immutable. Consecutive curves meet within {@link #JOIN_TOLERANCE}.
 *
 * @param curves at least one curve, in order of travel
 */
public record Path(List<Curve> curves) {
  /** The greatest gap between the end of one curve and the start of the next, in millimetres. */
  public static final double JOIN_TOLERANCE = 1e-6;

  /** Copies the list and checks that the curves meet. */
  public Path {
    curves = List.copyOf(curves);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a path has at least one curve");
    }
  }

  /**
   * A closed or open run of straight lines.
   *
   * @param points at least two points
   * @return the path
   */
  public static Path polyline(List<Point> points) {
    throw new UnsupportedOperationException();
  }

  /**
   * An upright rectangle, clockwise on paper from its top left corner.
   *
   * @param box the rectangle
   * @return a closed path of four lines
   */
  public static Path rectangle(Box box) {
    throw new UnsupportedOperationException();
  }

  /**
   * A full circle, clockwise on paper from its rightmost point, as arcs.
   *
   * @param centre the centre
   * @param radius the radius in millimetres
   * @return a closed path
   */
  public static Path circle(Point centre, double radius) {
    throw new UnsupportedOperationException();
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
    throw new UnsupportedOperationException();
  }

  /**
   * The point at an arc length from the start.
   *
   * @param length millimetres; clamped
   * @return the point
   */
  public Point atLength(double length) {
    throw new UnsupportedOperationException();
  }

  /**
   * The unit tangent at an arc length from the start; at a corner, that of the curve that begins
   * there.
   *
   * @param length millimetres; clamped
   * @return a vector of length 1
   */
  public Point tangentAtLength(double length) {
    throw new UnsupportedOperationException();
  }

  /**
   * The part between two arc lengths.
   *
   * @param from millimetres from the start
   * @param to millimetres from the start, above {@code from}
   * @return the part
   */
  public Path part(double from, double to) {
    throw new UnsupportedOperationException();
  }

  /**
   * The arc length at the point of the path that is nearest to a point.
   *
   * @param point the point
   * @return millimetres from the start, within 1e-4
   */
  public double nearestLength(Point point) {
    throw new UnsupportedOperationException();
  }

  /**
   * The same path travelled backwards.
   *
   * @return the reversed path
   */
  public Path reversed() {
    throw new UnsupportedOperationException();
  }

  /**
   * The image under an affine map.
   *
   * @param map the map
   * @return the image
   */
  public Path transformed(Affine map) {
    throw new UnsupportedOperationException();
  }

  /**
   * This path and then another that starts at its end.
   *
   * @param next the other
   * @return both as one path
   * @throws IllegalArgumentException when they don't meet
   */
  public Path then(Path next) {
    throw new UnsupportedOperationException();
  }

  /**
   * The tight upright box around it.
   *
   * @return the box
   */
  public Box bounds() {
    throw new UnsupportedOperationException();
  }

  /**
   * The enclosed area of a closed path, exact for lines, arcs and cubics (Green's theorem):
   * positive when it runs clockwise on paper (y down).
   *
   * @return square millimetres, signed
   */
  public double signedArea() {
    throw new UnsupportedOperationException();
  }

  /**
   * Points on the path whose chords stay within a distance of it, start and end included; a closed
   * path repeats its start at the end.
   *
   * @param tolerance the greatest distance between chord and curve in millimetres
   * @return the points in order
   */
  public List<Point> flattened(double tolerance) {
    throw new UnsupportedOperationException();
  }
}
