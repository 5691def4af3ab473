package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/** Where there is room in shapes, which are closed runs of points. */
public final class Polygons {
  private Polygons() {}

  /**
   * Whether a shape encloses a point, judged on chords.
   *
   * @param polygon a closed run of points
   * @param point the point
   * @return whether it lies inside
   */
  public static boolean inside(List<Point> polygon, Point point) {
    boolean inside = false;
    for (int i = 1; i < polygon.size(); i++) {
      Point a = polygon.get(i - 1);
      Point b = polygon.get(i);
      if (a.y() <= point.y() != b.y() <= point.y()
          && point.x() < a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /**
   * What a shape encloses, made for being asked often.
   *
   * @param polygon a closed run of points
   * @return whether a point lies inside, as {@link #inside} tells
   */
  public static Predicate<Point> region(List<Point> polygon) {
    return new Region(polygon);
  }

  /** Points well inside a shape and outside others that cover it, those in the open first. */
  static List<Point> spread(List<Point> shape, List<List<Point>> covers) {
    Box box = bounds(shape);
    Region inside = new Region(shape);
    List<Region> covering = covers.stream().map(Region::new).toList();
    List<Point> found = new ArrayList<>();
    for (double margin : new double[] {2.5, 1.1, 0.5}) {
      int columns = (int) Math.max(3, Math.min(44, box.width() / 1.4));
      int rows = (int) Math.max(3, Math.min(30, box.height() / 1.4));
      for (int i = 0; i < columns; i++) {
        for (int j = 0; j < rows; j++) {
          Point point =
              new Point(
                  box.minX() + box.width() * (i + 0.5) / columns,
                  box.minY() + box.height() * (j + 0.5) / rows);
          if (inside.test(point)
              && inside.isClear(point, margin)
              && isOutside(covering, point, margin)) {
            found.add(point);
          }
        }
      }
      if (!found.isEmpty()) {
        break;
      }
    }
    if (found.size() < 2) {
      return found;
    }
    Point centre = box.centre();
    Point middle = found.stream().min(Comparator.comparingDouble(centre::distance)).orElseThrow();
    List<Point> some = new ArrayList<>();
    some.add(middle);
    int count = Math.min(16, found.size());
    for (int i = 0; i < count; i++) {
      some.add(found.get((2 * i + 1) * found.size() / (2 * count)));
    }
    return some;
  }

  private static boolean isOutside(List<Region> covers, Point point, double margin) {
    for (Region cover : covers) {
      if (cover.test(point) || !cover.isClear(point, margin)) {
        return false;
      }
    }
    return true;
  }

  private static Box bounds(List<Point> points) {
    Box box = new Box(points.get(0).x(), points.get(0).y(), points.get(0).x(), points.get(0).y());
    for (Point point : points) {
      box = box.union(new Box(point.x(), point.y(), point.x(), point.y()));
    }
    return box;
  }

  /** From a point to the stretch between two others. */
  static double distance(Point p, Point a, Point b) {
    return distance(p.x(), p.y(), a.x(), a.y(), b.x(), b.y());
  }

  /** The same of plain numbers, for what is asked often. */
  static double distance(double x, double y, double ax, double ay, double bx, double by) {
    double across = bx - ax;
    double down = by - ay;
    double square = across * across + down * down;
    double t =
        square == 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * across + (y - ay) * down) / square));
    double offAcross = x - (ax + (bx - ax) * t);
    double offDown = y - (ay + (by - ay) * t);
    return Math.sqrt(offAcross * offAcross + offDown * offDown);
  }

  /** On which side of the line from one point to another a third lies. */
  static double side(Point a, Point b, Point p) {
    return side(a.x(), a.y(), b.x(), b.y(), p.x(), p.y());
  }

  /** The same of plain numbers. */
  static double side(double ax, double ay, double bx, double by, double x, double y) {
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  }

  /**
   * Whether a stretch has a point in a box.
   *
   * @param box the box
   * @param a one end
   * @param b the other
   * @return whether they meet
   */
  public static boolean crosses(Box box, Point a, Point b) {
    double from = 0;
    double to = 1;
    double[][] sides = {
      {b.x() - a.x(), box.minX() - a.x(), box.maxX() - a.x()},
      {b.y() - a.y(), box.minY() - a.y(), box.maxY() - a.y()}
    };
    for (double[] side : sides) {
      if (side[0] == 0) {
        if (side[1] > 0 || side[2] < 0) {
          return false;
        }
      } else {
        double near = side[1] / side[0];
        double far = side[2] / side[0];
        from = Math.max(from, Math.min(near, far));
        to = Math.min(to, Math.max(near, far));
      }
    }
    return from <= to;
  }
}
