package org.lapmark.geometry;

import java.util.List;

/**
 * A straight piece.
 *
 * @param start the first point
 * @param end the last point
 */
public record Line(Point start, Point end) implements Curve {
  @Override
  public boolean isStraight() {
    return true;
  }

  @Override
  public double areaAround(Point origin) {
    return start.minus(origin).cross(end.minus(origin)) / 2;
  }

  @Override
  public double nearest(Point point) {
    Point along = end.minus(start);
    double square = along.dot(along);
    double t = square == 0 ? 0 : point.minus(start).dot(along) / square;
    return Math.max(0, Math.min(1, t));
  }

  @Override
  public Point at(double t) {
    return t == 1 ? end : start.towards(end, t);
  }

  /** {@inheritDoc} A line without length is taken to run to the right. */
  @Override
  public Point tangent(double t) {
    Point along = end.minus(start).unit();
    return along.x() == 0 && along.y() == 0 ? new Point(1, 0) : along;
  }

  @Override
  public Point derivative(double t) {
    return end.minus(start);
  }

  @Override
  public Point secondDerivative(double t) {
    return new Point(0, 0);
  }

  @Override
  public double length() {
    return start.distance(end);
  }

  @Override
  public double lengthTo(double t) {
    return t * length();
  }

  @Override
  public double parameterAt(double length) {
    double total = length();
    return total == 0 ? 0 : Math.max(0, Math.min(1, length / total));
  }

  @Override
  public Line part(double from, double to) {
    return new Line(at(from), at(to));
  }

  @Override
  public Line reversed() {
    return new Line(end, start);
  }

  @Override
  public Line transformed(Affine map) {
    return new Line(map.apply(start), map.apply(end));
  }

  @Override
  public Box bounds() {
    return new Box(
        Math.min(start.x(), end.x()),
        Math.min(start.y(), end.y()),
        Math.max(start.x(), end.x()),
        Math.max(start.y(), end.y()));
  }

  @Override
  public double[] turns(Point direction) {
    return new double[0];
  }

  @Override
  public double greatestBend() {
    return 0;
  }

  @Override
  public int chords(double tolerance) {
    return 1;
  }

  @Override
  public List<Point> flattened(double tolerance) {
    return List.of(end);
  }
}
