package org.lapmark.geometry;

/**
 * A point, or a vector, in the plane.
 *
 * @param x millimetres to the right
 * @param y millimetres downwards
 */
public record Point(double x, double y) {
  /**
   * The sum of two vectors.
   *
   * @param other the other
   * @return this plus the other
   */
  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  /**
   * The difference of two points.
   *
   * @param other the other
   * @return the vector from the other to this
   */
  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  /**
   * A multiple.
   *
   * @param factor the factor
   * @return this scaled
   */
  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  /**
   * The scalar product.
   *
   * @param other the other vector
   * @return the product
   */
  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /**
   * The third component of the vector product; positive when the other vector lies clockwise of
   * this one as seen on paper (y runs down).
   *
   * @param other the other vector
   * @return the product
   */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  /**
   * The vector's length.
   *
   * @return the length in millimetres
   */
  public double norm() {
    return Math.sqrt(x * x + y * y);
  }

  /**
   * The distance to another point.
   *
   * @param other the other point
   * @return the distance in millimetres
   */
  public double distance(Point other) {
    double across = x - other.x;
    double down = y - other.y;
    return Math.sqrt(across * across + down * down);
  }

  /**
   * The vector of length 1 in this direction.
   *
   * @return the unit vector; the zero vector stays as it is
   */
  public Point unit() {
    double norm = norm();
    return norm == 0 ? this : new Point(x / norm, y / norm);
  }

  /**
   * This vector turned by a quarter clockwise on paper (y runs down): {@code (1, 0)} becomes {@code
   * (0, 1)}.
   *
   * @return the turned vector
   */
  public Point quarterTurn() {
    return new Point(-y, x);
  }

  /**
   * The point between this and another.
   *
   * @param other the other point
   * @param fraction 0 for this, 1 for the other
   * @return the point between
   */
  public Point towards(Point other, double fraction) {
    return new Point(x + (other.x - x) * fraction, y + (other.y - y) * fraction);
  }
}
