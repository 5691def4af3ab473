package org.lapmark.geometry;

import java.util.List;

/**
 * A cubic Bézier curve.
 *
 * @param start the first point
 * @param control1 the first control point
 * @param control2 the second control point
 * @param end the last point
 */
public record Cubic(Point start, Point control1, Point control2, Point end) implements Curve {
  @Override
  public Point at(double t) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Point tangent(double t) {
    throw new UnsupportedOperationException();
  }

  @Override
  public double length() {
    throw new UnsupportedOperationException();
  }

  @Override
  public double lengthTo(double t) {
    throw new UnsupportedOperationException();
  }

  @Override
  public double parameterAt(double length) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Cubic part(double from, double to) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Cubic reversed() {
    throw new UnsupportedOperationException();
  }

  @Override
  public Cubic transformed(Affine map) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Box bounds() {
    throw new UnsupportedOperationException();
  }

  @Override
  public List<Point> flattened(double tolerance) {
    throw new UnsupportedOperationException();
  }
}
