package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Point;

/** Finds free places on boards, and counts the work this takes. */
final class Searcher {
  /**
   * An edge of a shape nearer than this to where tiles meet, in cells, would lie on the line along
   * which they are trimmed.
   */
  private static final double ON_LINE = 0.15;

  /** How far what must lie in one tile keeps from where tiles meet, in cells. */
  private static final int OFF_LINE = 2;

  /** All turns of all shapes in a row. */
  private final List<Turned> turns = new ArrayList<>();

  /** Where a shape's turns begin; one more than there are shapes. */
  private final int[] first;

  private final boolean[] inOneTile;
  private final List<List<Place>> alone = new ArrayList<>();
  private final Board empty;
  private long work;
  private long[] blocked = new long[8];
  private int[] narrow = new int[512];

  Searcher(List<Shape> shapes, List<List<Turned>> turned, TileGrid grid) {
    first = new int[shapes.size() + 1];
    inOneTile = new boolean[shapes.size()];
    for (int i = 0; i < shapes.size(); i++) {
      turns.addAll(turned.get(i));
      first[i + 1] = turns.size();
      inOneTile[i] = shapes.get(i).inOneTile();
    }
    empty = new Board(grid, turns.size());
    for (int i = 0; i < shapes.size(); i++) {
      alone.add(aloneOf(i));
    }
  }

  long work() {
    return work;
  }

  /** Counts the work of laying shapes that stay on a board anew. */
  void countRows(int rows) {
    work += 4L * rows;
  }

  Board empty() {
    return empty;
  }

  Turned turned(int turn) {
    return turns.get(turn);
  }

  int firstTurn(int shape) {
    return first[shape];
  }

  int endTurn(int shape) {
    return first[shape + 1];
  }

  /** Whether a shape needs more than one tile however it is turned. */
  boolean large(int shape) {
    return alone.get(shape).isEmpty() || alone.get(shape).get(0).newTiles() > 1;
  }

  /** The places on an island of its own that touch the fewest tiles with the fewest joins. */
  List<Place> alone(int shape) {
    return alone.get(shape);
  }

  private List<Place> aloneOf(int shape) {
    List<Place> best = new ArrayList<>();
    for (int t = first[shape]; t < first[shape + 1]; t++) {
      Turned turn = turns.get(t);
      int columns = empty.columnsFor(turn.width());
      int rows = empty.rowsFor(turn.height());
      if (columns > Packer.maxSide() || rows > Packer.maxSide()) {
        continue;
      }
      if (inOneTile[shape] && !fitsOneTile(turn)) {
        continue;
      }
      int slackX = empty.cellsAcross(columns) - turn.width();
      int slackY = empty.cellsDown(rows) - turn.height();
      int steps = columns * rows > 1 && !inOneTile[shape] ? 4 : 0;
      for (int i = 0; i <= steps; i++) {
        for (int k = 0; k <= steps; k++) {
          int x = steps == 0 ? 0 : slackX * i / steps;
          int y = steps == 0 ? 0 : slackY * k / steps;
          int tiles =
              columns * rows == 1 ? 1 : empty.tilesOf(new Board.Put(shape, turn, x, y, false));
          Place place = new Place(tiles, (columns - 1) * rows + (rows - 1) * columns, 0, x, y, t);
          work += turn.height();
          int order = best.isEmpty() ? -1 : place.compareCost(best.get(0));
          if (order < 0) {
            best.clear();
          }
          if (order <= 0) {
            best.add(place);
          }
        }
      }
    }
    return best;
  }

  /** The lowest free place between two rows in a tile of the first column, in cells. */
  Optional<Point> lowest(Board board, Turned turned, int first, int last) {
    int across = board.cellsAcross(1) - turned.width();
    for (int y = last; y >= first; y--) {
      if (open(board, turned, turned.order().clone(), y, 0, across)) {
        return Optional.of(new Point(nextFree(across), y));
      }
    }
    return Optional.empty();
  }

