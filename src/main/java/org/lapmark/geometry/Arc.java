package org.lapmark.geometry;

import java.util.List;

/**
 * An arc of a circle or an ellipse.
 *
 * @param centre the ellipse's centre
 * @param radiusX the first semi-axis in millimetres
 * @param radiusY the second semi-axis in millimetres
 * @param rotation the angle from the x axis to the first semi-axis, in radians, clockwise on paper
 * @param startAngle the eccentric angle of the start, in radians from the first semi-axis
 * @param sweep how far the arc goes on from there, in radians; positive is clockwise on paper; at
 *     most a full turn either way
 */
public record Arc(
    Point centre, double radiusX, double radiusY, double rotation, double startAngle, double sweep)
    implements Curve {
  @Override
  public Point start() {
    return at(0);
  }

  @Override
  public Point end() {
    return at(1);
  }

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
  public Arc part(double from, double to) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Arc reversed() {
    throw new UnsupportedOperationException();
  }

  @Override
  public Arc transformed(Affine map) {
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
