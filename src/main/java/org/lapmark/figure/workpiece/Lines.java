package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.offset.IntricateOutlineException;
import org.lapmark.geometry.offset.JointException;
import org.lapmark.geometry.offset.Offset;
import org.lapmark.geometry.offset.Part;
import org.lapmark.geometry.offset.Side;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.buffer.OffsetCurve;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Lines beside a panel's edges, and parts of outlines, in the panel's own coordinates. */
public final class Lines {
  private static final double FLATNESS = 0.01;

  /** What reaches less far beyond a line isn't parted by it, in millimetres. */
  private static final double NOTHING = 1e-9;

  /** So far apart shapes may lie that are sewn together, in millimetres. */
  private static final double SEAM = 0.05;

  /** A line round less than this, in square millimetres, is straight. */
  private static final double LEAST_BENT = 1;

  private Lines() {}

  /**
   * The outline of a piece some of whose edges are turned in along their stitching line.
   *
   * @param turned the names of those edges
   * @return a closed path, clockwise on paper; the stitching line where none can be drawn beside it
   */
  public static Path outline(
      Panel panel, Map<String, Double> allowances, Collection<String> turned) {
    List<Side> sides = new ArrayList<>();
    for (Edge edge : panel.edges()) {
      double distance =
          turned.contains(edge.name()) ? 0 : allowances.getOrDefault(edge.name(), 0.0);
      sides.add(side(edge.path(), distance));
    }
    List<List<Part>> loops = loops(sides);
    return loops.isEmpty() ? panel.outline() : path(loops.get(0));
  }

  /**
   * Lines beside some edges, as far as the raw edges at either end.
   *
   * @param edges the edges' names
   * @param outside how far outside the stitching line they run; negative is inside, and then they
   *     end at the neighbours' stitching lines
   * @param turned edges whose allowance is turned in
   * @return the lines, each as long as edges follow each other; none if they can't be drawn
   */
  public static List<Path> beside(
      Panel panel,
      Map<String, Double> allowances,
      Collection<String> edges,
      double outside,
      Collection<String> turned) {
    List<Side> sides = new ArrayList<>();
    for (Edge edge : panel.edges()) {
      double free =
          outside < 0 || turned.contains(edge.name())
              ? 0
              : allowances.getOrDefault(edge.name(), 0.0);
      sides.add(side(edge.path(), edges.contains(edge.name()) ? outside : free));
    }
    List<List<Part>> loops = loops(sides);
    if (loops.isEmpty()) {
      return List.of();
    }
    List<List<Curve>> runs = new ArrayList<>();
    boolean open = false;
    for (Part part : loops.get(0)) {
      boolean wanted = edges.contains(panel.edges().get(part.side()).name());
      if (wanted && !open) {
        runs.add(new ArrayList<>());
      }
      if (wanted) {
        runs.get(runs.size() - 1).add(part.curve());
      }
      open = wanted;
    }
    // A run over the place where the loop begins is one.
    if (runs.size() > 1) {
      List<Curve> first = runs.get(0);
      List<Curve> last = runs.get(runs.size() - 1);
      if (last.get(last.size() - 1).end().distance(first.get(0).start()) < 1e-6) {
        last.addAll(first);
        runs.remove(0);
      }
    }
    return runs.stream().map(Path::new).toList();
  }

  /**
   * What lies along the raw edges of some edges.
   *
   * @param wide how far it reaches inside them
   * @return none where nothing is left inside, or no line can be drawn there
   */
  public static Optional<Strips> along(
      Panel panel, Map<String, Double> allowances, Collection<String> edges, double wide) {
    List<Side> sides = new ArrayList<>();
    panel
        .edges()
        .forEach(edge -> sides.add(side(edge.path(), allowances.getOrDefault(edge.name(), 0.0))));
    List<List<Part>> raw = loops(sides);
    if (raw.isEmpty()) {
      return Optional.empty();
    }
    List<Side> moved = new ArrayList<>();
    for (Part part : raw.get(0)) {
      boolean wanted = edges.contains(panel.edges().get(part.side()).name());
      moved.add(side(new Path(List.of(part.curve())), wanted ? -wide : 0));
    }
    List<List<Part>> inner = loops(moved);
    return inner.isEmpty()
        ? Optional.empty()
        : Optional.of(Strips.between(path(raw.get(0)), inner.stream().map(Lines::path).toList()));
  }