  /** Whether a shape fits in the core of a tile, whatever neighbours that tile has. */
  private boolean fitsOneTile(Turned turn) {
    return turn.width() <= empty.firstCellOfColumn(2) - empty.firstCellOfColumn(1) - 2 * OFF_LINE
        && turn.height() <= empty.firstCellOfRow(2) - empty.firstCellOfRow(1) - 2 * OFF_LINE;
  }

  /** The best place for one turn of a shape on a board as large as it is. */
  Place find(Board board, int shape, int turn) {
    Place known = board.known(turn);
    if (known == null) {
      known =
          turns.get(turn).cells() > board.room()
              ? Place.NONE
              : find(
                  board,
                  shape,
                  turn,
                  board.columns(),
                  board.tileRows(),
                  alone.get(shape).isEmpty() ? Place.NONE : alone.get(shape).get(0));
      board.learn(turn, known);
    }
    return known;
  }

  /** The best place for one turn of a shape on a board that may become larger. */
  Place findGrowing(Board board, int shape, int turn) {
    Place known = board.growing(turn);
    if (known == null) {
      Turned turned = turns.get(turn);
      known =
          find(
              board,
              shape,
              turn,
              Math.min(Packer.maxSide(), board.columns() + board.columnsFor(turned.width())),
              Math.min(Packer.maxSide(), board.tileRows() + board.rowsFor(turned.height())),
              alone.get(shape).isEmpty() ? Place.NONE : alone.get(shape).get(0));
      board.learnGrowing(turn, known);
    }
    return known;
  }

  private Place find(Board board, int shape, int turn, int columns, int rows, Place limit) {
    Turned turned = turns.get(turn);
    boolean pinned = inOneTile[shape];
    if (pinned && !fitsOneTile(turned)) {
      return Place.NONE;
    }
    // A place beyond all others is as good as any farther on.
    int across =
        Math.min(
            board.cellsAcross(columns) - turned.width(),
            Math.max(board.right(), board.firstCellOfColumn(board.columns())));
    int down =
        Math.min(
            board.cellsDown(rows) - turned.height(),
            Math.max(board.lastRow(), board.firstCellOfRow(board.tileRows())));
    if (across < 0 || down < 0) {
      return Place.NONE;
    }
    boolean growing = columns > board.columns() || rows > board.tileRows();
    Place hint = growing ? null : board.hint(turn);
    if (hint != null && free(board, turned, hint.x(), hint.y())) {
      return hint;
    }
    // On one tile all places cost the same, and none before the hint was free.
    int from = hint != null && columns * rows == 1 ? hint.y() : 0;
    List<Area> areas = areas(board, shape, turn, across, down, columns, rows, limit);
    if (areas.isEmpty()) {
      return Place.NONE;
    }
    if (!growing) {
      tooNarrow(board, turned, down);
    }
    int[] order = turned.order().clone();
    for (Area area : areas) {
      for (int y = Math.max(from, area.top()); y <= area.bottom(); y++) {
        if ((growing || narrow[y] == 0)
            && open(board, turned, order, y, area.left(), area.right() - area.left())) {
          Place cost = area.cost();
          int x = area.left() + nextFree(area.right() - area.left());
          return new Place(cost.newTiles(), cost.newJoins(), cost.needless(), x, y, turn);
        }
      }
    }
    return Place.NONE;
  }

  /** Places that cost the same: from the left to the right cell, from the top to the bottom row. */
  private record Area(Place cost, int left, int right, int top, int bottom) {}

