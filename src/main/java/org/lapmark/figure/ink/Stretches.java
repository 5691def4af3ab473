package org.lapmark.figure.ink;

import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/** Drawn stretches as numbers: which of them a leader crosses is asked often. */
final class Stretches {
  /** What a leader points at isn't crossed by it, in millimetres. */
  private static final double POINTED_AT = 0.3;

  /** So far a leader may run beside a line, in millimetres. */
  private static final double ALONG = 3;

  /** Nearer than this it is beside it, and turned from it by less than this it runs along it. */
  private static final double BESIDE = 0.7;

  private static final double NEARLY_PARALLEL = 0.14;

  /** The side of a cell. */
  private static final double CELL = 4;

  private final double[] ends;

  /** Where the ends of the stretches in each cell of the drawing begin. */
  private final int[][] cells;

  private final Point corner;
  private final int columns;
  private final int rows;

  Stretches(List<Canvas.Stretch> all) {
    this.ends = new double[4 * all.size()];
    Box box = Box.at(0, 0, 0, 0);
    for (int i = 0; i < all.size(); i++) {
      Point from = all.get(i).from();
      Point to = all.get(i).to();
      ends[4 * i] = from.x();
      ends[4 * i + 1] = from.y();
      ends[4 * i + 2] = to.x();
      ends[4 * i + 3] = to.y();
      Box own =
          new Box(
              Math.min(from.x(), to.x()),
              Math.min(from.y(), to.y()),
              Math.max(from.x(), to.x()),
              Math.max(from.y(), to.y()));
      box = i == 0 ? own : box.union(own);
    }
    this.corner = new Point(box.minX(), box.minY());
    this.columns = (int) (box.width() / CELL) + 1;
    this.rows = (int) (box.height() / CELL) + 1;
    this.cells = new int[columns * rows][];
    int[] counts = new int[cells.length];
    eachCell((stretch, cell) -> counts[cell]++);
    for (int cell = 0; cell < counts.length; cell++) {
      cells[cell] = new int[counts[cell]];
      counts[cell] = 0;
    }
    eachCell((stretch, cell) -> cells[cell][counts[cell]++] = stretch);
  }

  /** Takes a stretch in a cell. */
  @FunctionalInterface
  private interface Entry {
    void of(int stretch, int cell);
  }

  private void eachCell(Entry entry) {
    for (int at = 0; at < ends.length; at += 4) {
      int right = column(Math.max(ends[at], ends[at + 2]));
      int bottom = row(Math.max(ends[at + 1], ends[at + 3]));
      for (int row = firstRow(at); row <= bottom; row++) {
        for (int column = firstColumn(at); column <= right; column++) {
          entry.of(at, row * columns + column);
        }
      }
    }
  }

  private int firstColumn(int at) {
    return column(Math.min(ends[at], ends[at + 2]));
  }

  private int firstRow(int at) {
    return row(Math.min(ends[at + 1], ends[at + 3]));
  }

  private int column(double x) {
    return (int) Math.max(0, Math.min(columns - 1, (x - corner.x()) / CELL));
  }

  private int row(double y) {
    return (int) Math.max(0, Math.min(rows - 1, (y - corner.y()) / CELL));
  }

  /** Takes one stretch, by where its ends begin. */
  @FunctionalInterface
  private interface Look {
    void at(int at);
  }

  /** Looks once at each stretch whose own box overlaps one. */
  private void within(double left, double right, double top, double bottom, Look look) {
    int lastColumn = column(right);
    int lastRow = row(bottom);
    int beginColumn = column(left);
    int beginRow = row(top);
    for (int row = beginRow; row <= lastRow; row++) {
      for (int column = beginColumn; column <= lastColumn; column++) {
        for (int at : cells[row * columns + column]) {
          // One that spans several cells is looked at in the first of them.
          if ((ends[at] >= left || ends[at + 2] >= left)
              && (ends[at] <= right || ends[at + 2] <= right)
              && (ends[at + 1] >= top || ends[at + 3] >= top)
              && (ends[at + 1] <= bottom || ends[at + 3] <= bottom)
              && row == Math.max(beginRow, firstRow(at))
              && column == Math.max(beginColumn, firstColumn(at))) {
            look.at(at);
          }
        }
      }
    }
  }

  /** How many stretches a leader crosses, without those that it ends at. */
  int crossed(Point start, Point anchor) {
    int[] crossed = new int[1];
    within(
        Math.min(start.x(), anchor.x()),
        Math.max(start.x(), anchor.x()),
        Math.min(start.y(), anchor.y()),
        Math.max(start.y(), anchor.y()),
        at ->
            crossed[0] +=
                crosses(
                        ends[at],
                        ends[at + 1],
                        ends[at + 2],
                        ends[at + 3],
                        start.x(),
                        start.y(),
                        anchor.x(),
                        anchor.y())
                    ? 1
                    : 0);
    return crossed[0];
  }

  /**
   * Whether a leader runs beside a line so long that it can’t be told from it.
   *
   * @return true where it does so for more than {@link #ALONG}
   */
  boolean runsAlong(Point start, Point anchor) {
    double length = start.distance(anchor);
    if (length < ALONG) {
      return false;
    }
    Point way = anchor.minus(start).times(1 / length);
    double[] run = new double[1];
    within(
        Math.min(start.x(), anchor.x()) - BESIDE,
        Math.max(start.x(), anchor.x()) + BESIDE,
        Math.min(start.y(), anchor.y()) - BESIDE,
        Math.max(start.y(), anchor.y()) + BESIDE,
        at -> run[0] += beside(at, start, way.x(), way.y(), length));
    return run[0] > ALONG;
  }

  /** How long a stretch lies beside a leader, running its way. */
  private double beside(int at, Point start, double across, double down, double length) {
    double fromX = ends[at] - start.x();
    double fromY = ends[at + 1] - start.y();
    double toX = ends[at + 2] - start.x();
    double toY = ends[at + 3] - start.y();
    double beside = fromX * down - fromY * across;
    double turn = toX * down - toY * across - beside;
    double on = fromX * across + fromY * down;
    double way = toX * across + toY * down - on;
    if (Math.abs(turn) >= NEARLY_PARALLEL * Math.abs(way)
        || turn == 0 && Math.abs(beside) >= BESIDE) {
      return 0;
    }
    // The shares of the stretch between which it lies so.
    double first = Math.max(0, Math.min(-on / way, (length - on) / way));
    double last = Math.min(1, Math.max(-on / way, (length - on) / way));
    if (turn != 0) {
      double one = (-BESIDE - beside) / turn;
      double other = (BESIDE - beside) / turn;
      first = Math.max(first, Math.min(one, other));
      last = Math.min(last, Math.max(one, other));
    }
    return Math.max(0, last - first) * Math.abs(way);
  }

  private static boolean crosses(
      double ax,
      double ay,
      double bx,
      double by,
      double fromX,
      double fromY,
      double toX,
      double toY) {
    return Polygons.side(fromX, fromY, toX, toY, ax, ay)
                * Polygons.side(fromX, fromY, toX, toY, bx, by)
            < 0
        && Polygons.side(ax, ay, bx, by, fromX, fromY) * Polygons.side(ax, ay, bx, by, toX, toY) < 0
        && Polygons.distance(toX, toY, ax, ay, bx, by) > POINTED_AT;
  }
}
