package org.lapmark.packing;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * A shape turned by one of its angles.
 *
 * @param turn the turn about the origin
 * @param minX the left of the turned shape
 * @param minY its top
 * @param body its cells, from its top left corner
 * @param grown the cells of the shape grown by the gap, from the same corner
 * @param width the body's width in cells
 */
record Turned(Affine turn, double minX, double minY, Raster body, Raster grown, int width) {
  static Turned of(Polygon outline, double angle, double gap) {
    Affine turn = Affine.rotation(angle);
    Polygon turned = map(outline, turn);
    var box = turned.getEnvelopeInternal();
    Geometry wide = gap > 0 ? turned.buffer(gap) : turned;
    Raster body = Raster.of(turned, box.getMinX(), box.getMinY());
    Raster grown = Raster.of(wide, box.getMinX(), box.getMinY());
    return new Turned(turn, box.getMinX(), box.getMinY(), body, grown, body.width());
  }

  int height() {
    return body.height();
  }

  private static Polygon map(Polygon polygon, Affine map) {
    GeometryFactory factory = polygon.getFactory();
    List<LinearRing> holes = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      holes.add(ring(factory, polygon.getInteriorRingN(i).getCoordinates(), map));
    }
    return factory.createPolygon(
        ring(factory, polygon.getExteriorRing().getCoordinates(), map),
        holes.toArray(LinearRing[]::new));
  }

  private static LinearRing ring(GeometryFactory factory, Coordinate[] points, Affine map) {
    Coordinate[] moved = new Coordinate[points.length];
    for (int i = 0; i < points.length; i++) {
      Point point = map.apply(new Point(points[i].x, points[i].y));
      moved[i] = new Coordinate(point.x(), point.y());
    }
    moved[moved.length - 1] = moved[0].copy();
    return factory.createLinearRing(moved);
  }
}