  /** None where an outline is too intricate for lines beside it. */
  private static List<List<Part>> loops(List<Side> sides) {
    try {
      return Offset.loops(sides);
    } catch (IntricateOutlineException | JointException e) {
      return List.of();
    }
  }

  /** What is turned in ends like a fold. */
  private static Side side(Path path, double distance) {
    return distance == 0 ? Side.onFold(path) : new Side(path, distance);
  }

  private static Path path(List<Part> parts) {
    return new Path(parts.stream().map(Part::curve).toList());
  }

  /**
   * The part of an outline on one side of a straight line.
   *
   * @param outline a closed path
   * @param on a point of the line
   * @param away the direction in which everything is left out
   * @return the part as a polygon, and where it is cut
   */
  public static Cropped crop(Path outline, Point on, Point away) {
    List<Point> points = outline.flattened(FLATNESS);
    List<Point> kept = new ArrayList<>();
    List<Point> cut = new ArrayList<>();
    boolean before = false;
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      double da = a.minus(on).dot(away);
      double db = b.minus(on).dot(away);
      if (da <= 0) {
        add(kept, a);
      }
      // A line may run through a corner as well.
      if (da <= 0 && db > 0 || da > 0 && db <= 0) {
        Point crossing = da == 0 ? a : db == 0 ? b : a.towards(b, da / (da - db));
        add(kept, crossing);
        cut.add(crossing);
      }
      before |= da < -NOTHING;
    }
    if (cut.size() < 2 || !before) {
      return new Cropped(outline, null, null);
    }
    add(kept, kept.get(0));
    // Where a line runs through a hollow or along an edge, it is cut from its first place to its
    // last.
    Point along = away.quarterTurn();
    Point first = cut.get(0);
    Point last = cut.get(0);
    for (Point crossing : cut) {
      first = crossing.dot(along) < first.dot(along) ? crossing : first;
      last = crossing.dot(along) > last.dot(along) ? crossing : last;
    }
    boolean touches = last.minus(first).dot(along) < NOTHING;
    return touches
        ? new Cropped(outline, null, null)
        : new Cropped(Path.polyline(kept), first, last);
  }

  private static void add(List<Point> points, Point next) {
    if (points.isEmpty() || !points.get(points.size() - 1).equals(next)) {
      points.add(next);
    }
  }

  /**
   * An outline of which a part was left out.
   *
   * @param path what is left
   * @param from one end of the cut, or null if nothing was cut
   * @param to its other end
   */
  public record Cropped(Path path, Point from, Point to) {}

  /**
   * The outline round shapes that touch or overlap.
   *
   * @param shapes closed paths
   * @return a polygon that runs the way of the first; without holes
   */
  static Path round(List<Path> shapes) {
    return round(shapes, 0);
  }

  private static Path round(List<Path> shapes, double closed) {
    GeometryFactory geometries = new GeometryFactory();
    List<Geometry> polygons = new ArrayList<>();
    for (Path shape : shapes) {
      Geometry polygon = polygon(shape, geometries);
      polygons.add(closed > 0 ? polygon.buffer(closed, 2) : polygon);
    }
    Geometry union = OverlayNGRobust.union(polygons);
    Polygon largest = null;
    for (int i = 0; i < union.getNumGeometries(); i++) {
      if (union.getGeometryN(i) instanceof Polygon polygon
          && (largest == null || polygon.getArea() > largest.getArea())) {
        largest = polygon;
      }
    }
    List<Point> points = new ArrayList<>();
    for (Coordinate at : largest.getExteriorRing().getCoordinates()) {
      points.add(new Point(at.x, at.y));
    }
    Path round = Path.polyline(points);
    return round.signedArea() > 0 == shapes.get(0).signedArea() > 0 ? round : round.reversed();
  }

  /**
   * The outline round a shape and others that are sewn to it.
   *
   * @param first a closed path
   * @param others closed paths whose edges lie on its
   * @return a polygon that runs the way of the first
   */
  static Path joined(Path first, List<Path> others) {
    List<Path> all = new ArrayList<>();
    all.add(first);
    all.addAll(others);
    return round(all, SEAM);
  }

  /** On which hand of a line that is drawn by itself its inside lies: 1 for its right. */
  public static int handOf(Path line) {
    List<Point> points = new ArrayList<>(line.flattened(FLATNESS));
    points.add(points.get(0));
    double area = 0;
    for (int i = 1; i < points.size(); i++) {
      area += points.get(i - 1).cross(points.get(i)) / 2;
    }
    return area < -LEAST_BENT ? -1 : 1;
  }

  /** A line beside one that is drawn by itself: inside a bent one, right of a straight one. */
  public static Optional<Path> insideOf(Path line, double by) {
    Coordinate[] points =
        line.flattened(FLATNESS).stream()
            .map(point -> new Coordinate(point.x(), point.y()))
            .toArray(Coordinate[]::new);
    GeometryFactory geometries = new GeometryFactory();
    int hand = handOf(line);
    Geometry found =
        line.isClosed()
            ? geometries.createPolygon(points).buffer(-by, 8, BufferParameters.CAP_FLAT)
            : OffsetCurve.getCurve(
                geometries.createLineString(points), by * hand, 8, BufferParameters.JOIN_MITRE, 5);
    return row(found, line);
  }

  /** What was found beside a line, running its way; nothing where that is in parts. */
  private static Optional<Path> row(Geometry found, Path line) {
    Coordinate[] at =
        found instanceof Polygon polygon
            ? polygon.getExteriorRing().getCoordinates()
            : found.getCoordinates();
    if (found.getNumGeometries() != 1 || at.length < 2) {
      return Optional.empty();
    }
    List<Point> row = new ArrayList<>();
    for (Coordinate one : at) {
      row.add(new Point(one.x, one.y));
    }
    Path path = Path.polyline(row);
    boolean back =
        line.isClosed()
            ? path.signedArea() > 0 != line.signedArea() > 0
            : path.start().distance(line.start()) > path.end().distance(line.start());
    return Optional.of(back ? path.reversed() : path);
  }

  /** A line to the left of one, where outside is. */
  public static Optional<Path> outsideOf(Path line, double by) {
    Coordinate[] points =
        line.flattened(FLATNESS).stream()
            .map(point -> new Coordinate(point.x(), point.y()))
            .toArray(Coordinate[]::new);
    return row(
        OffsetCurve.getCurve(
            new GeometryFactory().createLineString(points), -by, 8, BufferParameters.JOIN_MITRE, 5),
        line);
  }

  /** How much of a shape is open to view under others, in square millimetres. */
  static double open(Path shape, List<Path> covers) {
    GeometryFactory geometries = new GeometryFactory();
    Geometry left = polygon(shape, geometries);
    for (Path cover : covers) {
      left = OverlayNGRobust.overlay(left, polygon(cover, geometries), OverlayNG.DIFFERENCE);
    }
    return left.getArea();
  }

  static Geometry polygon(Path shape, GeometryFactory geometries) {
    return geometries.createPolygon(
        shape.flattened(FLATNESS).stream()
            .map(point -> new Coordinate(point.x(), point.y()))
            .toArray(Coordinate[]::new));
  }

  /** The direction from an edge's chord into the panel, which lies on its right hand. */
  public static Point inward(Path edge) {
    Point chord = edge.end().minus(edge.start());
    return (chord.norm() < 1e-6 ? edge.tangentAtLength(0) : chord.unit()).quarterTurn();
  }

  /** A line drawn out straight at both ends. */
  public static Path extended(Path path, double by) {
    if (by <= 0) {
      return path;
    }
    Point start = path.start().minus(path.tangentAtLength(0).times(by));
    Point end = path.end().plus(path.tangentAtLength(path.length()).times(by));
    return Path.polyline(List.of(start, path.start()))
        .then(path)
        .then(Path.polyline(List.of(path.end(), end)));
  }
}
