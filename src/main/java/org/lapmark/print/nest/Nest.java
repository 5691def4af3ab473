package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.print.piece.PieceArt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The pieces of all sizes that need paper, stacked.
 *
 * <p>The sizes of a piece lie with their grainlines parallel, a point of each on the same place: a
 * corner of the panel, the origin of its drawing, or a corner, the middle or the middle of a side
 * of the box around it. Of the points that give an outline at most 3 % larger than the smallest,
 * that one is taken which leaves the least to draw and the fewest lines too close to each other to
 * be told apart: lines that fall on each other count once, lines that run closer than 1.5 mm four
 * times.
 *
 * @param patterns the pattern in each size
 * @param pieces the pieces by number
 */
public record Nest(List<GradedPattern> patterns, List<NestedPiece> pieces) {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double ROOM = 1.03;
  private static final double CLOSE = 1.5;
  private static final double CLOSE_COUNTS = 3;

  /** Outlines that are known to a twentieth of a millimetre and closer than this are one. */
  private static final double ONE = 0.11;

  private static final int SAMPLES = 240;
  private static final double LEAST = 1e-3;

  /** Copies the lists. */
  public Nest {
    patterns = List.copyOf(patterns);
    pieces = List.copyOf(pieces);
  }

  public static Nest of(List<GradedPattern> patterns) {
    Map<Integer, List<NestedPiece.Member>> byNumber = new TreeMap<>();
    for (int size = 0; size < patterns.size(); size++) {
      for (Piece piece : patterns.get(size).pieces()) {
        if (piece.statedSize().isEmpty()) {
          byNumber
              .computeIfAbsent(piece.number(), unused -> new ArrayList<>())
              .add(new NestedPiece.Member(size, piece, Affine.IDENTITY));
        }
      }
    }
    List<NestedPiece> pieces = new ArrayList<>();
    byNumber.values().forEach(members -> pieces.add(stacked(members)));
    return new Nest(patterns, pieces);
  }

  /** What sizes are called, in their order. */
  public List<String> sizes() {
    return patterns.stream().map(pattern -> pattern.variant().size()).toList();
  }

