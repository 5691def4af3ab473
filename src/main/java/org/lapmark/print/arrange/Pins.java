package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.packing.Island;
import org.lapmark.packing.Placement;
import org.lapmark.packing.Shape;
import org.lapmark.packing.TileGrid;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Which shapes can stay where an earlier arrangement had them. */
public final class Pins {
  /** What rounding may take from the gap, as a share of it. */
  private static final double ROUNDING = 0.98;

  private static final double SLACK = 1e-6;

  private Pins() {}

  /**
   * The places of the test square and of the pieces, in the order of the shapes: nothing for one
   * that is new, that reaches beyond its island, or that lies nearer than the gap to one with a
   * lesser number; nor for the square where it lies on lines.
   */
  static List<Optional<Placement>> of(
      List<Piece> pieces,
      List<Shape> shapes,
      Arranged earlier,
      TileGrid grid,
      double gap,
      SquareInside inside) {
    List<Optional<Placement>> pins = new ArrayList<>();
    pins.add(Optional.empty());
    List<Polygon> kept = new ArrayList<>();
    List<Integer> islands = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Placement placement = earlier.pieces().get(pieces.get(i).number());
      Optional<Polygon> polygon =
          placement == null
              ? Optional.empty()
              : fitting(shapes.get(i + 1).outline(), placement, earlier, grid);
      for (int k = 0; polygon.isPresent() && k < kept.size(); k++) {
        if (islands.get(k) == placement.island()
            && kept.get(k).isWithinDistance(polygon.get(), gap * ROUNDING)) {
          polygon = Optional.empty();
        }
      }
      if (polygon.isEmpty()) {
        pins.add(Optional.empty());
      } else {
        pins.add(Optional.of(placement));
        kept.add(polygon.get());
        islands.add(placement.island());
      }
    }
    Placement square = earlier.square();
    Optional<Polygon> outline = fitting(shapes.get(0).outline(), square, earlier, grid);
    boolean stays =
        outline.isPresent()
            && (isApart(outline.get(), square, kept, islands, gap)
                || inside.isInside(earlier.side(), square, pins.subList(1, pins.size())));
    pins.set(0, stays ? Optional.of(square) : Optional.empty());
    return pins;
  }

  private static boolean isApart(
      Polygon square, Placement placement, List<Polygon> kept, List<Integer> islands, double gap) {
    for (int k = 0; k < kept.size(); k++) {
      if (islands.get(k) == placement.island()
          && kept.get(k).isWithinDistance(square, gap * ROUNDING)) {
        return false;
      }
    }
    return true;
  }

  /** A shape where it was, if it is inside its island there. */
  private static Optional<Polygon> fitting(
      Polygon outline, Placement placement, Arranged earlier, TileGrid grid) {
    Polygon polygon = placed(outline, placement.map());
    return inside(polygon, earlier.islands().get(placement.island()), grid)
        ? Optional.of(polygon)
        : Optional.empty();
  }

  static Polygon placed(Polygon outline, Affine map) {
    Point origin = map.apply(new Point(0, 0));
    return (Polygon)
        new AffineTransformation(map.a(), map.c(), origin.x(), map.b(), map.d(), origin.y())
            .transform(outline);
  }

  private static boolean inside(Polygon polygon, Island island, TileGrid grid) {
    Envelope box = polygon.getEnvelopeInternal();
    double right = (island.columns() - 1) * grid.stepX() + grid.width() - grid.edge();
    double bottom = (island.rows() - 1) * grid.stepY() + grid.height() - grid.edge();
    return box.getMinX() >= grid.edge() - SLACK
        && box.getMinY() >= grid.edge() - SLACK
        && box.getMaxX() <= right + SLACK
        && box.getMaxY() <= bottom + SLACK;
  }
}
