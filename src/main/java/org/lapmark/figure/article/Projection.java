package org.lapmark.figure.article;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Draws what has the same closed outline all along an axis, seen without perspective from the
 * front, above and to one side. What faces away is left out; outlines are taken to bulge outwards.
 *
 * <p>A point lies {@code across} from the left side and on the outline at {@code x} (forward) and
 * {@code y} (down).
 */
final class Projection {
  /** Shorter stretches, in millimetres, aren't drawn. */
  static final double GRAZING = 1e-3;

  /** How far the view is turned from the front towards the right side. */
  private static final double TURN = 33;

  /** How far from above it is seen. */
  private static final double TILT = 24;

  private static final double STEP = 2;

  /** The cosine of the least turn that is drawn as an edge: 20 degrees. */
  private static final double CREASE = 0.94;

  private final Canvas canvas;
  private final double scale;
  private final Map<Path, List<double[]>> seen = new LinkedHashMap<>();
  private final double sinTurn = StrictMath.sin(StrictMath.toRadians(TURN));
  private final double cosTurn = StrictMath.cos(StrictMath.toRadians(TURN));
  private final double sinTilt = StrictMath.sin(StrictMath.toRadians(TILT));
  private final double cosTilt = StrictMath.cos(StrictMath.toRadians(TILT));

  Projection(Canvas canvas, double scale) {
    this.canvas = canvas;
    this.scale = scale;
  }

  Canvas canvas() {
    return canvas;
  }

  double scale() {
    return scale;
  }

  /** From the panel's coordinates to paper, for a distance from the left side. */
  Affine at(double across) {
    return Affine.scaling(scale, scale)
        .after(
            new Affine(
                -sinTurn,
                cosTurn * sinTilt,
                0,
                cosTilt,
                across * cosTurn,
                across * sinTurn * sinTilt));
  }

  Point project(double across, Point point) {
    return at(across).apply(point);
  }

  /** How much the side of a closed clockwise outline faces the reader at a place; above 0: seen. */
  double facing(Point tangent) {
    return tangent.y() * cosTurn * cosTilt + tangent.x() * sinTilt;
  }

  /** The stretches of a closed outline that face the reader; ends may lie beyond its length. */
  List<double[]> seen(Path rim) {
    return seen.computeIfAbsent(rim, this::stretches);
  }

  private List<double[]> stretches(Path rim) {
    double whole = rim.length();
    int count = (int) Math.max(60, Math.ceil(whole / STEP));
    boolean[] faces = new boolean[count];
    for (int i = 0; i < count; i++) {
      faces[i] = facing(rim.tangentAtLength(whole * (i + 0.5) / count)) > 0;
    }
    List<double[]> stretches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (faces[i] && !faces[(i + count - 1) % count]) {
        int j = i;
        while (faces[(j + 1) % count] && j - i < count) {
          j++;
        }
        double from = turning(rim, i, count);
        double to = turning(rim, j + 1, count);
        // An outline that only grazes the line of sight shows nothing there.
        if (to - from > GRAZING) {
          stretches.add(new double[] {from, to});
        }
      }
    }
    return stretches;
  }

  /** Where between two samples the outline turns away. */
  private double turning(Path rim, int sample, int count) {
    double whole = rim.length();
    double from = whole * (sample - 0.5) / count;
    double to = whole * (sample + 0.5) / count;
    boolean before = facing(tangent(rim, from)) > 0;
    for (int i = 0; i < 40; i++) {
      double middle = (from + to) / 2;
      if (facing(tangent(rim, middle)) > 0 == before) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return to;
  }

  private static Point tangent(Path rim, double at) {
    double whole = rim.length();
    return rim.tangentAtLength(at - whole * Math.floor(at / whole));
  }

  static Path part(Path rim, double from, double to) {
    double whole = rim.length();
    double shift = whole * Math.floor(from / whole);
    double a = from - shift;
    double b = to - shift;
    if (b <= whole) {
      return rim.part(a, b);
    }
    if (whole - a < GRAZING) {
      return rim.part(0, b - whole);
    }
    if (b - whole < GRAZING) {
      return rim.part(a, whole);
    }
    return rim.part(a, whole).then(rim.part(0, b - whole));
  }

  static Path ring(Path far, Path near) {
    return far.then(Path.polyline(List.of(far.end(), near.end())))
        .then(near.reversed())
        .then(Path.polyline(List.of(near.start(), far.start())));
  }

  /** The curved surface between two distances, without lines. */
  void surface(Path rim, double from, double to, Texture texture, Side side) {
    for (double[] stretch : seen(rim)) {
      Path part = part(rim, stretch[0], stretch[1]);
      canvas.cloth(ring(part.transformed(at(from)), part.transformed(at(to))), texture, side, 0);
    }
  }

  /** Its outlines: the far edge where it is seen, and where the surface turns away. */
  void contours(Path rim, double from, double to, boolean farEdge) {
    for (double[] stretch : seen(rim)) {
      Path part = part(rim, stretch[0], stretch[1]);
      if (farEdge) {
        canvas.line(part.transformed(at(from)), "figure-outline");
      }
      for (Point crease : creases(part)) {
        line(from, to, crease, "figure-seam");
      }
      for (Point end : List.of(part.start(), part.end())) {
        line(from, to, end, "figure-outline");
      }
    }
  }

  /** Where an outline turns sharply between two curves. */
  private static List<Point> creases(Path part) {
    List<Point> creases = new ArrayList<>();
    for (int i = 1; i < part.curves().size(); i++) {
      Point before = part.curves().get(i - 1).tangent(1);
      Point after = part.curves().get(i).tangent(0);
      if (before.dot(after) < CREASE) {
        creases.add(part.curves().get(i).start());
      }
    }
    return creases;
  }

  /** A straight line across, at a point of the outline. */
  void line(double from, double to, Point point, String role) {
    canvas.line(Path.polyline(List.of(project(from, point), project(to, point))), role);
  }

  /** A patch between two distances and two points of the outline. */
  Path quad(double from, double to, Point a, Point b) {
    return Path.polyline(
        List.of(
            project(from, a), project(to, a), project(to, b), project(from, b), project(from, a)));
  }
}
