package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An island with some shapes on it. Adding a shape gives a new board, so that what has been found
 * out about one stays true. Cells count from {@link TileGrid#edge} inside its corner; they are 1 mm
 * wide and {@link Turned#ROW} mm high.
 */
final class Board {
  private static final int[] NOTHING = {};

  private final TileGrid grid;
  private final List<Put> puts;
  private final int[][] rows;
  private final int lastRow;
  private final int right;
  private final int columns;
  private final int tileRows;
  private final Tally tally;
  private final long used;
  private final Place[] known;
  private final Place[] hints;
  private final int[] gaps;
  private final Place[] growing;
  private int tiles = -1;
  private int joins = -1;

  /** A shape at a place, in cells. */
  record Put(int shape, Turned turned, int x, int y, boolean fixed) {}

  /** Which tiles carry something and where a shape runs from one into the next. */
  record Tally(int[][] cells, boolean[][] right, boolean[][] down) {
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
  }

  /** An empty island for shapes that have so many turns in all. */
  Board(TileGrid grid, int turns) {
    this(
        grid,
        List.of(),
        new int[0][],
        0,
        0,
        1,
        1,
        null,
        0,
        new Place[turns],
        new Place[turns],
        new int[0]);
  }

  private Board(
      TileGrid grid,
      List<Put> puts,
      int[][] rows,
      int lastRow,
      int right,
      int columns,
      int tileRows,
      Tally tally,
      long used,
      Place[] known,
      Place[] hints,
      int[] gaps) {
    this.grid = grid;
    this.puts = puts;
    this.rows = rows;
    this.lastRow = lastRow;
    this.right = right;
    this.columns = columns;
    this.tileRows = tileRows;
    this.tally = tally == null ? empty(tileRows, columns) : tally;
    this.used = used;
    this.known = known;
    this.hints = hints;
    this.gaps = gaps;
    this.growing = new Place[known.length];
  }

  private static Tally empty(int tileRows, int columns) {
    return new Tally(
        new int[tileRows][columns], new boolean[tileRows][columns], new boolean[tileRows][columns]);
  }

  List<Put> puts() {
    return puts;
  }

  TileGrid grid() {
    return grid;
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

  /** The row of cells below all shapes and their gaps. */
  int lastRow() {
    return lastRow;
  }

  /** The cell right of all shapes and their gaps. */
  int right() {
    return right;
  }

  /** What is known of a turn's best place on this board; null when nothing is. */
  Place known(int turn) {
    return known[turn];
  }

  /**
   * A place that cost nothing when the board was emptier; on a board of one tile there is no better
   * one since. Null when there is none.
   */
  Place hint(int turn) {
    return hints[turn];
  }

  /** The longest free stretch of a row up to the island's right side, in cells. */
  int gap(int row) {
    return row < lastRow ? gaps[row] : Integer.MAX_VALUE;
  }

  void learn(int turn, Place place) {
    known[turn] = place;
  }

  /** What is known of a turn's best place when the board may become larger. */
  Place growing(int turn) {
    return growing[turn];
  }

  void learnGrowing(int turn, Place place) {
    growing[turn] = place;
  }

  /** The runs of a row that are taken: starts and (exclusive) ends in turn, ascending. */
  int[] row(int row) {
    return row < lastRow ? rows[row] : NOTHING;
  }

  /** The cells of its tiles, used or not. */
  long room() {
    return (long) cellsAcross(columns) * cellsDown(tileRows) - used;
  }

  /**
   * At least the cells that are free in a range of tiles, some of which the board may not have yet.
   */
  long roomIn(int left, int right, int top, int bottom) {
    long tile = (long) cellsAcross(1) * cellsDown(1);
    long sum = 0;
    for (int r = top; r <= bottom; r++) {
      for (int c = left; c <= right; c++) {
        // Rows and columns on a line between tiles count for both.
        long taken = r < tileRows && c < columns ? tally.cells()[r][c] : 0;
        sum += tile - Math.max(0, taken - 2L * (cellsAcross(1) + cellsDown(1)));
      }
    }
    return sum;
  }

  /** The share of its used tiles that is free, in tiles. */
  double free() {
    double tile = (double) cellsAcross(1) * cellsDown(1);
    return tiles() - used / tile;
  }

  /** The share of a tile that is covered. */
  double filled(int row, int column) {
    return tally.cells()[row][column] / ((double) cellsAcross(1) * cellsDown(1));
  }

  /** How unevenly its tiles are filled: the sum of their shares' squares. */
  double uneven() {
    double sum = 0;
    for (int row = 0; row < tileRows; row++) {
      for (int column = 0; column < columns; column++) {
        sum += filled(row, column) * filled(row, column);
      }
    }
    return sum;
  }

  /** Whether the box around a shape reaches into a tile. */
  boolean reaches(Put put, int row, int column) {
    return column(put.x() + 1e-6, columns) <= column
        && column <= column(put.x() + put.turned().width() - 1e-6, columns)
        && tileRow(put.y() + 1e-6, tileRows) <= row
        && row <= tileRow(put.y() + put.turned().height() - 1e-6, tileRows);
  }

  /** The cells across an island of some columns. */
  int cellsAcross(int columnCount) {
    return (int) ((columnCount - 1) * grid.stepX() + grid.width() - 2 * grid.edge() + 1e-6);
  }

  /** The rows of cells down an island of some rows of tiles. */
  int cellsDown(int rowCount) {
    double height = (rowCount - 1) * grid.stepY() + grid.height() - 2 * grid.edge();
    return (int) (height / Turned.ROW + 1e-6);
  }

  int columnsFor(int cells) {
    return grid.columns(cells + grid.edge());
  }

  int rowsFor(int cells) {
    return grid.rows(cells * Turned.ROW + grid.edge());
  }

  int column(double cell, int columnCount) {
    return grid.column(cell + grid.edge(), columnCount);
  }

  int tileRow(double cell, int rowCount) {
    return grid.row(cell * Turned.ROW + grid.edge(), rowCount);
  }

  /** The first cell that lies wholly right of the line where a column begins. */
  int firstCellOfColumn(int column) {
    return (int) Math.ceil(grid.seamX(column) - grid.edge() - 1e-6);
  }

  /** The first row of cells that lies wholly below the line where a row of tiles begins. */
  int firstCellOfRow(int row) {
    return (int) Math.ceil((grid.seamY(row) - grid.edge()) / Turned.ROW - 1e-6);
  }

  /** An empty island of a size. */
  Board sized(int columnCount, int rowCount) {
    return new Board(
        grid,
        List.of(),
        new int[0][],
        0,
        0,
        columnCount,
        rowCount,
        null,
        0,
        new Place[known.length],
        new Place[known.length],
        new int[0]);
  }

  Board with(Put put) {
    Turned turned = put.turned();
    List<Put> newPuts = new ArrayList<>(puts);
    newPuts.add(put);
    Raster grown = turned.grown();
    int bottom = Math.max(lastRow, put.y() + grown.top() + grown.height());
    int edge = Math.max(right, put.x() + grown.width());
    int[][] taken = Arrays.copyOf(rows, bottom);
    Arrays.fill(taken, lastRow, bottom, NOTHING);
    // What is fixed lies inside its island, whatever its cells take beyond it.
    int across = put.fixed() ? columns : Math.max(columns, columnsFor(put.x() + turned.width()));
    int down = put.fixed() ? tileRows : Math.max(tileRows, rowsFor(put.y() + turned.height()));
    boolean same = across == columns && down == tileRows;
    int[] free = Arrays.copyOf(gaps, bottom);
    int end = cellsAcross(across);
    Arrays.fill(free, lastRow, bottom, end);
    for (int i = 0; i < grown.height(); i++) {
      int row = put.y() + grown.top() + i;
      if (row >= 0) {
        taken[row] = take(taken[row], grown.rows()[i], put.x());
        free[row] = longestFree(taken[row], end);
      }
    }
    for (int row = 0; !same && row < bottom; row++) {
      free[row] = longestFree(taken[row], end);
    }
    // Where tiles meet depends on whether there is a next one.
    Tally newTally = same ? tally.copy() : empty(down, across);
    for (Put each : same ? List.of(put) : newPuts) {
      tally(each, across, down, newTally);
    }
    return new Board(
        grid,
        newPuts,
        taken,
        bottom,
        edge,
        across,
        down,
        newTally,
        used + turned.cells(),
        same ? stillImpossible() : new Place[known.length],
        same ? stillWorthTrying() : new Place[known.length],
        free);
  }

  private static int longestFree(int[] runs, int end) {
    int longest = 0;
    int from = 0;
    for (int i = 0; i < runs.length; i += 2) {
      longest = Math.max(longest, runs[i] - from);
      from = runs[i + 1];
    }
    return Math.max(longest, end - from);
  }

  private Place[] stillWorthTrying() {
    Place[] kept = new Place[known.length];
    for (int i = 0; i < kept.length; i++) {
      Place place = known[i] == null ? hints[i] : known[i];
      kept[i] = place != null && place.turn() >= 0 && place.costsNothing() ? place : null;
    }
    return kept;
  }

  /** What had no room has none on a fuller board. */
  private Place[] stillImpossible() {
    Place[] kept = new Place[known.length];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = known[i] == Place.NONE ? Place.NONE : null;
    }
    return kept;
  }

  private static int[] take(int[] before, int[] runs, int shift) {
    int[] merged = new int[before.length + runs.length];
    int size = 0;
    int i = 0;
    int k = 0;
    while (i < before.length || k < runs.length) {
      boolean old = k >= runs.length || (i < before.length && before[i] <= runs[k] + shift);
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
    return Arrays.copyOf(merged, size);
  }

  /** How many tiles carry something. */
  int tiles() {
    if (tiles < 0) {
      tiles = tally.tileCount();
    }
    return tiles;
  }

  /** Neighbours that share a shape are joined, and so are those that hang together otherwise. */
  int joins() {
    if (joins < 0) {
      joins = countJoins();
    }
    return joins;
  }

  private int countJoins() {
    int[] group = new int[tileRows * columns];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int r = 0; r < tileRows; r++) {
      for (int c = 0; c < columns; c++) {
        if (tally.right()[r][c]) {
          merge(group, r * columns + c, r * columns + c + 1);
        }
        if (tally.down()[r][c]) {
          merge(group, r * columns + c, (r + 1) * columns + c);
        }
      }
    }
    int count = 0;
    for (int r = 0; r < tileRows; r++) {
      for (int c = 0; c < columns; c++) {
        if (!tally.carries(r, c)) {
          continue;
        }
        int own = find(group, r * columns + c);
        if (c + 1 < columns && tally.carries(r, c + 1) && own == find(group, r * columns + c + 1)) {
          count++;
        }
        if (r + 1 < tileRows
            && tally.carries(r + 1, c)
            && own == find(group, (r + 1) * columns + c)) {
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

  /** Counts the tiles that a shape alone would touch. */
  int tilesOf(Put put) {
    int across = columnsFor(put.x() + put.turned().width());
    int down = rowsFor(put.y() + put.turned().height());
    Tally result = empty(down, across);
    tally(put, across, down, result);
    return result.tileCount();
  }

  private void tally(Put put, int across, int down, Tally result) {
    Raster raster = put.turned().body();
    int[][] body = raster.rows();
    int top = put.y() + raster.top();
    for (int i = 0; i < body.length; i++) {
      int y = top + i;
      int firstRow = tileRow(y + 1e-6, down);
      int lastTileRow = tileRow(y + 1 - 1e-6, down);
      for (int k = 0; k < body[i].length; k += 2) {
        int from = column(put.x() + body[i][k] + 1e-6, across);
        int to = column(put.x() + body[i][k + 1] - 1e-6, across);
        for (int r = firstRow; r <= lastTileRow; r++) {
          for (int c = from; c <= to; c++) {
            int begin = Math.max(put.x() + body[i][k], c == 0 ? 0 : firstCellOfColumn(c) - 1);
            int end =
                Math.min(
                    put.x() + body[i][k + 1],
                    c + 1 == across ? Integer.MAX_VALUE : firstCellOfColumn(c + 1));
            result.cells()[r][c] += Math.max(1, end - begin);
            result.right()[r][c] |= c < to;
          }
        }
      }
      // Where two rows of tiles meet, cells on both sides at the same column join them.
      boolean between = lastTileRow > firstRow;
      if (between || (i + 1 < body.length && tileRow(y + 1 + 1e-6, down) > lastTileRow)) {
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
