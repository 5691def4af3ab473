package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** An island while it is being filled. Cells count from {@link TileGrid#edge} inside its corner. */
final class Board {
  private static final int[] NOTHING = {};

  private final TileGrid grid;
  private final List<Put> puts = new ArrayList<>();
  private int[][] rows = new int[0][];
  private int[] counts = new int[0];
  private int lastRow;
  private int columns = 1;
  private int tileRows = 1;
  private Tally tally;

  /** A shape at a place, in cells. */
  record Put(int shape, Turned turned, int x, int y) {}

  /** Which tiles carry something and where a shape runs from one into the next. */
  record Tally(boolean[][] tiles, boolean[][] right, boolean[][] down) {
    int tileCount() {
      return count(tiles);
    }

    int joinCount() {
      return count(right) + count(down);
    }

    private static int count(boolean[][] flags) {
      int sum = 0;
      for (boolean[] row : flags) {
        for (boolean flag : row) {
          sum += flag ? 1 : 0;
        }
      }
      return sum;
    }
  }

  Board(TileGrid grid) {
    this.grid = grid;
    this.tally = tally();
  }

  List<Put> puts() {
    return puts;
  }

  int columns() {
    return columns;
  }

  int tileRows() {
    return tileRows;
  }

  Tally current() {
    return tally;
  }

  /** The runs taken in a row; only the first {@link #runCount} numbers count. */
  int[] runs(int row) {
    return row < lastRow ? rows[row] : NOTHING;
  }

  int runCount(int row) {
    return row < lastRow ? counts[row] : 0;
  }

  /** The cells across an island of some columns. */
  int cellsAcross(int columnCount) {
    return (int) ((columnCount - 1) * grid.stepX() + grid.width() - 2 * grid.edge() + 1e-6);
  }

  /** The cells down an island of some rows. */
  int cellsDown(int rowCount) {
    return (int) ((rowCount - 1) * grid.stepY() + grid.height() - 2 * grid.edge() + 1e-6);
  }

  int columnsFor(int cells) {
    return grid.columns(cells + grid.edge());
  }

  int rowsFor(int cells) {
    return grid.rows(cells + grid.edge());
  }

  int column(double cell, int columnCount) {
    return grid.column(cell + grid.edge(), columnCount);
  }

  int row(double cell, int rowCount) {
    return grid.row(cell + grid.edge(), rowCount);
  }

  /** The first cell that lies wholly right of the line where a column begins. */
  int firstCellOfColumn(int column) {
    return (int) Math.ceil(grid.seamX(column) - grid.edge() - 1e-6);
  }

  /** The first cell that lies wholly below the line where a row begins. */
  int firstCellOfRow(int row) {
    return (int) Math.ceil(grid.seamY(row) - grid.edge() - 1e-6);
  }

  void put(Put put) {
    puts.add(put);
    Raster grown = put.turned().grown();
    for (int i = 0; i < grown.height(); i++) {
      int row = put.y() + grown.top() + i;
      if (row >= 0) {
        take(row, grown.rows()[i], put.x());
      }
    }
    columns = Math.max(columns, columnsFor(put.x() + put.turned().width()));
    tileRows = Math.max(tileRows, rowsFor(put.y() + put.turned().height()));
    tally = tally();
  }

  private void take(int row, int[] runs, int shift) {
    if (row >= rows.length) {
      int size = Math.max(row + 1, 2 * rows.length + 64);
      int old = rows.length;
      rows = Arrays.copyOf(rows, size);
      counts = Arrays.copyOf(counts, size);
      Arrays.fill(rows, old, size, NOTHING);
    }
    lastRow = Math.max(lastRow, row + 1);
    int[] before = rows[row];
    int count = counts[row];
    int[] merged = new int[count + runs.length];
    int size = 0;
    int i = 0;
    int k = 0;
    while (i < count || k < runs.length) {
      boolean old = k >= runs.length || (i < count && before[i] <= runs[k] + shift);
      int from = old ? before[i] : runs[k] + shift;
      int to = old ? before[i + 1] : runs[k + 1] + shift;
      if (old) {
        i += 2;
      } else {
        k += 2;
      }
      if (size > 0 && from <= merged[size - 1]) {
        merged[size - 1] = Math.max(merged[size - 1], to);
      } else {
        merged[size++] = from;
        merged[size++] = to;
      }
    }
    rows[row] = merged;
    counts[row] = size;
  }

  private Tally tally() {
    Tally result =
        new Tally(
            new boolean[tileRows][columns],
            new boolean[tileRows][columns],
            new boolean[tileRows][columns]);
    for (Put put : puts) {
      tally(put, columns, tileRows, result);
    }
    return result;
  }

  /** Counts the tiles that a shape alone would touch. */
  int tilesOf(Put put) {
    int across = columnsFor(put.x() + put.turned().width());
    int down = rowsFor(put.y() + put.turned().height());
    Tally result =
        new Tally(new boolean[down][across], new boolean[down][across], new boolean[down][across]);
    tally(put, across, down, result);
    return result.tileCount();
  }

  private void tally(Put put, int across, int down, Tally result) {
    int[][] body = put.turned().body().rows();
    for (int i = 0; i < body.length; i++) {
      int y = put.y() + i;
      int firstRow = row(y + 1e-6, down);
      int lastTileRow = row(y + 1 - 1e-6, down);
      for (int k = 0; k < body[i].length; k += 2) {
        int from = column(put.x() + body[i][k] + 1e-6, across);
        int to = column(put.x() + body[i][k + 1] - 1e-6, across);
        for (int r = firstRow; r <= lastTileRow; r++) {
          for (int c = from; c <= to; c++) {
            result.tiles()[r][c] = true;
            result.right()[r][c] |= c < to;
          }
        }
      }
      // Where two rows of tiles meet, cells on both sides at the same column join them.
      boolean between = lastTileRow > firstRow;
      if (between || (i + 1 < body.length && row(y + 1 + 1e-6, down) > lastTileRow)) {
        int upper = between ? firstRow : lastTileRow;
        int[] next = between ? body[i] : body[i + 1];
        for (int a = 0; a < body[i].length; a += 2) {
          for (int b = 0; b < next.length; b += 2) {
            int from = Math.max(body[i][a], next[b]);
            int to = Math.min(body[i][a + 1], next[b + 1]);
            if (from < to) {
              int first = column(put.x() + from + 1e-6, across);
              int last = column(put.x() + to - 1e-6, across);
              for (int c = first; c <= last; c++) {
                result.down()[upper][c] = true;
              }
            }
          }
        }
      }
    }
  }
}
