package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lapmark.geometry.Whole;

/**
 * Divides the places of one turn of a shape on a board into areas that cost the same.
 *
 * @param board the board
 * @param turned the shape
 * @param turn which turn that is
 * @param inOneTile whether it must lie in one tile
 * @param limit what costs more is left out
 * @param work counts what dividing takes
 */
record Areas(Board board, Turned turned, int turn, boolean inOneTile, Place limit, Work work) {
  /**
   * An edge of a shape nearer than this to where tiles meet, in cells, would lie on the line along
   * which they are trimmed.
   */
  private static final double ON_LINE = 0.15;

  /**
   * The areas, the cheapest first.
   *
   * @param across the last cell at which the shape may begin
   * @param down the last row of cells
   * @param columns how many columns the board may have
   * @param rows how many rows of tiles
   */
  List<Area> of(int across, int down, int columns, int rows) {
    List<Area> areas = new ArrayList<>();
    List<int[]> sideways = stretches(across, turned.width(), columns, board.cells(), true);
    work.add(4L * sideways.size() * Math.min(rows, 8));
    for (int[] v : stretches(down, turned.height(), rows, board.cells(), false)) {
      for (int[] h : sideways) {
        Place cost = weigh(h[0], v[0]);
        if (cost == null || (limit.turn() >= 0 && cost.compareCost(limit) > 0)) {
          continue;
        }
        if (board.roomIn(h[2], h[3], v[2], v[3]) < turned.cells()) {
          continue;
        }
        Area area = new Area(cost, h[0], h[1], v[0], v[1]);
        if (inOneTile) {
          area =
              h[2] == h[3] && v[2] == v[3]
                  ? area.offLines(board.cells(), turned, h[2], v[2])
                  : null;
        }
        if (area != null) {
          areas.add(area);
        }
      }
    }
    areas.sort((a, b) -> a.cost().compareCost(b.cost()));
    return areas;
  }

  /**
   * Divides the places at which a shape can begin into stretches with the same first and last tile.
   * Each is the first place, the last place, the first tile and the last tile.
   */
  private static List<int[]> stretches(
      int last, int size, int tiles, CellGrid grid, boolean sideways) {
    int[] starts = new int[3 * tiles];
    int count = 1;
    for (int tile = 1; tile < tiles; tile++) {
      double line = sideways ? grid.seamX(tile) : grid.seamY(tile);
      starts[count++] = Whole.ceil(line - 1e-6);
      starts[count++] = Whole.ceil(line + 1e-6) - size;
      // An island becomes larger only when its last window is passed.
      starts[count++] = (sideways ? grid.cellsAcross(tile) : grid.cellsDown(tile)) - size + 1;
    }
    Arrays.sort(starts, 0, count);
    List<int[]> stretches = new ArrayList<>(count);
    int[] previous = null;
    for (int i = 0; i < count; i++) {
      int at = starts[i];
      if (at < 0 || at > last || (previous != null && previous[0] == at)) {
        continue;
      }
      double end = at + size - 1e-6;
      int from = sideways ? grid.column(at + 1e-6, tiles) : grid.tileRow(at + 1e-6, tiles);
      int to = sideways ? grid.column(end, tiles) : grid.tileRow(end, tiles);
      if (previous != null) {
        previous[1] = at - 1;
      }
      previous = new int[] {at, last, from, to};
      stretches.add(previous);
    }
    for (int tile = 1; tile < tiles; tile++) {
      double line = sideways ? grid.seamX(tile) : grid.seamY(tile);
      int nearest = (int) Math.rint(line);
      if (Math.abs(nearest - line) < ON_LINE) {
        leaveOut(stretches, nearest);
        leaveOut(stretches, nearest - size);
      }
    }
    return stretches;
  }

  /** Takes one place out of its stretch. */
  private static void leaveOut(List<int[]> stretches, int at) {
    for (int i = 0; i < stretches.size(); i++) {
      int[] old = stretches.get(i);
      if (old[0] <= at && at <= old[1]) {
        stretches.remove(i);
        if (at < old[1]) {
          stretches.add(i, new int[] {at + 1, old[1], old[2], old[3]});
        }
        if (old[0] < at) {
          stretches.add(i, new int[] {old[0], at - 1, old[2], old[3]});
        }
        return;
      }
    }
  }

  /** What a place costs; null when it takes more new tiles than a limit. */
  private Place weigh(int x, int y) {
    CellGrid grid = board.cells();
    int columns = Math.max(board.columns(), grid.columnsFor(x + turned.width()));
    int rows = Math.max(board.tileRows(), grid.rowsFor(y + turned.height()));
    int left = grid.column(x + 1e-6, columns);
    int right = grid.column(x + turned.width() - 1e-6, columns);
    int top = grid.tileRow(y + 1e-6, rows);
    int bottom = grid.tileRow(y + turned.height() - 1e-6, rows);
    int needless =
        right
            - left
            + bottom
            - top
            - (grid.columnsFor(turned.width()) - 1)
            - (grid.rowsFor(turned.height()) - 1);
    int newTiles = 0;
    int newJoins = 0;
    Tally tally = board.current();
    for (int r = top; r <= bottom; r++) {
      if (newTiles > limit.newTiles()) {
        return null;
      }
      for (int c = left; c <= right; c++) {
        boolean known = r < board.tileRows() && c < board.columns();
        newTiles += known && tally.carries(r, c) ? 0 : 1;
        newJoins += c == right || (known && tally.right()[r][c]) ? 0 : 1;
        newJoins += r == bottom || (known && tally.down()[r][c]) ? 0 : 1;
      }
    }
    return new Place(newTiles, newJoins, needless, x, y, turn);
  }
}
