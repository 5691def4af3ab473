package org.lapmark.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Finds places inside a shape on paper for boxes of lettering. */
final class LabelFit {
  private static final int STEPS = 12;
  private static final double INNER_TOLERANCE = 0.1;

  private final Geometry shape;
  private final PreparedGeometry prepared;
  private final Point centroid;
  private Point middle;
  private List<Point> grid;

  /**
   * Prepares a shape.
   *
   * @param shape a polygon, or several where a shape is cut by the end of a row
   */
  LabelFit(Geometry shape) {
    this.shape = shape;
    this.prepared = PreparedGeometryFactory.prepare(shape);
    this.centroid = new Point(shape.getCentroid().getX(), shape.getCentroid().getY());
  }

  /** The point that is farthest inside. */
  Point middle() {
    if (middle == null) {
      Coordinate inner = MaximumInscribedCircle.getCenter(shape, INNER_TOLERANCE).getCoordinate();
      middle = new Point(inner.x, inner.y);
    }
    return middle;
  }

  /** Points all over the shape's box, those near the middle first. */
  private List<Point> grid() {
    if (grid == null) {
      Envelope box = shape.getEnvelopeInternal();
      grid = new ArrayList<>();
      for (int i = 1; i < STEPS; i++) {
        for (int k = 1; k < STEPS; k++) {
          grid.add(
              new Point(
                  box.getMinX() + box.getWidth() * i / STEPS,
                  box.getMinY() + box.getHeight() * k / STEPS));
        }
      }
      Point near = middle();
      grid.sort(Comparator.comparingDouble(point -> point.distance(near)));
    }
    return grid;
  }

  /** A centre at which a box lies wholly inside the shape. */
  Optional<Point> place(double width, double height) {
    Envelope all = shape.getEnvelopeInternal();
    if (width > all.getWidth() || height > all.getHeight()) {
      return Optional.empty();
    }
    // The middle takes long to find, and most labels have room around the centroid.
    if (isInside(centroid, width, height)) {
      return Optional.of(centroid);
    }
    if (isInside(middle(), width, height)) {
      return Optional.of(middle());
    }
    return grid().stream().filter(centre -> isInside(centre, width, height)).findFirst();
  }

  private boolean isInside(Point centre, double width, double height) {
    Box box = Board.box(centre, width, height, 0);
    Envelope envelope = new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
    return shape.getEnvelopeInternal().contains(envelope)
        && prepared.contains(shape.getFactory().toGeometry(envelope));
  }
}