  private static NestedPiece stacked(List<NestedPiece.Member> unstacked) {
    List<Piece> pieces = unstacked.stream().map(NestedPiece.Member::piece).toList();
    List<Affine> turns = turns(pieces);
    List<Polygon> outlines = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      outlines.add(moved(PieceArt.shape(pieces.get(i)), turns.get(i)));
    }
    List<Point> shifts = shifts(pieces, turns, outlines);
    List<NestedPiece.Member> members = new ArrayList<>();
    List<Polygon> placed = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Point shift = shifts.get(i);
      Affine move = Affine.translation(shift.x(), shift.y());
      members.add(
          new NestedPiece.Member(unstacked.get(i).size(), pieces.get(i), move.after(turns.get(i))));
      placed.add(moved(outlines.get(i), move));
    }
    Geometry core = placed.get(0);
    for (Polygon outline : placed) {
      core = OverlayNGRobust.overlay(core, outline, OverlayNG.INTERSECTION);
    }
    Piece first = pieces.get(0);
    Path border = path(around(placed));
    Piece extent =
        new Piece(
            first.number(),
            first.name(),
            new PieceShape(
                new Panel(first.shape().panel().name(), List.of(), Map.of(), List.of()),
                Map.of(),
                new CuttingLine(List.of(new CuttingLine.Span("", border))),
                List.of()),
            first.cuts(),
            Optional.empty());
    return new NestedPiece(
        members, extent, core instanceof Polygon one && !one.isEmpty() ? List.of(one) : List.of());
  }

  /** Turns each size so that its grainline runs as the first's; none turns by a rounding error. */
  private static List<Affine> turns(List<Piece> pieces) {
    List<Affine> turns = new ArrayList<>();
    Optional<Point> first = grain(pieces.get(0));
    for (Piece piece : pieces) {
      Optional<Point> grain = grain(piece);
      double angle = 0;
      if (first.isPresent() && grain.isPresent()) {
        angle =
            StrictMath.toDegrees(
                StrictMath.atan2(grain.get().cross(first.get()), grain.get().dot(first.get())));
      }
      turns.add(Math.abs(angle) < 1e-7 ? Affine.IDENTITY : Affine.rotation(angle));
    }
    return turns;
  }

  private static Optional<Point> grain(Piece piece) {
    List<Mark> marks = piece.half().map(FoldedHalf::marks).orElse(piece.shape().panel().marks());
    return marks.stream()
        .filter(Mark.Grainline.class::isInstance)
        .map(Mark.Grainline.class::cast)
        .map(mark -> mark.to().minus(mark.from()))
        .findFirst();
  }

  /** Where each size's point lies that could be put on those of the others; by the first's. */
  private static List<List<Point>> anchors(
      List<Piece> pieces, List<Affine> turns, List<Polygon> outlines) {
    List<List<Point>> anchors = new ArrayList<>();
    anchors.add(turns.stream().map(turn -> turn.apply(new Point(0, 0))).toList());
    for (Edge edge : pieces.get(0).shape().panel().edges()) {
      List<Point> corners = new ArrayList<>();
      for (int i = 0; i < pieces.size(); i++) {
        Affine turn = turns.get(i);
        pieces.get(i).shape().panel().edges().stream()
            .filter(other -> other.from().equals(edge.from()))
            .findFirst()
            .ifPresent(other -> corners.add(turn.apply(other.path().start())));
      }
      if (corners.size() == pieces.size()) {
        anchors.add(corners);
      }
    }
    List<Box> boxes = outlines.stream().map(Nest::box).toList();
    for (double x : new double[] {0.5, 0, 1}) {
      for (double y : new double[] {0.5, 0, 1}) {
        anchors.add(
            boxes.stream()
                .map(box -> new Point(box.minX() + x * box.width(), box.minY() + y * box.height()))
                .toList());
      }
    }
    return anchors;
  }

  private static Box box(Geometry geometry) {
    var envelope = geometry.getEnvelopeInternal();
    return new Box(envelope.getMinX(), envelope.getMinY(), envelope.getMaxX(), envelope.getMaxY());
  }

  private static List<Point> shifts(
      List<Piece> pieces, List<Affine> turns, List<Polygon> outlines) {
    List<List<Point>> choices = new ArrayList<>();
    List<Double> areas = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (List<Point> anchors : anchors(pieces, turns, outlines)) {
      List<Point> shifts = anchors.stream().map(anchor -> anchors.get(0).minus(anchor)).toList();
      if (choices.stream().anyMatch(other -> same(other, shifts))) {
        continue;
      }
      List<Polygon> placed = new ArrayList<>();
      for (int i = 0; i < outlines.size(); i++) {
        Point shift = shifts.get(i);
        placed.add(moved(outlines.get(i), Affine.translation(shift.x(), shift.y())));
      }
      double area = around(placed).getArea();
      choices.add(shifts);
      areas.add(area);
      least = Math.min(least, area);
    }
    List<IndexedFacetDistance> lines =
        outlines.stream().map(one -> new IndexedFacetDistance(one.getExteriorRing())).toList();
    List<Point> best = choices.get(0);
    double bestCost = Double.POSITIVE_INFINITY;
    for (int i = 0; i < choices.size(); i++) {
      if (areas.get(i) <= ROOM * least) {
        double cost = cost(outlines, lines, choices.get(i));
        // A choice that is no better by a millimetre keeps the place of an earlier one.
        if (cost < bestCost - 1) {
          best = choices.get(i);
          bestCost = cost;
        }
      }
    }
    return best;
  }

  private static boolean same(List<Point> a, List<Point> b) {
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).distance(b.get(i)) > 1e-6) {
        return false;
      }
    }
    return true;
  }

  /** The length of line to draw, more where it runs close to that of the next size. */
  private static double cost(
      List<Polygon> outlines, List<IndexedFacetDistance> lines, List<Point> shifts) {
    double cost = outlines.get(0).getLength();
    for (int i = 1; i < outlines.size(); i++) {
      Point shift = shifts.get(i).minus(shifts.get(i - 1));
      Coordinate[] ring = outlines.get(i).getExteriorRing().getCoordinates();
      double length = outlines.get(i).getLength();
      double step = length / SAMPLES;
      double due = step / 2;
      for (int k = 1; k < ring.length; k++) {
        double side = ring[k - 1].distance(ring[k]);
        while (due <= side) {
          double share = due / side;
          Coordinate point =
              new Coordinate(
                  ring[k - 1].x + share * (ring[k].x - ring[k - 1].x) + shift.x(),
                  ring[k - 1].y + share * (ring[k].y - ring[k - 1].y) + shift.y());
          double distance = lines.get(i - 1).distance(FACTORY.createPoint(point));
          cost += distance < ONE ? 0 : distance < CLOSE ? (1 + CLOSE_COUNTS) * step : step;
          due += step;
        }
        due -= side;
      }
    }
    return cost;
  }

  private static Polygon around(List<Polygon> outlines) {
    Geometry all = OverlayNGRobust.union(new ArrayList<Geometry>(outlines));
    return all instanceof Polygon one ? FACTORY.createPolygon(one.getExteriorRing()) : hull(all);
  }

  private static Polygon hull(Geometry all) {
    return (Polygon) all.convexHull();
  }

  private static Path path(Polygon polygon) {
    List<Point> points = new ArrayList<>();
    for (Coordinate coordinate : polygon.getExteriorRing().getCoordinates()) {
      Point point = new Point(coordinate.x, coordinate.y);
      if (points.isEmpty() || points.get(points.size() - 1).distance(point) > LEAST) {
        points.add(point);
      }
    }
    if (points.get(points.size() - 1).distance(points.get(0)) <= LEAST) {
      points.remove(points.size() - 1);
    }
    points.add(points.get(0));
    Path path = Path.polyline(points);
    return path.signedArea() < 0 ? path.reversed() : path;
  }

  private static Polygon moved(Polygon polygon, Affine map) {
    AffineTransformation moves =
        new AffineTransformation(map.a(), map.c(), map.e(), map.b(), map.d(), map.f());
    return (Polygon) moves.transform(polygon);
  }
}
