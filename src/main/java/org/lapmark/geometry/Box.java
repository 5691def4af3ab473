package org.lapmark.geometry;

/**
 * An upright rectangle, in millimetres, x right and y down.
 *
 * @param minX left
 * @param minY top
 * @param maxX right
 * @param maxY bottom
 */
public record Box(double minX, double minY, double maxX, double maxY) {
  /**
   * A box by its top left corner and size.
   *
   * @param x left
   * @param y top
   * @param width width
   * @param height height
   * @return the box
   */
  public static Box at(double x, double y, double width, double height) {
    return new Box(x, y, x + width, y + height);
  }

  /**
   * The width.
   *
   * @return millimetres
   */
  public double width() {
    return maxX - minX;
  }

  /**
   * The height.
   *
   * @return millimetres
   */
  public double height() {
    return maxY - minY;
  }

  /**
   * The middle.
   *
   * @return the centre point
   */
  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  /**
   * The smallest box around this and another.
   *
   * @param other the other box
   * @return the union's box
   */
  public Box union(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /**
   * This box with a margin around it.
   *
   * @param margin millimetres on each side; negative shrinks
   * @return the grown box
   */
  public Box expanded(double margin) {
    return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }

  /**
   * This box moved.
   *
   * @param by the vector
   * @return the moved box
   */
  public Box moved(Point by) {
    return new Box(minX + by.x(), minY + by.y(), maxX + by.x(), maxY + by.y());
  }

  /**
   * Whether two boxes have inner points in common.
   *
   * @param other the other box
   * @return true when they overlap by more than an edge
   */
  public boolean overlaps(Box other) {
    return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
  }

  /**
   * How far a point lies outside.
   *
   * @param point the point
   * @return millimetres, 0 for a point inside or on an edge
   */
  public double distance(Point point) {
    double aside = Math.max(0, Math.max(minX - point.x(), point.x() - maxX));
    double above = Math.max(0, Math.max(minY - point.y(), point.y() - maxY));
    return Math.sqrt(aside * aside + above * above);
  }

  /**
   * Whether another box lies inside, edges included.
   *
   * @param other the other box
   * @return true when no point of it lies outside
   */
  public boolean contains(Box other) {
    return minX <= other.minX && minY <= other.minY && maxX >= other.maxX && maxY >= other.maxY;
  }

  /**
   * Whether a point lies inside, edges included.
   *
   * @param point the point
   * @return true when it does
   */
  public boolean contains(Point point) {
    return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
  }
}
