package org.lapmark.figure.ink;

import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/** A side of what is drawn. */
public enum Beside {
  /** Over it. */
  ABOVE(0, -1),
  /** Under it. */
  BELOW(0, 1),
  /** At the reader's left hand. */
  LEFT(-1, 0),
  /** At the reader's right hand. */
  RIGHT(1, 0);

  private final Point outward;

  Beside(double x, double y) {
    this.outward = new Point(x, y);
  }

  /**
   * The direction away from what is drawn.
   *
   * @return a direction of length 1 on paper
   */
  public Point outward() {
    return outward;
  }

  /**
   * Whether what stands there is read along a level line.
   *
   * @return true above and below
   */
  public boolean isLevel() {
    return outward.x() == 0;
  }

  /** Whether coordinates grow smaller that way. */
  boolean isBack() {
    return outward.x() + outward.y() < 0;
  }

  /**
   * How far a box reaches that way beyond a point.
   *
   * @param box the box
   * @param point the point
   * @return the distance in the box's unit, below 0 for a point beyond it
   */
  public double reach(Box box, Point point) {
    return switch (this) {
      case ABOVE -> point.y() - box.minY();
      case BELOW -> box.maxY() - point.y();
      case LEFT -> point.x() - box.minX();
      case RIGHT -> box.maxX() - point.x();
    };
  }
}
