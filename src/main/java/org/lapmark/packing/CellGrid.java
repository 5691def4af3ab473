package org.lapmark.packing;

import org.lapmark.geometry.Whole;

/**
 * An island of tiles in cells, which count from {@link TileGrid#edge} inside its corner; they are 1
 * mm wide and {@link Turned#ROW} mm high.
 *
 * @param grid the tiles
 */
record CellGrid(TileGrid grid) {
  /** The cells across an island of some columns. */
  int cellsAcross(int columnCount) {
    return (int) ((columnCount - 1) * grid.stepX() + grid.width() - 2 * grid.edge() + 1e-6);
  }

  /** The rows of cells down an island of some rows of tiles. */
  int cellsDown(int rowCount) {
    double height = (rowCount - 1) * grid.stepY() + grid.height() - 2 * grid.edge();
    return (int) (height / Turned.ROW + 1e-6);
  }

  /** The least number of columns that shows so many cells. */
  int columnsFor(int cells) {
    return grid.columns(cells + grid.edge());
  }

  /** The least number of rows of tiles that shows so many rows of cells. */
  int rowsFor(int cells) {
    return grid.rows(cells * Turned.ROW + grid.edge());
  }

  /** The column in whose core a place in cells lies. */
  int column(double cell, int columnCount) {
    return grid.column(cell + grid.edge(), columnCount);
  }

  /** The row of tiles in whose core a place in rows of cells lies. */
  int tileRow(double cell, int rowCount) {
    return grid.row(cell * Turned.ROW + grid.edge(), rowCount);
  }

  /** The first cell that lies wholly right of the line where a column begins. */
  int firstCellOfColumn(int column) {
    return Whole.ceil(grid.seamX(column) - grid.edge() - 1e-6);
  }

  /** The first row of cells that lies wholly below the line where a row of tiles begins. */
  int firstCellOfRow(int row) {
    return Whole.ceil((grid.seamY(row) - grid.edge()) / Turned.ROW - 1e-6);
  }

  /** Where two columns meet, in cells. */
  double seamX(int column) {
    return grid.seamX(column) - grid.edge();
  }

  /** Where two rows of tiles meet, in rows of cells. */
  double seamY(int row) {
    return (grid.seamY(row) - grid.edge()) / Turned.ROW;
  }
}
