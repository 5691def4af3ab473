package org.lapmark.figure.operation.plan;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * The rim of a sheet, stretch by stretch; the last one ends where the first begins.
 *
 * @param stretches its stretches
 */
public record Rim(List<Stretch> stretches) {
  private static final double FLATNESS = 0.05;
  private static final double WAVE = 0.55;
  private static final double PERIOD = 9;

  /** Copies the list. */
  public Rim {
    stretches = List.copyOf(stretches);
  }

  /** What a stretch of a rim is. */
  private enum Kind {
    /** A raw edge, or a fold: where the cloth ends. */
    EDGE,
    /** Where the cloth goes on. */
    ON,
    /** Where two parts of one sheet meet. */
    INNER
  }

  /** A stretch, in millimetres of cloth. */
  record Stretch(Kind kind, List<Point> points) {
    Stretch {
      points = List.copyOf(points);
    }

    /** On paper: where cloth goes on it is torn off in a wave. */
    private List<Point> on(Affine map) {
      List<Point> straight = points.stream().map(map::apply).toList();
      if (kind != Kind.ON || straight.size() != 2) {
        return straight;
      }
      Point from = straight.get(0);
      Point way = straight.get(1).minus(from);
      double length = way.norm();
      int waves = (int) Math.max(1, Math.round(length / PERIOD));
      int steps = waves * 10;
      Point aside = way.unit().quarterTurn().times(WAVE);
      List<Point> torn = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        double swing = StrictMath.sin(2 * StrictMath.PI * waves * i / steps);
        torn.add(from.plus(way.times((double) i / steps)).plus(aside.times(swing)));
      }
      return torn;
    }
  }

  /** A rim that begins somewhere. */
  public static Sketch from(double x, double y) {
    return new Sketch(new Point(x, y));
  }

  /** A box whose edges all end the cloth. */
  public static Rim box(double minX, double minY, double maxX, double maxY) {
    return from(minX, minY).edge(maxX, minY).edge(maxX, maxY).edge(minX, maxY).closed();
  }

  /** A rim that is being drawn. */
  public static final class Sketch {
    private final Point start;
    private Point at;
    private final List<Stretch> stretches = new ArrayList<>();

    private Sketch(Point start) {
      this.start = start;
      this.at = start;
    }

    private Sketch to(Kind kind, Point next) {
      if (next.distance(at) > 1e-9) {
        stretches.add(new Stretch(kind, List.of(at, next)));
        at = next;
      }
      return this;
    }

    /** To a place, where the cloth ends along the way. */
    public Sketch edge(double x, double y) {
      return to(Kind.EDGE, new Point(x, y));
    }

    /** The same. */
    public Sketch edge(Point next) {
      return to(Kind.EDGE, next);
    }

    /** Along a curve, where the cloth ends. */
    public Sketch edge(List<Point> curve) {
      edge(curve.get(0));
      stretches.add(new Stretch(Kind.EDGE, curve));
      at = curve.get(curve.size() - 1);
      return this;
    }

    /** To a place, where the cloth goes on across the way. */
    public Sketch on(double x, double y) {
      return to(Kind.ON, new Point(x, y));
    }

    /** The same. */
    public Sketch on(Point next) {
      return to(Kind.ON, next);
    }

    /** Along a curve, where the cloth goes on. */
    public Sketch on(List<Point> curve) {
      on(curve.get(0));
      stretches.add(new Stretch(Kind.ON, curve));
      at = curve.get(curve.size() - 1);
      return this;
    }

    /** To a place, along which the same cloth is drawn as another part. */
    public Sketch inner(double x, double y) {
      return to(Kind.INNER, new Point(x, y));
    }

    /** Back to where it began. */
    public Rim closed() {
      return new Rim(to(Kind.EDGE, start).stretches);
    }

    /** Back to where it began, where the cloth goes on across the way. */
    public Rim torn() {
      return new Rim(to(Kind.ON, start).stretches);
    }
  }

  /** The whole on paper. */
  Path path(Affine map) {
    List<Point> points = new ArrayList<>();
    for (Stretch stretch : stretches) {
      List<Point> on = stretch.on(map);
      points.addAll(points.isEmpty() ? on : on.subList(1, on.size()));
    }
    points.set(points.size() - 1, points.get(0));
    return Path.polyline(points);
  }

  List<Point> polygon(Affine map) {
    return path(map).flattened(FLATNESS);
  }

  void draw(Canvas canvas, Affine map) {
    for (Stretch stretch : stretches) {
      if (stretch.kind == Kind.INNER) {
        continue;
      }
      canvas.line(
          Path.polyline(stretch.on(map)),
          stretch.kind == Kind.EDGE ? "figure-outline" : "figure-break");
    }
  }
}
