package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An island with some shapes on it. Adding a shape gives a new board, so that what has been found
 * out about one stays true.
 */
final class Board {
  private final CellGrid cells;
  private final List<PlacedShape> puts;
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

  /** An empty island of one tile for shapes that have so many turns in all. */
  Board(CellGrid cells, int turns) {
    this(cells, turns, 1, 1);
  }

  private Board(CellGrid cells, int turns, int columns, int tileRows) {
    this(
        cells,
        List.of(),
        new int[0][],
        0,
        0,
        Tally.empty(columns, tileRows),
        0,
        new Place[turns],
        new Place[turns],
        new int[0]);
  }

  private Board(
      CellGrid cells,
      List<PlacedShape> puts,
      int[][] rows,
      int lastRow,
      int right,
      Tally tally,
      long used,
      Place[] known,
      Place[] hints,
      int[] gaps) {
    this.cells = cells;
    this.puts = puts;
    this.rows = rows;
    this.lastRow = lastRow;
    this.right = right;
    this.columns = tally.columns();
    this.tileRows = tally.rows();
    this.tally = tally;
    this.used = used;
    this.known = known;
    this.hints = hints;
    this.gaps = gaps;
    this.growing = new Place[known.length];
  }

  List<PlacedShape> puts() {
    return puts;
  }

  /** Its tiles in cells. */
  CellGrid cells() {
    return cells;
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
    return row < lastRow ? rows[row] : Runs.NONE;
  }

  /** The cells of its tiles, used or not. */
  long room() {
    return (long) cells.cellsAcross(columns) * cells.cellsDown(tileRows) - used;
  }

  /**
   * At least the cells that are free in a range of tiles, some of which the board may not have yet.
   */
  long roomIn(int left, int right, int top, int bottom) {
    long tile = (long) cells.cellsAcross(1) * cells.cellsDown(1);
    long sum = 0;
    for (int r = top; r <= bottom; r++) {
      for (int c = left; c <= right; c++) {
        // Rows and columns on a line between tiles count for both.
        long taken = r < tileRows && c < columns ? tally.cells()[r][c] : 0;
        sum += tile - Math.max(0, taken - 2L * (cells.cellsAcross(1) + cells.cellsDown(1)));
      }
    }
    return sum;
  }

  /** The share of its used tiles that is free, in tiles. */
  double free() {
    double tile = (double) cells.cellsAcross(1) * cells.cellsDown(1);
    return tiles() - used / tile;
  }

  /** The share of a tile that is covered. */
  double filled(int row, int column) {
    return tally.cells()[row][column] / ((double) cells.cellsAcross(1) * cells.cellsDown(1));
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
  boolean reaches(PlacedShape put, int row, int column) {
    return cells.column(put.x() + 1e-6, columns) <= column
        && column <= cells.column(put.x() + put.turned().width() - 1e-6, columns)
        && cells.tileRow(put.y() + 1e-6, tileRows) <= row
        && row <= cells.tileRow(put.y() + put.turned().height() - 1e-6, tileRows);
  }

  /** An empty island of a size. */
  Board sized(int columnCount, int rowCount) {
    return new Board(cells, known.length, columnCount, rowCount);
  }

  Board with(PlacedShape put) {
    Turned turned = put.turned();
    List<PlacedShape> newPuts = new ArrayList<>(puts);
    newPuts.add(put);
    Raster grown = turned.grown();
    int bottom = Math.max(lastRow, put.y() + grown.top() + grown.height());
    int edge = Math.max(right, put.x() + grown.width());
    int[][] taken = Arrays.copyOf(rows, bottom);
    Arrays.fill(taken, lastRow, bottom, Runs.NONE);
    // What is fixed lies inside its island, whatever its cells take beyond it.
    int across =
        put.fixed() ? columns : Math.max(columns, cells.columnsFor(put.x() + turned.width()));
    int down =
        put.fixed() ? tileRows : Math.max(tileRows, cells.rowsFor(put.y() + turned.height()));
    boolean same = across == columns && down == tileRows;
    int[] free = Arrays.copyOf(gaps, bottom);
    int end = cells.cellsAcross(across);
    Arrays.fill(free, lastRow, bottom, end);
    for (int i = 0; i < grown.height(); i++) {
      int row = put.y() + grown.top() + i;
      if (row >= 0) {
        taken[row] = Runs.together(taken[row], grown.rows()[i], put.x());
        free[row] = Runs.longestFree(taken[row], end);
      }
    }
    for (int row = 0; !same && row < bottom; row++) {
      free[row] = Runs.longestFree(taken[row], end);
    }
    // Where tiles meet depends on whether there is a next one.
    Tally newTally = same ? tally.copy() : Tally.of(cells, across, down, newPuts);
    if (same) {
      newTally.add(put, cells);
    }
    return new Board(
        cells,
        newPuts,
        taken,
        bottom,
        edge,
        newTally,
        used + turned.cells(),
        same ? stillImpossible() : new Place[known.length],
        same ? stillWorthTrying() : new Place[known.length],
        free);
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
      joins = tally.joinCount();
    }
    return joins;
  }

  /** Counts the tiles that a shape alone would touch. */
  int tilesOf(PlacedShape put) {
    return Tally.of(
            cells,
            cells.columnsFor(put.x() + put.turned().width()),
            cells.rowsFor(put.y() + put.turned().height()),
            List.of(put))
        .tileCount();
  }
}
