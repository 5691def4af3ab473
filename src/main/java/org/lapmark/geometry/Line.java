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
  public Line part(double from, double to) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Line reversed() {
    throw new UnsupportedOperationException();
  }

  @Override
  public Line transformed(Affine map) {
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
