package org.lapmark.print.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.panel.cutting.PieceShape;
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
public record PieceArt(
    Piece piece, List<Stroke> strokes, List<Point> outline, Polygon polygon, Box bounds) {
  /** How closely a cutting line is followed where only room is at stake, in millimetres. */
  private static final double CHORD = 0.05;

  /** How far the sign of a fold stands off it. */
  private static final double SIGN_AWAY = 7;

  private static final double ARROW = 3.5;
  private static final double ARROW_HALF = 1.3;

  /**
   * A line.
   *
   * @param path where it runs
   * @param role its style role
   * @param layering the layers that it is drawn on
   */
  public record Stroke(Path path, String role, Layering layering) {
    /** A line on no layer. */
    public Stroke(Path path, String role) {
      this(path, role, Layering.NONE);
    }
  }

  public static PieceArt of(PlacedPiece placed) {
    return of(placed, true);
  }

  /** A piece that is cut all round: also along edges that lie on a fold. */
  public static PieceArt whole(PlacedPiece placed) {
    return of(placed, false);
  }

  private static PieceArt of(PlacedPiece placed, boolean folded) {
    Affine map = placed.placement();
    if (placed.piece().half().isPresent()) {
      return of(placed.piece(), placed.piece().half().orElseThrow(), map);
    }
    PieceShape shape = placed.piece().shape();
    List<Stroke> strokes = new ArrayList<>();
    // The cutting line comes last, so that it is drawn over the others where they meet.
    for (Edge edge : shape.panel().edges()) {
      if (shape.allowances().getOrDefault(edge.name(), 0.0) > 0) {
        MarkArt.stitching(shape.panel(), edge)
            .forEach(path -> strokes.add(new Stroke(path.transformed(map), "stitching-line")));
      }
    }
    for (Mark mark : shape.panel().marks()) {
      strokes.addAll(MarkArt.strokes(shape.panel(), mark, map));
    }
    shape.notches().forEach(notch -> strokes.add(new Stroke(notch.transformed(map), "notch")));
    Path cutting = shape.cuttingLine().path().transformed(map);
    border(shape, folded, map, strokes);
    List<Point> outline = cutting.flattened(CHORD);
    return new PieceArt(placed.piece(), strokes, outline, polygon(outline), cutting.bounds());
  }

  /** The cutting line, which leaves out edges that lie on a fold. */
  private static void border(PieceShape shape, boolean folded, Affine map, List<Stroke> strokes) {
    List<CuttingLine.Span> spans = new ArrayList<>(shape.cuttingLine().spans());
    if (!folded || spans.stream().noneMatch(span -> shape.isFold(span.edge()))) {
      strokes.add(new Stroke(shape.cuttingLine().path().transformed(map), "cutting-line"));
      return;
    }
    // Begins where a fold has ended, so that what is cut between folds is one line.
    for (int i = 0; i < spans.size() && !endsFold(shape, spans); i++) {
      Collections.rotate(spans, -1);
    }
    List<Stroke> cutting = new ArrayList<>();
    List<Curve> run = new ArrayList<>();
    for (int i = 0; i < spans.size(); i++) {
      run.addAll(spans.get(i).path().transformed(map).curves());
      boolean fold = shape.isFold(spans.get(i).edge());
      boolean last = i == spans.size() - 1;
      if (last || fold || shape.isFold(spans.get(i + 1).edge())) {
        Path path = new Path(run);
        run = new ArrayList<>();
        if (!fold) {
          cutting.add(new Stroke(path, "cutting-line"));
          continue;
        }
        strokes.add(new Stroke(path, "on-fold"));
        if (path.start().distance(path.end()) > path.length() - CHORD) {
          // The piece lies on the right of its edges.
          foldSign(new Line(path.end(), path.start()))
              .forEach(part -> strokes.add(new Stroke(part, "on-fold-sign")));
        }
      }
    }
    strokes.addAll(cutting);
  }

  private static boolean endsFold(PieceShape shape, List<CuttingLine.Span> spans) {
    return shape.isFold(spans.get(spans.size() - 1).edge()) && !shape.isFold(spans.get(0).edge());
  }

  private static PieceArt of(Piece piece, FoldedHalf half, Affine map) {
    List<Stroke> strokes = new ArrayList<>();
    half.stitching()
        .forEach(path -> strokes.add(new Stroke(path.transformed(map), "stitching-line")));
    for (Mark mark : half.marks()) {
      strokes.addAll(MarkArt.strokes(piece.shape().panel(), mark, map));
    }
    half.notches().forEach(notch -> strokes.add(new Stroke(notch.transformed(map), "notch")));
    Line fold = half.fold().transformed(map);
    strokes.add(new Stroke(new Path(List.of(fold)), "on-fold"));
    foldSign(fold).forEach(path -> strokes.add(new Stroke(path, "on-fold-sign")));
    Path cutting = half.cuttingLine().transformed(map);
    strokes.add(new Stroke(cutting, "cutting-line"));
    List<Point> outline = half.outline().transformed(map).flattened(CHORD);
    return new PieceArt(piece, strokes, outline, polygon(outline), cutting.bounds());
  }

  /** A line beside the fold with both ends turned to it, in the middle part of its length. */
  private static List<Path> foldSign(Line fold) {
    double length = fold.start().distance(fold.end());
    if (length < 3 * SIGN_AWAY) {
      return List.of();
    }
    Point along = fold.end().minus(fold.start()).unit();
    // The half lies on the left of its fold, as paper is seen.
    Point away = along.quarterTurn().times(-SIGN_AWAY);
    double reach = Math.min(60, length / 4);
    Point middle = fold.start().plus(fold.end()).times(0.5);
    Point first = middle.minus(along.times(reach));
    Point last = middle.plus(along.times(reach));
    return List.of(
        Path.polyline(List.of(first, first.plus(away), last.plus(away), last)),
        arrow(first.plus(away), first),
        arrow(last.plus(away), last));
  }

  /** The piece's shape for packing, in panel coordinates. */
  public static Polygon shape(Piece piece) {
    Path border = piece.half().map(FoldedHalf::outline).orElse(piece.shape().cuttingLine().path());
    return polygon(border.flattened(CHORD));
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

  static Path arrow(Point from, Point tip) {
    Point along = tip.minus(from).unit();
    Point across = along.quarterTurn().times(ARROW_HALF);
    Point back = tip.minus(along.times(ARROW));
    return Path.polyline(List.of(back.plus(across), tip, back.minus(across)));
  }
}
