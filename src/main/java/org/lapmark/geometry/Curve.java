package org.lapmark.geometry;

import java.util.List;

/**
 * A smooth piece of a path with a parameter from 0 to 1. A quadratic Bézier curve is held as the
 * cubic that equals it. Immutable; millimetres, x right, y down.
 */
public sealed interface Curve permits Line, Arc, Cubic {
  /**
   * Whether it is a straight line, which needs no approaching.
   *
   * @return true of lines only, whatever the others look like
   */
  default boolean isStraight() {
    return false;
  }

  /**
   * What it contributes to the area that a closed path encloses: that between it and a point.
   *
   * @param origin the point, the same for all curves of a path
   * @return square millimetres, positive where it goes round the point clockwise on paper (y down)
   */
  double areaAround(Point origin);

  /**
   * Where it begins.
   *
   * @return the point at parameter 0
   */
  Point start();

  /**
   * Where it ends.
   *
   * @return the point at parameter 1
   */
  Point end();

  /**
   * The point at a parameter.
   *
   * @param t 0 to 1
   * @return the point
   */
  Point at(double t);

  /**
   * The unit tangent in the direction of travel; where the derivative vanishes, its limit.
   *
   * @param t 0 to 1
   * @return a vector of length 1
   */
  Point tangent(double t);

  /**
   * The derivative by the parameter.
   *
   * @param t 0 to 1
   * @return millimetres per unit of the parameter; zero at a cusp
   */
  Point derivative(double t);

  /**
   * The second derivative by the parameter.
   *
   * @param t 0 to 1
   * @return millimetres per squared unit of the parameter
   */
  Point secondDerivative(double t);

  /**
   * The curvature: positive where the curve turns clockwise on paper.
   *
   * @param t 0 to 1
   * @return one over the radius in millimetres; infinite or NaN where the derivative vanishes
   */
  default double curvature(double t) {
    Point first = derivative(t);
    double speed = first.norm();
    return first.cross(secondDerivative(t)) / (speed * speed * speed);
  }

  /**
   * The parameter of the point of this curve that is nearest to a point.
   *
   * @param point the point
   * @return a parameter from 0 to 1, whose distance is the least one within 1e-7 mm
   */
  default double nearest(Point point) {
    return NearestPoint.parameter(this, point);
  }

  /**
   * The arc length.
   *
   * @return millimetres, within 1e-6
   */
  double length();

  /**
   * The arc length from the start to a parameter.
   *
   * @param t 0 to 1
   * @return millimetres, within 1e-6
   */
  double lengthTo(double t);

  /**
   * The parameter at an arc length from the start: the inverse of {@link #lengthTo}.
   *
   * @param length millimetres; clamped to the curve
   * @return a parameter from 0 to 1
   */
  double parameterAt(double length);

  /**
   * The part between two parameters, as a curve of the same kind.
   *
   * @param from start parameter
   * @param to end parameter, not below {@code from}
   * @return the part
   */
  Curve part(double from, double to);

  /**
   * The same curve travelled backwards.
   *
   * @return the reversed curve
   */
  Curve reversed();

  /**
   * The image under an affine map, exactly; an arc stays an arc of an ellipse.
   *
   * @param map the map
   * @return the image
   */
  Curve transformed(Affine map);

  /**
   * The tight upright box around it.
   *
   * @return the box
   */
  Box bounds();

  /**
   * The inner parameters at which the curve runs along a direction. Between two of them it moves to
   * one side of any line in that direction only.
   *
   * @param direction a vector other than zero
   * @return the parameters in order, none for a line
   */
  double[] turns(Point direction);

  /**
   * A bound of the second derivative: between two parameters the curve strays from its chord by at
   * most an eighth of the squared step times this.
   *
   * @return millimetres per squared unit of the parameter
   */
  double greatestBend();

  /**
   * How many chords of even steps in the parameter stay within a distance of it.
   *
   * @param tolerance the greatest distance between chord and curve in millimetres
   * @return 1 or more
   */
  int chords(double tolerance);

  /**
   * Points on the curve whose chords stay within a distance of it, the start left out, the end
   * included.
   *
   * @param tolerance the greatest distance between chord and curve in millimetres
   * @return the points in order
   */
  List<Point> flattened(double tolerance);
}
