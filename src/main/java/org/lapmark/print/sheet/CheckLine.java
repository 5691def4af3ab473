package org.lapmark.print.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.piece.PieceArt;

/**
 * A line right through a run of joined tiles, as long as whole millimetres allow: measured when
 * everything is taped, it proves that the joins are right.
 *
 * @param cells the run, from the left or from the top
 * @param from the line's left or upper end, in sheet coordinates
 * @param to its right or lower end
 * @param sideways whether it runs to the right
 */
public record CheckLine(List<Cell> cells, Point from, Point to, boolean sideways) {
  private static final double STEP = 2.5;

  /** How far a check line keeps from the ends and sides of its run, in millimetres. */
  private static final double MARGIN = 9;

  /** Nearer than this to a piece's line, in millimetres, one may be taken for the other. */
  private static final double NEAR = 5;

  private static final double BESIDE = 3;

  /** What is drawn keeps this far from a piece, in millimetres. */
  private static final double OFF = 1.5;

  /** What is drawn of either end in any case, in millimetres. */
  private static final double STUB = 6;

  /** Shorter stretches, in millimetres, aren't drawn. */
  private static final double LEAST = 1;

  /** How closely lines are followed to tell whether one is near, in millimetres. */
  private static final double CHORD = 0.5;

  public double length() {
    return from.distance(to);
  }

  public Path line() {
    return new Path(List.of(new Line(from, to)));
  }

  /**
   * What is drawn of the line: nothing of it runs through a piece, where it could be taken for a
   * line to cut, but for the ends between which it is measured.
   *
   * @param layout the sheet
   * @return straight pieces of it, from its beginning on
   */
  public List<Path> offPieces(SheetLayout layout) {
    List<double[]> hidden = new ArrayList<>();
    for (PieceArt art : layout.art()) {
      if (art.bounds().overlaps(line().bounds().expanded(0.1))) {
        double[] crossings = crossings(art.outline());
        for (int i = 0; i + 1 < crossings.length; i += 2) {
          hidden.add(new double[] {crossings[i] - OFF, crossings[i + 1] + OFF});
        }
      }
    }
    hidden.sort((a, b) -> Double.compare(a[0], b[0]));
    double begin = along(from);
    double end = along(to);
    List<double[]> shown = new ArrayList<>();
    shown.add(new double[] {begin, begin + STUB});
    double at = begin + STUB;
    for (double[] stretch : hidden) {
      if (stretch[0] > at) {
        shown.add(new double[] {at, Math.min(stretch[0], end - STUB)});
      }
      at = Math.max(at, stretch[1]);
    }
    shown.add(new double[] {at, end - STUB});
    shown.add(new double[] {end - STUB, end});
    return shown.stream()
        .filter(stretch -> stretch[1] - stretch[0] > LEAST)
        .map(stretch -> new Path(List.of(new Line(at(stretch[0]), at(stretch[1])))))
        .toList();
  }

  private Point at(double along) {
    return sideways ? new Point(along, from.y()) : new Point(from.x(), along);
  }

  /** The lines across, then those down. */
  public static List<CheckLine> of(SheetLayout layout) {
    List<CheckLine> lines = new ArrayList<>(of(layout, true));
    lines.addAll(of(layout, false));
    return lines;
  }

  /** A line through every run of joined tiles, from the upper or left run on. */
  public static List<CheckLine> of(SheetLayout layout, boolean sideways) {
    List<CheckLine> lines = new ArrayList<>();
    for (Cell cell : layout.cells()) {
      boolean first =
          layout.joins().stream()
              .noneMatch(join -> join.sideways() == sideways && join.second() == cell);
      List<Cell> run = first ? run(layout, cell, sideways) : List.of();
      if (run.size() > 1) {
        lines.add(through(run, layout, sideways));
      }
    }
    return lines;
  }

  private static List<Cell> run(SheetLayout layout, Cell start, boolean sideways) {
    List<Cell> run = new ArrayList<>(List.of(start));
    boolean more = true;
    while (more) {
      Cell last = run.get(run.size() - 1);
      more = false;
      for (Join join : layout.joins()) {
        if (join.sideways() == sideways && join.first() == last) {
          run.add(join.second());
          more = true;
          break;
        }
      }
    }
    return run;
  }

