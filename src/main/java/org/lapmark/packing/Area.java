package org.lapmark.packing;

/**
 * Places that cost the same.
 *
 * @param cost what each of them costs
 * @param left the first cell
 * @param right the last cell
 * @param top the first row of cells
 * @param bottom the last row of cells
 */
record Area(Place cost, int left, int right, int top, int bottom) {
  /** How far what must lie in one tile keeps from where tiles meet, in cells. */
  static final int OFF_LINE = 2;

  /** The places of an area in a tile that keep away from where it meets others; null for none. */
  Area offLines(CellGrid grid, Turned turned, int column, int row) {
    int fromLine = column == 0 ? 0 : grid.firstCellOfColumn(column) + OFF_LINE;
    int belowLine = row == 0 ? 0 : grid.firstCellOfRow(row) + OFF_LINE;
    // Further tiles may come to lie right and below.
    int toLine = grid.firstCellOfColumn(column + 1) - OFF_LINE - turned.width();
    int aboveLine = grid.firstCellOfRow(row + 1) - OFF_LINE - turned.height();
    Area inner =
        new Area(
            cost,
            Math.max(left, fromLine),
            Math.min(right, toLine),
            Math.max(top, belowLine),
            Math.min(bottom, aboveLine));
    return inner.left <= inner.right && inner.top <= inner.bottom ? inner : null;
  }
}
