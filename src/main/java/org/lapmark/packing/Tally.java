package org.lapmark.packing;

import java.util.List;

/**
 * Which tiles carry something and where a shape runs from one into the next.
 *
 * @param cells how many cells are covered, by row and column of the tiles
 * @param right whether a shape runs on into the tile to the right
 * @param down whether one runs on into the tile below
 */
record Tally(int[][] cells, boolean[][] right, boolean[][] down) {
  static Tally empty(int columns, int tileRows) {
    return new Tally(
        new int[tileRows][columns], new boolean[tileRows][columns], new boolean[tileRows][columns]);
  }

  static Tally of(CellGrid grid, int columns, int tileRows, List<PlacedShape> puts) {
    Tally tally = empty(columns, tileRows);
    puts.forEach(put -> tally.add(put, grid));
    return tally;
  }

  int rows() {
    return cells.length;
  }

  int columns() {
    return cells[0].length;
  }

  /** How many tiles carry something. */
  int tileCount() {
    int sum = 0;
    for (int[] row : cells) {
      for (int count : row) {
        sum += count > 0 ? 1 : 0;
      }
    }
    return sum;
  }

  boolean carries(int row, int column) {
    return cells[row][column] > 0;
  }

  Tally copy() {
    int[][] copied = new int[cells.length][];
    for (int i = 0; i < cells.length; i++) {
      copied[i] = cells[i].clone();
    }
    return new Tally(copied, copy(right), copy(down));
  }

  private static boolean[][] copy(boolean[][] flags) {
    boolean[][] copy = new boolean[flags.length][];
    for (int i = 0; i < flags.length; i++) {
      copy[i] = flags[i].clone();
    }
    return copy;
  }

  /** Neighbours that share a shape are joined, and so are those that hang together otherwise. */
  int joinCount() {
    int tileRows = rows();
    int columns = columns();
    int[] group = new int[tileRows * columns];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int r = 0; r < tileRows; r++) {
      for (int c = 0; c < columns; c++) {
        if (right[r][c]) {
          merge(group, r * columns + c, r * columns + c + 1);
        }
        if (down[r][c]) {
          merge(group, r * columns + c, (r + 1) * columns + c);
        }
      }
    }
    int count = 0;
    for (int r = 0; r < tileRows; r++) {
      for (int c = 0; c < columns; c++) {
        if (!carries(r, c)) {
          continue;
        }
        int own = find(group, r * columns + c);
        if (c + 1 < columns && carries(r, c + 1) && own == find(group, r * columns + c + 1)) {
          count++;
        }
        if (r + 1 < tileRows && carries(r + 1, c) && own == find(group, (r + 1) * columns + c)) {
          count++;
        }
      }
    }
    return count;
  }

  private static int find(int[] group, int of) {
    int i = of;
    while (group[i] != i) {
      i = group[i];
    }
    return i;
  }

  private static void merge(int[] group, int a, int b) {
    group[find(group, b)] = find(group, a);
  }

  /** Adds what a shape covers. */
  void add(PlacedShape put, CellGrid grid) {
    int tileRows = rows();
    int columns = columns();
    Raster raster = put.turned().body();
    int[][] body = raster.rows();
    int top = put.y() + raster.top();
    for (int i = 0; i < body.length; i++) {
      int y = top + i;
      int firstRow = grid.tileRow(y + 1e-6, tileRows);
      int lastTileRow = grid.tileRow(y + 1 - 1e-6, tileRows);
      for (int k = 0; k < body[i].length; k += 2) {
        int from = grid.column(put.x() + body[i][k] + 1e-6, columns);
        int to = grid.column(put.x() + body[i][k + 1] - 1e-6, columns);
        for (int r = firstRow; r <= lastTileRow; r++) {
          for (int c = from; c <= to; c++) {
            int begin = Math.max(put.x() + body[i][k], c == 0 ? 0 : grid.firstCellOfColumn(c) - 1);
            int end =
                Math.min(
                    put.x() + body[i][k + 1],
                    c + 1 == columns ? Integer.MAX_VALUE : grid.firstCellOfColumn(c + 1));
            cells[r][c] += Math.max(1, end - begin);
            right[r][c] |= c < to;
          }
        }
      }
      // Where two rows of tiles meet, cells on both sides at the same column join them.
      boolean between = lastTileRow > firstRow;
      if (between || (i + 1 < body.length && grid.tileRow(y + 1 + 1e-6, tileRows) > lastTileRow)) {
        int upper = between ? firstRow : lastTileRow;
        int[] next = between ? body[i] : body[i + 1];
        for (int a = 0; a < body[i].length; a += 2) {
          for (int b = 0; b < next.length; b += 2) {
            int from = Math.max(body[i][a], next[b]);
            int to = Math.min(body[i][a + 1], next[b + 1]);
            if (from < to) {
              int first = grid.column(put.x() + from + 1e-6, columns);
              int last = grid.column(put.x() + to - 1e-6, columns);
              for (int c = first; c <= last; c++) {
                down[upper][c] = true;
              }
            }
          }
        }
      }
    }
  }
}
