package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Point;
import org.lapmark.source.key.KeyCode;

/** Turns path commands into curves in millimetres, one list a subpath; empty segments drop out. */
final class OutlineBuilder implements PathSink {
  private static final double NOTHING = 1e-9;

  private final Affine map;
  private final double largest;
  private final Position position;
  private final List<Subpath> subpaths = new ArrayList<>();
  private List<Curve> curves = new ArrayList<>();
  private Point start = new Point(0, 0);
  private Point current = start;

  /**
   * Begins.
   *
   * @param map from user units to millimetres
   * @param largest the largest coordinate in millimetres
   * @param position where coordinates beyond it are reported
   */
  OutlineBuilder(Affine map, double largest, Position position) {
    this.map = map;
    this.largest = largest;
    this.position = position;
  }

  /**
   * A run of curves.
   *
   * @param curves in order of travel; may be empty
   * @param closed whether it was closed by a command
   * @param start its first point
   */
  record Subpath(List<Curve> curves, boolean closed, Point start) {}

  /** What has been drawn. */
  List<Subpath> subpaths() {
    end(false);
    return subpaths;
  }

  private void end(boolean closed) {
    if (!curves.isEmpty()) {
      Point first = curves.get(0).start();
      subpaths.add(new Subpath(curves, closed, first));
      curves = new ArrayList<>();
    }
  }

  @Override
  public void moveTo(Point to) {
    end(false);
    start = to;
    current = to;
  }

  @Override
  public void lineTo(Point to) {
    if (to.distance(current) > NOTHING) {
      add(new Line(current, to), to);
    }
  }

  @Override
  public void quadraticTo(Point control, Point to) {
    if (to.distance(current) > NOTHING || control.distance(current) > NOTHING) {
      add(Cubic.ofQuadratic(current, control, to), to);
    }
  }

  @Override
  public void cubicTo(Point control1, Point control2, Point to) {
    if (to.distance(current) > NOTHING
        || control1.distance(current) > NOTHING
        || control2.distance(current) > NOTHING) {
      add(new Cubic(current, control1, control2, to), to);
    }
  }

  @Override
  public void arcTo(
      double radiusX, double radiusY, double rotation, boolean large, boolean clockwise, Point to) {
    if (to.distance(current) > NOTHING) {
      add(Arc.fromEndpoints(current, radiusX, radiusY, rotation, large, clockwise, to), to);
    }
  }

  /** A whole arc, given by its centre. */
  void add(Arc arc) {
    add(arc, arc.end());
  }

  @Override
  public void close() {
    // A last stretch shorter than a gap that is closed anyway isn't drawn as a line of its own.
    Point from = map.apply(current);
    if (from.distance(map.apply(start)) > ShapeReading.GAP) {
      lineTo(start);
    }
    end(true);
    current = start;
  }

  private void add(Curve curve, Point to) {
    Curve mapped = curve.transformed(map);
    for (Point point : points(mapped)) {
      if (!(Math.abs(point.x()) <= largest && Math.abs(point.y()) <= largest)) {
        throw new FindingException(
            Finding.of(
                KeyCode.NUMBER_TOO_LARGE,
                position,
                "text",
                String.format(Locale.ROOT, "%.4g; %.4g", point.x(), point.y())));
      }
    }
    curves.add(mapped);
    current = to;
  }

  private static List<Point> points(Curve curve) {
    if (curve instanceof Cubic cubic) {
      return List.of(cubic.start(), cubic.control1(), cubic.control2(), cubic.end());
    }
    if (curve instanceof Arc arc) {
      return List.of(arc.start(), arc.end(), arc.centre(), new Point(arc.radiusX(), arc.radiusY()));
    }
    return List.of(curve.start(), curve.end());
  }
}
