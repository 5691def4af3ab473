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
  private final Point middle;
  private final List<Point> centres = new ArrayList<>();

  /**
   * Prepares a shape.
   *
   * @param shape a polygon, or several where a shape is cut by the end of a row
   */
  LabelFit(Geometry shape) {
    this.shape = shape;
    this.prepared = PreparedGeometryFactory.prepare(shape);
    Coordinate inner = MaximumInscribedCircle.getCenter(shape, INNER_TOLERANCE).getCoordinate();
    this.middle = new Point(inner.x, inner.y);
    centres.add(new Point(shape.getCentroid().getX(), shape.getCentroid().getY()));
    centres.add(middle);
    Envelope box = shape.getEnvelopeInternal();
    List<Point> grid = new ArrayList<>();
    for (int i = 1; i < STEPS; i++) {
      for (int k = 1; k < STEPS; k++) {
        grid.add(
            new Point(
                box.getMinX() + box.getWidth() * i / STEPS,
                box.getMinY() + box.getHeight() * k / STEPS));
      }
    }
    grid.sort(Comparator.comparingDouble(point -> point.distance(middle)));
    centres.addAll(grid);
  }

  /** The point that is farthest inside. */
  Point middle() {
    return middle;
  }

  /** A centre at which a box lies wholly inside the shape. */
  Optional<Point> place(double width, double height) {
    Envelope all = shape.getEnvelopeInternal();
    if (width > all.getWidth() || height > all.getHeight()) {
      return Optional.empty();
    }
    return centres.stream()
        .filter(
            centre -> {
              Box box = Board.box(centre, width, height, 0);
              Envelope envelope = new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
              return all.contains(envelope)
                  && prepared.contains(shape.getFactory().toGeometry(envelope));
            })
        .findFirst();
  }
}
