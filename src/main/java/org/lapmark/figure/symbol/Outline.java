package org.lapmark.figure.symbol;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A shape that is drawn from place to place. */
final class Outline {
  /** How far the control points of a quarter of a circle lie from its ends, in radii. */
  private static final double ROUND = 0.5522847498;

  private final List<Curve> curves = new ArrayList<>();
  private final Point start;
  private Point at;

  private Outline(Point start) {
    this.start = start;
    this.at = start;
  }

  static Outline from(double x, double y) {
    return new Outline(new Point(x, y));
  }

  Outline to(double x, double y) {
    Point next = new Point(x, y);
    if (next.distance(at) > 1e-9) {
      curves.add(new Line(at, next));
      at = next;
    }
    return this;
  }

  /** A quarter of an ellipse that sets out towards a corner of its box. */
  Outline round(double cornerX, double cornerY, double x, double y) {
    Point corner = new Point(cornerX, cornerY);
    Point next = new Point(x, y);
    if (next.distance(at) > 1e-9) {
      curves.add(new Cubic(at, at.towards(corner, ROUND), next.towards(corner, ROUND), next));
      at = next;
    }
    return this;
  }

  Path open() {
    return new Path(curves);
  }

  Path closed() {
    return to(start.x(), start.y()).open();
  }

  static Path line(double x, double y, double toX, double toY) {
    return from(x, y).to(toX, toY).open();
  }

  static Path circle(double x, double y, double radius) {
    return ellipse(new Box(x - radius, y - radius, x + radius, y + radius));
  }

  static Path ellipse(Box box) {
    Point middle = box.centre();
    return from(box.minX(), middle.y())
        .round(box.minX(), box.minY(), middle.x(), box.minY())
        .round(box.maxX(), box.minY(), box.maxX(), middle.y())
        .round(box.maxX(), box.maxY(), middle.x(), box.maxY())
        .round(box.minX(), box.maxY(), box.minX(), middle.y())
        .closed();
  }

  /** A box with round corners. */
  static Path rounded(Box box, double radius) {
    double r = Math.min(radius, Math.min(box.width(), box.height()) / 2);
    return from(box.minX(), box.minY() + r)
        .round(box.minX(), box.minY(), box.minX() + r, box.minY())
        .to(box.maxX() - r, box.minY())
        .round(box.maxX(), box.minY(), box.maxX(), box.minY() + r)
        .to(box.maxX(), box.maxY() - r)
        .round(box.maxX(), box.maxY(), box.maxX() - r, box.maxY())
        .to(box.minX() + r, box.maxY())
        .round(box.minX(), box.maxY(), box.minX(), box.maxY() - r)
        .closed();
  }

  /** A box about the y axis. */
  static Box about(double width, double from, double to) {
    return new Box(-width / 2, from, width / 2, to);
  }
}
