package org.lapmark.packing.strip;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A shape in one of its poses, moved so that its box begins at the origin.
 *
 * @param map the pose and that move
 * @param outline the shape
 * @param area the shape's area, which is asked for too often to be worked out each time
 * @param wide the shape grown by the gap
 * @param body the columns of the shape
 * @param grown the columns of the grown shape
 * @param length how far it reaches along the strip
 * @param height how far it reaches across
 */
public record Pose(
    Affine map,
    Polygon outline,
    double area,
    Geometry wide,
    Columns body,
    Columns grown,
    double length,
    double height) {
  /** The chords of rounded corners lie inside them by 1 - cos(pi / 128), or 0.03 per cent. */
  private static final int QUADRANT = 32;

  static Pose of(Polygon shape, Affine linear, double gap, double column) {
    var box = mapped(shape, linear).getEnvelopeInternal();
    Affine map = Affine.translation(-box.getMinX(), -box.getMinY()).after(linear);
    Polygon outline = mapped(shape, map);
    Geometry wide = outline;
    if (gap > 0) {
      BufferParameters rounding = new BufferParameters(QUADRANT);
      rounding.setSimplifyFactor(1e-4);
      wide = BufferOp.bufferOp(outline, gap, rounding);
    }
    return new Pose(
        map,
        outline,
        outline.getArea(),
        wide,
        Columns.of(outline, column),
        Columns.of(wide, column),
        box.getWidth(),
        box.getHeight());
  }

  /** A polygon with its corners moved as a map says. */
  public static Polygon mapped(Polygon polygon, Affine map) {
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
