package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Edge;
import org.lapmark.panel.FoldPlace;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/**
 * The half of a symmetrical piece that paper shows when the piece is cut on folded cloth. The piece
 * itself stays whole everywhere else: in seams, measures, figures and layouts.
 *
 * <p>All paths are in the panel's coordinates. The half is the one that a walk clockwise on paper
 * meets after the fold's first end.
 *
 * @param fold the fold, from the cutting line to the cutting line, by the first end
 * @param cuttingLine the cutting line of the half, open, from the fold's first end to its last
 * @param stitching the stitching line's stretches in this half, by the edge each belongs to, where
 *     the edge has an allowance
 * @param marks the marks in this half; a grainline that lies on the fold is moved beside it
 * @param notches notches as drawn in this half
 */
public record FoldedHalf(
    Line fold, Path cuttingLine, List<Path> stitching, List<Mark> marks, List<Path> notches) {
  /** How far the two halves may be from lying on each other, in millimetres. */
  public static final double TOLERANCE = 0.1;

  /** Halves are compared at places so far from each other, in millimetres. */
  private static final double COARSE = 6;

  /** What lies this near to the fold, in millimetres, lies on it. */
  static final double ON_FOLD = 0.01;

  /** Copies the lists. */
  public FoldedHalf {
    stitching = List.copyOf(stitching);
    marks = List.copyOf(marks);
    notches = List.copyOf(notches);
  }

  /**
   * Folds a piece's shape.
   *
   * @param shape the whole piece
   * @param first where the fold begins: an edge or chain, which is folded in its middle, or the
   *     corner with which an edge begins
   * @param last where it ends, alike
   * @return its half
   * @throws PanelException when there is no such place, when the halves don't lie on each other, or
   *     when a mark lies in one half alone
   */
  public static FoldedHalf of(PieceShape shape, String first, String last) {
    Panel panel = shape.panel();
    Point from = FoldPlace.of(panel, first);
    Point to = FoldPlace.of(panel, last);
    if (first.equals(last) || from.distance(to) < 1) {
      throw PanelCode.FOLD_WITHOUT_LENGTH.exception("panel", panel.name(), "place", last);
    }
    Point along = to.minus(from).unit();
    Path cutting = shape.cuttingLine().path();
    double start = crossing(cutting, from, along.times(-1));
    double end = crossing(cutting, to, along);
    double between = Math.abs(end - start);
    if (Math.min(between, cutting.length() - between) < ON_FOLD) {
      double apart = apart(cutting, cutting, Affine.mirror(from, along));
      throw PanelCode.FOLD_HALVES_DIFFER.exception("panel", panel.name(), "apart", apart);
    }
    Path half = around(cutting, start, end);
    Path other = around(cutting, end, start);
    Affine mirror = Affine.mirror(from, along);
    double apart = Math.max(apart(half, other, mirror), apart(other, half, mirror));
    if (apart > TOLERANCE) {
      throw PanelCode.FOLD_HALVES_DIFFER.exception("panel", panel.name(), "apart", apart);
    }
    Line fold = new Line(half.start(), half.end());
    return new FoldedHalf(
        fold,
        half,
        stitching(shape, from, to),
        HalfMarks.of(panel, fold, mirror),
        HalfNotches.of(shape, from, along, mirror));
  }

  /**
   * The half's whole border.
   *
   * @return a closed path: the cutting line, then the fold back to its start
   */
  public Path outline() {
    return cuttingLine.then(new Path(List.of(new Line(fold.end(), fold.start()))));
  }

  /**
   * The arc length at which a closed line crosses the fold, where it is nearest to an end and not
   * before it: a wide allowance beyond the fold's other end may be nearer.
   */
  private static double crossing(Path line, Point end, Point along) {
    double near = line.nearestLength(end);
    if (line.atLength(near).distance(end) < ON_FOLD) {
      return near;
    }
    return Crossings.straight(line, end, along).stream()
        .filter(crossing -> crossing.along() > -ON_FOLD)
        .min(Comparator.comparingDouble(crossing -> Math.abs(crossing.along())))
        .map(crossing -> line.lengthTo(crossing.place()))
        .orElse(near);
  }

  private static Path around(Path closed, double from, double to) {
    // A fold that is met next to the line's own start begins there.
    double begin = from > to && closed.length() - from < ON_FOLD ? 0 : from;
    return closed.around(begin, begin > to && to < ON_FOLD ? 0 : to);
  }

  /** How far the two halves are from lying on each other, as far as they are looked at. */
  private static double apart(Path half, Path other, Affine mirror) {
    double length = half.length();
    double across = other.length();
    int steps = Math.max(32, (int) Math.ceil(length / COARSE));
    double most = 0;
    for (int i = 0; i <= steps; i++) {
      Point point = mirror.apply(half.atLength(length * i / steps));
      // The other half is travelled the other way. Where it isn't at the same length, it may still
      // be there: what is nearest takes longer to find.
      double apart = other.atLength(across * (steps - i) / steps).distance(point);
      most = Math.max(most, apart <= TOLERANCE / 2 ? apart : other.distance(point));
    }
    return most;
  }

  private static List<Path> stitching(PieceShape shape, Point from, Point to) {
    Path outline = shape.panel().outline();
    double length = outline.length();
    double start = outline.nearestLength(from);
    double end = outline.nearestLength(to);
    if (end <= start) {
      end += length;
    }
    List<Path> parts = new ArrayList<>();
    double before = 0;
    for (int round = 0; round < 2; round++) {
      for (Edge edge : shape.panel().edges()) {
        double own = edge.path().length();
        double low = Math.max(start, before) - before;
        double high = Math.min(end, before + own) - before;
        if (high - low > ON_FOLD && shape.allowances().getOrDefault(edge.name(), 0.0) > 0) {
          for (double[] part : sewn(shape.panel(), edge, low, high)) {
            parts.add(edge.path().part(part[0], part[1]));
          }
        }
        before += own;
      }
    }
    return parts;
  }

  /** What of a stretch of an edge isn't taken up by darts. */
  private static List<double[]> sewn(Panel panel, Edge edge, double low, double high) {
    List<double[]> parts = new ArrayList<>();
    double at = low;
    for (Intake.Dart dart : Darts.on(panel, edge.name())) {
      if (Math.min(high, dart.from()) - at > ON_FOLD) {
        parts.add(new double[] {at, Math.min(high, dart.from())});
      }
      at = Math.max(at, dart.to());
    }
    if (high - at > ON_FOLD) {
      parts.add(new double[] {at, high});
    }
    return parts;
  }
}
