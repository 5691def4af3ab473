package org.lapmark.geometry;

/**
 * An affine map in SVG's order: {@code x' = a x + c y + e}, {@code y' = b x + d y + f}.
 *
 * @param a x to x
 * @param b x to y
 * @param c y to x
 * @param d y to y
 * @param e shift of x in millimetres
 * @param f shift of y in millimetres
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
  /** The map that changes nothing. */
  public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  /**
   * A shift.
   *
   * @param x to the right
   * @param y downwards
   * @return the map
   */
  public static Affine translation(double x, double y) {
    return new Affine(1, 0, 0, 1, x, y);
  }

  /**
   * A scaling from the origin.
   *
   * @param x factor along x
   * @param y factor along y
   * @return the map
   */
  public static Affine scaling(double x, double y) {
    return new Affine(x, 0, 0, y, 0, 0);
  }

  /**
   * A turn about the origin, clockwise on paper (y runs down). Multiples of a quarter turn are
   * exact.
   *
   * @param degrees the angle
   * @return the map
   */
  public static Affine rotation(double degrees) {
    double turn = degrees - 360 * Math.floor(degrees / 360);
    if (turn == 0) {
      return IDENTITY;
    }
    if (turn == 90) {
      return new Affine(0, 1, -1, 0, 0, 0);
    }
    if (turn == 180) {
      return new Affine(-1, 0, 0, -1, 0, 0);
    }
    if (turn == 270) {
      return new Affine(0, -1, 1, 0, 0, 0);
    }
    double radians = StrictMath.toRadians(turn);
    double cos = StrictMath.cos(radians);
    double sin = StrictMath.sin(radians);
    return new Affine(cos, sin, -sin, cos, 0, 0);
  }

  /**
   * This map after another one: {@code this(first(p))}.
   *
   * @param first the map that is applied first
   * @return the composed map
   */
  public Affine after(Affine first) {
    return new Affine(
        a * first.a + c * first.b,
        b * first.a + d * first.b,
        a * first.c + c * first.d,
        b * first.c + d * first.d,
        a * first.e + c * first.f + e,
        b * first.e + d * first.f + f);
  }

  /**
   * The image of a point.
   *
   * @param point the point
   * @return its image
   */
  public Point apply(Point point) {
    return new Point(a * point.x() + c * point.y() + e, b * point.x() + d * point.y() + f);
  }

  /**
   * The image of a vector: the shift left out.
   *
   * @param vector the vector
   * @return its image
   */
  public Point applyVector(Point vector) {
    return new Point(a * vector.x() + c * vector.y(), b * vector.x() + d * vector.y());
  }

  /**
   * The factor by which areas grow; negative when the map mirrors.
   *
   * @return the determinant
   */
  public double determinant() {
    return a * d - b * c;
  }

  /**
   * The turn about a point that brings one direction to another.
   *
   * @param centre the point that stays
   * @param from a point in the first direction from it
   * @param to a point in the other
   * @return the map
   */
  public static Affine turn(Point centre, Point from, Point to) {
    Point u = from.minus(centre).unit();
    Point v = to.minus(centre).unit();
    double c = u.dot(v);
    double s = u.cross(v);
    double x = centre.x() - c * centre.x() + s * centre.y();
    double y = centre.y() - s * centre.x() - c * centre.y();
    return new Affine(c, s, -s, c, x, y);
  }

  /**
   * The mirror image over a straight line.
   *
   * @param at a point of the line
   * @param direction its direction, other than zero
   * @return the map
   */
  public static Affine mirror(Point at, Point direction) {
    Point along = direction.unit();
    double c = along.x() * along.x() - along.y() * along.y();
    double s = 2 * along.x() * along.y();
    return new Affine(
        c, s, s, -c, at.x() - c * at.x() - s * at.y(), at.y() - s * at.x() + c * at.y());
  }
}
