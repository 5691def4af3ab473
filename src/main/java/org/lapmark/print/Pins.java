package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.packing.Island;
import org.lapmark.packing.Placement;
import org.lapmark.packing.Shape;
import org.lapmark.packing.TileGrid;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Which shapes can stay where an earlier arrangement had them. */
final class Pins {
  /** What rounding may take from the gap, as a share of it. */
  private static final double ROUNDING = 0.98;

  private static final double SLACK = 1e-6;

  private Pins() {}

  /**
   * The places of the test square and of the pieces, in the order of the shapes: nothing for one
   * that is new, that reaches beyond its island, or that lies nearer than the gap to one with a
   * lesser number.
   */
  static List<Optional<Placement>> of(
      List<Piece> pieces, List<Shape> shapes, Arranged earlier, TileGrid grid, double gap) {
    List<Optional<Placement>> pins = new ArrayList<>();
    List<Polygon> kept = new ArrayList<>();
    List<Integer> islands = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      Placement placement =
          i == 0 ? earlier.square() : earlier.pieces().get(pieces.get(i - 1).number());
      Polygon polygon = null;
      if (placement != null) {
        polygon = placed(shapes.get(i).outline(), placement.map());
        if (!inside(polygon, earlier.islands().get(placement.island()), grid)) {
          polygon = null;
        }
      }
      for (int k = 0; polygon != null && k < kept.size(); k++) {
        if (islands.get(k) == placement.island()
            && kept.get(k).isWithinDistance(polygon, gap * ROUNDING)) {
          polygon = null;
        }
      }
      if (polygon == null) {
        pins.add(Optional.empty());
      } else {
        pins.add(Optional.of(placement));
        kept.add(polygon);
        islands.add(placement.island());
      }
    }
    return pins;
  }

  private static Polygon placed(Polygon outline, Affine map) {
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
