package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.PieceShape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * What is drawn of a piece at its place on the sheet, but for its lettering.
 *
 * @param piece the piece
 * @param strokes the lines, in sheet coordinates
 * @param outline points on the cutting line, closed
 * @param polygon the same as a polygon
 * @param bounds the box around the cutting line
 */
record PieceArt(
    Piece piece, List<Stroke> strokes, List<Point> outline, Polygon polygon, Box bounds) {
  /** How closely a cutting line is followed where only room is at stake, in millimetres. */
  private static final double CHORD = 0.05;

  private static final double ARROW = 3.5;
  private static final double ARROW_HALF = 1.3;
  private static final double DRILL_RADIUS = 1.5;
  private static final double DRILL_CROSS = 3;

  /**
   * A line.
   *
   * @param path where it runs
   * @param role its style role
   */
  record Stroke(Path path, String role) {}

  static PieceArt of(PlacedPiece placed) {
    Affine map = placed.placement();
    PieceShape shape = placed.piece().shape();
    List<Stroke> strokes = new ArrayList<>();
    // The cutting line comes last, so that it is drawn over the others where they meet.
    for (Edge edge : shape.panel().edges()) {
      if (shape.allowances().getOrDefault(edge.name(), 0.0) > 0) {
        strokes.add(new Stroke(edge.path().transformed(map), "stitching-line"));
      }
    }
    for (Mark mark : shape.panel().marks()) {
      marks(mark, map, strokes);
    }
    shape.notches().forEach(notch -> strokes.add(new Stroke(notch.transformed(map), "notch")));
    Path cutting = shape.cuttingLine().path().transformed(map);
    strokes.add(new Stroke(cutting, "cutting-line"));
    List<Point> outline = cutting.flattened(CHORD);
    return new PieceArt(placed.piece(), strokes, outline, polygon(outline), cutting.bounds());
  }

  /** The piece's shape for packing, in panel coordinates. */
  static Polygon shape(Piece piece) {
    return polygon(piece.shape().cuttingLine().path().flattened(CHORD));
  }

  private static Polygon polygon(List<Point> outline) {
    Coordinate[] points = new Coordinate[outline.size()];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(outline.get(i).x(), outline.get(i).y());
    }
    points[points.length - 1] = points[0].copy();
    Polygon polygon = new GeometryFactory().createPolygon(points);
    if (polygon.isValid()) {
      return polygon;
    }
    // An outline that touches itself: its hull is larger, so that nothing overlaps.
    Geometry hull = polygon.convexHull();
    return hull instanceof Polygon whole ? whole : (Polygon) hull.buffer(CHORD);
  }

  private static void marks(Mark mark, Affine map, List<Stroke> strokes) {
    if (mark instanceof Mark.Grainline grain) {
      Point from = map.apply(grain.from());
      Point to = map.apply(grain.to());
      strokes.add(new Stroke(new Path(List.of(new Line(from, to))), "grainline"));
      strokes.add(new Stroke(arrow(to, from), "grainline"));
      strokes.add(new Stroke(arrow(from, to), "grainline"));
    } else if (mark instanceof Mark.Placement placement) {
      strokes.add(new Stroke(placement.path().transformed(map), "placement-line"));
    } else if (mark instanceof Mark.FoldLine fold) {
      strokes.add(new Stroke(fold.path().transformed(map), "fold-line"));
    } else if (mark instanceof Mark.DrillPoint drill) {
      Point at = map.apply(drill.point());
      strokes.add(new Stroke(Path.circle(at, DRILL_RADIUS), "drill-point"));
      for (Point arm : List.of(new Point(DRILL_CROSS, 0), new Point(0, DRILL_CROSS))) {
        strokes.add(
            new Stroke(new Path(List.of(new Line(at.minus(arm), at.plus(arm)))), "drill-point"));
      }
    }
  }

  private static Path arrow(Point from, Point tip) {
    Point along = tip.minus(from).unit();
    Point across = along.quarterTurn().times(ARROW_HALF);
    Point back = tip.minus(along.times(ARROW));
    return Path.polyline(List.of(back.plus(across), tip, back.minus(across)));
  }
}