  private List<Area> areas(
      Board board, int shape, int turn, int across, int down, int columns, int rows, Place limit) {
    Turned turned = turns.get(turn);
    List<Area> areas = new ArrayList<>();
    List<int[]> sideways = stretches(across, turned.width(), columns, board, true);
    work += 4L * sideways.size() * Math.min(rows, 8);
    for (int[] v : stretches(down, turned.height(), rows, board, false)) {
      for (int[] h : sideways) {
        Place cost = weigh(board, turned, turn, h[0], v[0], limit);
        if (cost == null || (limit.turn() >= 0 && cost.compareCost(limit) > 0)) {
          continue;
        }
        if (board.roomIn(h[2], h[3], v[2], v[3]) < turned.cells()) {
          continue;
        }
        Area area = new Area(cost, h[0], h[1], v[0], v[1]);
        if (inOneTile[shape]) {
          area = h[2] == h[3] && v[2] == v[3] ? offLines(area, board, turned, h[2], v[2]) : null;
        }
        if (area != null) {
          areas.add(area);
        }
      }
    }
    areas.sort((a, b) -> a.cost().compareCost(b.cost()));
    return areas;
  }

  /** The places of an area in a tile that keep away from where it meets others; null for none. */
  private static Area offLines(Area area, Board board, Turned turned, int column, int row) {
    int left = column == 0 ? 0 : board.firstCellOfColumn(column) + OFF_LINE;
    int top = row == 0 ? 0 : board.firstCellOfRow(row) + OFF_LINE;
    // Further tiles may come to lie right and below.
    int right = board.firstCellOfColumn(column + 1) - OFF_LINE - turned.width();
    int bottom = board.firstCellOfRow(row + 1) - OFF_LINE - turned.height();
    Area inner =
        new Area(
            area.cost(),
            Math.max(area.left(), left),
            Math.min(area.right(), right),
            Math.max(area.top(), top),
            Math.min(area.bottom(), bottom));
    return inner.left() <= inner.right() && inner.top() <= inner.bottom() ? inner : null;
  }