  /** Where the line covers least of the pieces and keeps from their lines and the test square. */
  private static CheckLine through(List<Cell> run, SheetLayout layout, boolean sideways) {
    Box first = run.get(0).core();
    Box last = run.get(run.size() - 1).core();
    double begin = (sideways ? first.minX() : first.minY()) + MARGIN;
    double end = (sideways ? last.maxX() : last.maxY()) - MARGIN;
    double whole = Math.floor(end - begin);
    double low = (sideways ? first.minY() : first.minX()) + MARGIN;
    double high = (sideways ? first.maxY() : first.maxX()) - MARGIN;
    List<Lines> pieces = layout.art().stream().map(Lines::of).toList();
    CheckLine best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double at = low; at <= high; at += STEP) {
      CheckLine line =
          sideways
              ? new CheckLine(run, new Point(begin, at), new Point(begin + whole, at), true)
              : new CheckLine(run, new Point(at, begin), new Point(at, begin + whole), false);
      double covered = line.covered(layout, pieces);
      if (covered < least - 1e-6) {
        least = covered;
        best = line;
      }
    }
    return best;
  }

  /** How much of the line lies on pieces, in millimetres, and much more on the test square. */
  private double covered(SheetLayout layout, List<Lines> pieces) {
    double sum = 0;
    Box bounds = line().bounds();
    for (Lines piece : pieces) {
      if (bounds.expanded(NEAR).overlaps(piece.bounds())) {
        sum += within(piece.outline());
        // A line that runs along another can't be told from it, whichever side it is on.
        for (List<Point> drawn : piece.drawn()) {
          sum += BESIDE * beside(drawn);
        }
      }
    }
    return layout.square().expanded(2).overlaps(bounds.expanded(0.1)) ? sum + 1e6 : sum;
  }

  /**
   * A piece's lines as points.
   *
   * @param bounds the box around the piece
   * @param outline the closed outline
   * @param drawn all that is drawn, also inside
   */
  private record Lines(Box bounds, List<Point> outline, List<List<Point>> drawn) {
    static Lines of(PieceArt art) {
      return new Lines(
          art.bounds(),
          art.outline(),
          art.strokes().stream().map(stroke -> stroke.path().flattened(CHORD)).toList());
    }
  }

  private double along(Point point) {
    return sideways ? point.x() : point.y();
  }

  private double across(Point point) {
    return sideways ? point.y() - from.y() : point.x() - from.x();
  }

  /** How much of the line an outline encloses. */
  private double within(List<Point> outline) {
    double[] crossings = crossings(outline);
    double sum = 0;
    for (int i = 0; i + 1 < crossings.length; i += 2) {
      sum +=
          Math.max(0, Math.min(crossings[i + 1], along(to)) - Math.max(crossings[i], along(from)));
    }
    return sum;
  }

  /** Where an outline crosses the line or what lies straight beyond its ends, ascending. */
  private double[] crossings(List<Point> outline) {
    double[] crossings = new double[outline.size()];
    int count = 0;
    for (int i = 1; i < outline.size(); i++) {
      Point a = outline.get(i - 1);
      Point b = outline.get(i);
      if ((across(a) <= 0) != (across(b) <= 0)) {
        crossings[count++] = along(a.towards(b, across(a) / (across(a) - across(b))));
      }
    }
    Arrays.sort(crossings, 0, count);
    return Arrays.copyOf(crossings, count);
  }

  /** How much of the line lies near another: near one of its sides, each a stretch. */
  private double beside(List<Point> outline) {
    List<double[]> stretches = new ArrayList<>();
    for (int i = 1; i < outline.size(); i++) {
      Point a = outline.get(i - 1);
      Point b = outline.get(i);
      if (Math.min(across(a), across(b)) < NEAR && Math.max(across(a), across(b)) > -NEAR) {
        double[] stretch = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        round(a, stretch);
        round(b, stretch);
        // Between the ends, where the side's two parallels cross the line.
        Point off = b.minus(a).unit().quarterTurn().times(NEAR);
        for (Point move : List.of(off, off.times(-1))) {
          double start = across(a.plus(move));
          double end = across(b.plus(move));
          if ((start <= 0) != (end <= 0)) {
            reach(along(a.plus(move).towards(b.plus(move), start / (start - end))), stretch);
          }
        }
        if (stretch[0] < stretch[1]) {
          stretches.add(stretch);
        }
      }
    }
    stretches.sort((a, b) -> Double.compare(a[0], b[0]));
    double sum = 0;
    double done = along(from);
    for (double[] stretch : stretches) {
      double end = Math.min(stretch[1], along(to));
      sum += Math.max(0, end - Math.max(done, stretch[0]));
      done = Math.max(done, end);
    }
    return sum;
  }

  /** Widens a stretch to where the line passes a point. */
  private void round(Point point, double[] stretch) {
    double rest = NEAR * NEAR - across(point) * across(point);
    if (rest > 0) {
      reach(along(point) - Math.sqrt(rest), stretch);
      reach(along(point) + Math.sqrt(rest), stretch);
    }
  }

  private static void reach(double at, double[] stretch) {
    stretch[0] = Math.min(stretch[0], at);
    stretch[1] = Math.max(stretch[1], at);
  }
}
