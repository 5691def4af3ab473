package org.lapmark.figure.ink;

import java.util.Arrays;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.Whole;

/** Small cells of a frame, some of them marked, which are counted quickly in any box. */
final class Raster {
  /** The side of a cell in millimetres. */
  private static final double CELL = 0.5;

  private final Box frame;
  private final int columns;
  private final int rows;
  private final boolean[] cells;
  private int[] sums;

  private Raster(Box frame) {
    this.frame = frame;
    this.columns = Whole.ceil(frame.width() / CELL);
    this.rows = Whole.ceil(frame.height() / CELL);
    this.cells = new boolean[columns * rows];
  }

  static Raster ofLines(Box frame, List<Canvas.Stretch> lines) {
    Raster raster = new Raster(frame);
    lines.forEach(raster::mark);
    raster.sum();
    return raster;
  }

  static Raster ofShapes(Box frame, List<List<Point>> shapes) {
    Raster raster = new Raster(frame);
    shapes.forEach(raster::mark);
    raster.sum();
    return raster;
  }

  private void mark(Canvas.Stretch stretch) {
    Point from = stretch.from();
    Point to = stretch.to();
    int steps = Whole.ceil(from.distance(to) / (CELL / 2)) + 1;
    double across = to.x() - from.x();
    double down = to.y() - from.y();
    for (int i = 0; i <= steps; i++) {
      double share = (double) i / steps;
      int column = Whole.floor((from.x() + across * share - frame.minX()) / CELL);
      int row = Whole.floor((from.y() + down * share - frame.minY()) / CELL);
      if (column >= 0 && column < columns && row >= 0 && row < rows) {
        cells[row * columns + column] = true;
      }
    }
  }

  /** Marks the cells whose middles a polygon encloses, row by row between its crossings. */
  private void mark(List<Point> polygon) {
    int[] ends = new int[rows + 1];
    crossings(polygon, (row, x) -> ends[row + 1]++);
    for (int row = 0; row < rows; row++) {
      ends[row + 1] += ends[row];
    }
    double[] crossings = new double[ends[rows]];
    int[] next = Arrays.copyOf(ends, rows);
    crossings(polygon, (row, x) -> crossings[next[row]++] = x);
    for (int row = 0; row < rows; row++) {
      Arrays.sort(crossings, ends[row], ends[row + 1]);
      for (int i = ends[row] + 1; i < ends[row + 1]; i += 2) {
        int from = (int) Math.max(0, Math.ceil((crossings[i - 1] - frame.minX()) / CELL - 0.5));
        int to =
            (int) Math.min(columns - 1, Math.floor((crossings[i] - frame.minX()) / CELL - 0.5));
        if (from <= to) {
          Arrays.fill(cells, row * columns + from, row * columns + to + 1, true);
        }
      }
    }
  }

  /** Takes where a polygon crosses the middle of a row. */
  @FunctionalInterface
  private interface Crossing {
    void at(int row, double x);
  }

  private void crossings(List<Point> polygon, Crossing crossing) {
    for (int i = 1; i < polygon.size(); i++) {
      Point a = polygon.get(i - 1);
      Point b = polygon.get(i);
      // A row more at each end, as halves are rounded.
      int first = Math.max(0, row(Math.min(a.y(), b.y())) - 1);
      int last = Math.min(rows - 1, row(Math.max(a.y(), b.y())) + 1);
      for (int row = first; row <= last; row++) {
        double y = frame.minY() + (row + 0.5) * CELL;
        if (a.y() <= y != b.y() <= y) {
          crossing.at(row, a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
      }
    }
  }

  private int row(double y) {
    return Whole.floor((y - frame.minY()) / CELL);
  }

  /** Each sum counts the marked cells above and to the left. */
  private void sum() {
    sums = new int[(columns + 1) * (rows + 1)];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        sums[(row + 1) * (columns + 1) + column + 1] =
            (cells[row * columns + column] ? 1 : 0)
                + sums[row * (columns + 1) + column + 1]
                + sums[(row + 1) * (columns + 1) + column]
                - sums[row * (columns + 1) + column];
      }
    }
  }

  /** How many marked cells a box has. */
  int count(double minX, double minY, double maxX, double maxY) {
    int left = clamp(Whole.floor((minX - frame.minX()) / CELL), columns);
    int right = clamp(Whole.ceil((maxX - frame.minX()) / CELL), columns);
    int top = clamp(Whole.floor((minY - frame.minY()) / CELL), rows);
    int bottom = clamp(Whole.ceil((maxY - frame.minY()) / CELL), rows);
    int width = columns + 1;
    return sums[bottom * width + right]
        - sums[top * width + right]
        - sums[bottom * width + left]
        + sums[top * width + left];
  }

  /** How much of a box is marked, in square millimetres. */
  double area(double minX, double minY, double maxX, double maxY) {
    return count(minX, minY, maxX, maxY) * CELL * CELL;
  }

  private static int clamp(int value, int most) {
    return Math.max(0, Math.min(most, value));
  }
}
