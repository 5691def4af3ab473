package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

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
    this.columns = (int) Math.ceil(frame.width() / CELL);
    this.rows = (int) Math.ceil(frame.height() / CELL);
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
    double length = stretch.from().distance(stretch.to());
    int steps = (int) Math.ceil(length / (CELL / 2)) + 1;
    for (int i = 0; i <= steps; i++) {
      Point at = stretch.from().towards(stretch.to(), (double) i / steps);
      int column = (int) Math.floor((at.x() - frame.minX()) / CELL);
      int row = (int) Math.floor((at.y() - frame.minY()) / CELL);
      if (column >= 0 && column < columns && row >= 0 && row < rows) {
        cells[row * columns + column] = true;
      }
    }
  }

  private void mark(List<Point> polygon) {
    for (int row = 0; row < rows; row++) {
      double y = frame.minY() + (row + 0.5) * CELL;
      List<Double> crossings = new ArrayList<>();
      for (int i = 1; i < polygon.size(); i++) {
        Point a = polygon.get(i - 1);
        Point b = polygon.get(i);
        if (a.y() <= y != b.y() <= y) {
          crossings.add(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
      }
      crossings.sort(Comparator.naturalOrder());
      for (int i = 1; i < crossings.size(); i += 2) {
        int from = (int) Math.max(0, Math.ceil((crossings.get(i - 1) - frame.minX()) / CELL - 0.5));
        int to =
            (int) Math.min(columns - 1, Math.floor((crossings.get(i) - frame.minX()) / CELL - 0.5));
        for (int column = from; column <= to; column++) {
          cells[row * columns + column] = true;
        }
      }
    }
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
  int count(Box box) {
    int left = clamp((int) Math.floor((box.minX() - frame.minX()) / CELL), columns);
    int right = clamp((int) Math.ceil((box.maxX() - frame.minX()) / CELL), columns);
    int top = clamp((int) Math.floor((box.minY() - frame.minY()) / CELL), rows);
    int bottom = clamp((int) Math.ceil((box.maxY() - frame.minY()) / CELL), rows);
    int width = columns + 1;
    return sums[bottom * width + right]
        - sums[top * width + right]
        - sums[bottom * width + left]
        + sums[top * width + left];
  }

  /** How much of a box is marked, in square millimetres. */
  double area(Box box) {
    return count(box) * CELL * CELL;
  }

  private static int clamp(int value, int most) {
    return Math.max(0, Math.min(most, value));
  }
}
