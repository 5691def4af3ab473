package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What lies between an outline and lines inside it.
 *
 * @param fills closed lines that can be filled; one with a hole runs in to it and back on itself
 * @param rims the closed lines round all of it, and round its holes
 */
public record Strips(List<Path> fills, List<Path> rims) {
  /** What is smaller, in square millimetres, is no strip. */
  private static final double LEAST = 0.01;

  /** Copies the lists. */
  public Strips {
    fills = List.copyOf(fills);
    rims = List.copyOf(rims);
  }

  static Strips between(Path outer, List<Path> inner) {
    GeometryFactory geometries = new GeometryFactory();
    Geometry left = Lines.polygon(outer, geometries);
    for (Path hole : inner) {
      left = OverlayNGRobust.overlay(left, Lines.polygon(hole, geometries), OverlayNG.DIFFERENCE);
    }
    List<Path> fills = new ArrayList<>();
    List<Path> rims = new ArrayList<>();
    for (int i = 0; i < left.getNumGeometries(); i++) {
      if (left.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > LEAST) {
        List<Point> round = points(polygon.getExteriorRing());
        rims.add(Path.polyline(round));
        for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
          List<Point> hole = points(polygon.getInteriorRingN(k));
          rims.add(Path.polyline(hole));
          round = bridged(round, hole);
        }
        fills.add(Path.polyline(round));
      }
    }
    return new Strips(fills, rims);
  }

  private static List<Point> points(LinearRing ring) {
    List<Point> points = new ArrayList<>();
    for (Coordinate at : ring.getCoordinates()) {
      points.add(new Point(at.x, at.y));
    }
    return points;
  }

  /** Round the outer line, over to the hole, round that the other way, and back. */
  private static List<Point> bridged(List<Point> outer, List<Point> hole) {
    Point from = outer.get(0);
    int nearest = 0;
    for (int i = 0; i < hole.size() - 1; i++) {
      if (hole.get(i).distance(from) < hole.get(nearest).distance(from)) {
        nearest = i;
      }
    }
    boolean against = Path.polyline(outer).signedArea() > 0 != Path.polyline(hole).signedArea() > 0;
    List<Point> all = new ArrayList<>(outer);
    int count = hole.size() - 1;
    for (int i = 0; i <= count; i++) {
      all.add(hole.get(Math.floorMod(nearest + (against ? i : -i), count)));
    }
    all.add(from);
    return all;
  }

  /** Whether a place lies on it. */
  public boolean has(Point place) {
    return rims.stream().filter(rim -> rim.encloses(place)).count() % 2 == 1;
  }
}