  private boolean free(Board board, Turned turned, int x, int y) {
    int[][] body = turned.body().rows();
    int top = y + turned.body().top();
    work += body.length / 2;
    for (int i = 0; i < body.length; i++) {
      int[] taken = board.row(top + i);
      int[] own = body[i];
      int a = 0;
      for (int k = 0; k < own.length; k += 2) {
        while (a < taken.length && taken[a + 1] <= own[k] + x) {
          a += 2;
        }
        if (a < taken.length && taken[a] < own[k + 1] + x) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Marks at which rows a shape can't begin because a row of the board lacks a free stretch as long
   * as the shape needs there: counts of reasons that begin and end.
   */
  private void tooNarrow(Board board, Turned turned, int down) {
    if (narrow.length < down + 2) {
      narrow = new int[down + 64];
    }
    Arrays.fill(narrow, 0, down + 2, 0);
    int top = turned.body().top();
    int end = Math.min(board.lastRow(), down + top + turned.body().height());
    for (int row = 0; row < end; row++) {
      int gap = board.gap(row);
      if (gap < turned.wide()) {
        int[] rows = turned.wideRows()[(gap + Turned.STEP - 1) / Turned.STEP];
        int from = Math.max(0, row - top - rows[1]);
        int to = Math.min(down, row - top - rows[0]);
        if (from <= to) {
          narrow[from]++;
          narrow[to + 1]--;
        }
      }
    }
    for (int y = 1; y <= down; y++) {
      narrow[y] += narrow[y - 1];
    }
    work += (end + down) / 4;
  }

  /**
   * Divides the places at which a shape can begin into stretches with the same first and last tile.
   * Each is the first place, the last place, the first tile and the last tile.
   */
  private static List<int[]> stretches(
      int last, int size, int tiles, Board board, boolean sideways) {
    int[] starts = new int[3 * tiles];
    int count = 1;
    for (int tile = 1; tile < tiles; tile++) {
      double line =
          sideways
              ? board.grid().seamX(tile) - board.grid().edge()
              : (board.grid().seamY(tile) - board.grid().edge()) / Turned.ROW;
      starts[count++] = (int) Math.ceil(line - 1e-6);
      starts[count++] = (int) Math.ceil(line + 1e-6) - size;
      // An island becomes larger only when its last window is passed.
      starts[count++] = (sideways ? board.cellsAcross(tile) : board.cellsDown(tile)) - size + 1;
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
      int from = sideways ? board.column(at + 1e-6, tiles) : board.tileRow(at + 1e-6, tiles);
      int to = sideways ? board.column(end, tiles) : board.tileRow(end, tiles);
      if (previous != null) {
        previous[1] = at - 1;
      }
      previous = new int[] {at, last, from, to};
      stretches.add(previous);
    }
    for (int tile = 1; tile < tiles; tile++) {
      double line =
          sideways
              ? board.grid().seamX(tile) - board.grid().edge()
              : (board.grid().seamY(tile) - board.grid().edge()) / Turned.ROW;
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

  private int nextFree(int across) {
    for (int i = 0; i <= across >> 6; i++) {
      if (blocked[i] != -1) {
        return (i << 6) + Long.numberOfTrailingZeros(~blocked[i]);
      }
    }
    throw new IllegalStateException("no free place");
  }

  /** Marks where a shape can't begin in a row of cells; false when it can't anywhere. */
  private boolean open(Board board, Turned turned, int[] order, int y, int left, int across) {
    int words = (across >> 6) + 1;
    if (blocked.length < words) {
      blocked = new long[words + 8];
    }
    for (int i = 0; i < words; i++) {
      blocked[i] = 0;
    }
    long last = (across & 63) == 63 ? 0 : -1L << ((across & 63) + 1);
    int top = y + turned.body().top();
    int[][] body = turned.body().rows();
    for (int at = 0; at < order.length; at++) {
      int i = order[at];
      int[] taken = board.row(top + i);
      if (taken.length == 0) {
        continue;
      }
      int[] own = body[i];
      for (int k = 0; k < own.length; k += 2) {
        block(taken, own[k] + left, own[k + 1] + left, across);
      }
      work += taken.length + words;
      long all = -1;
      for (int w = 0; w < words - 1; w++) {
        all &= blocked[w];
      }
      if ((all & (blocked[words - 1] | last)) == -1) {
        // What closed this row of cells is likely to close the next one.
        order[at] = order[at / 2];
        order[at / 2] = i;
        return false;
      }
    }
    return true;
  }

  /** Blocks every x up to a limit at which a run, moved by x, meets a taken one. */
  private void block(int[] taken, int start, int end, int limit) {
    for (int a = 0; a < taken.length; a += 2) {
      int from = Math.max(0, taken[a] - end + 1);
      int to = Math.min(limit, taken[a + 1] - start - 1);
      if (from <= to) {
        int low = from >> 6;
        int high = to >> 6;
        long first = -1L << (from & 63);
        long last = -1L >>> (63 - (to & 63));
        if (low == high) {
          blocked[low] |= first & last;
        } else {
          blocked[low] |= first;
          for (int i = low + 1; i < high; i++) {
            blocked[i] = -1;
          }
          blocked[high] |= last;
        }
      }
    }
  }

  /** What a place costs; null when it takes more new tiles than a limit. */
  private Place weigh(Board board, Turned turned, int turn, int x, int y, Place limit) {
    int columns = Math.max(board.columns(), board.columnsFor(x + turned.width()));
    int rows = Math.max(board.tileRows(), board.rowsFor(y + turned.height()));
    int left = board.column(x + 1e-6, columns);
    int right = board.column(x + turned.width() - 1e-6, columns);
    int top = board.tileRow(y + 1e-6, rows);
    int bottom = board.tileRow(y + turned.height() - 1e-6, rows);
    int needless =
        right
            - left
            + bottom
            - top
            - (board.columnsFor(turned.width()) - 1)
            - (board.rowsFor(turned.height()) - 1);
    int newTiles = 0;
    int newJoins = 0;
    Board.Tally tally = board.current();
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
