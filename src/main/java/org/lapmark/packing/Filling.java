package org.lapmark.packing;

import java.util.ArrayList;
import java.util.List;

/** Places shapes one after the other as a plan says, and counts the work this takes. */
final class Filling {
  private final List<Shape> shapes;
  private final List<List<Turned>> turned;
  private final TileGrid grid;
  private long work;

  Filling(List<Shape> shapes, List<List<Turned>> turned, TileGrid grid) {
    this.shapes = shapes;
    this.turned = turned;
    this.grid = grid;
  }

  long work() {
    return work;
  }

  Packer.Outcome fill(Packer.Plan plan) {
    List<Board> boards = new ArrayList<>();
    for (int shape : plan.order()) {
      int angle = plan.angles()[shape];
      List<Turned> turns = angle < 0 ? turned.get(shape) : List.of(turned.get(shape).get(angle));
      boolean pinned = shapes.get(shape).inFirstTile();
      Candidate best = null;
      for (Board board : boards) {
        for (Turned turn : turns) {
          best = better(best, find(board, shape, turn, pinned, plan.grow()));
          if (best != null && best.cannotImprove()) {
            break;
          }
        }
        if (best != null && best.cannotImprove()) {
          break;
        }
      }
      if (best == null || best.newTiles > 0) {
        best = better(best, alone(shape, turns, pinned));
      }
      if (best == null) {
        throw new IllegalArgumentException("shape " + shape + " does not fit");
      }
      if (best.board == null) {
        best.board = new Board(grid);
        boards.add(best.board);
      }
      best.board.put(best.put);
    }
    int tiles = 0;
    int joins = 0;
    long extent = 0;
    for (Board board : boards) {
      tiles += board.current().tileCount();
      joins += board.current().joinCount();
      long right = 0;
      long bottom = 0;
      for (Board.Put put : board.puts()) {
        right = Math.max(right, put.x() + put.turned().width());
        bottom = Math.max(bottom, put.y() + put.turned().height());
      }
      extent += right + bottom;
    }
    return new Packer.Outcome(boards, new Packer.Cost(tiles, joins, extent));
  }

  private static final class Candidate {
    private Board board;
    private Board.Put put;
    private int newTiles;
    private int newJoins;

    /** How many more lines between tiles the shape crosses than its size makes it. */
    private int needless;

    private long metric;

    boolean cannotImprove() {
      return newTiles == 0 && newJoins == 0 && needless == 0;
    }
  }

  private static Candidate better(Candidate a, Candidate b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    if (a.newTiles != b.newTiles) {
      return a.newTiles < b.newTiles ? a : b;
    }
    if (a.newJoins != b.newJoins) {
      return a.newJoins < b.newJoins ? a : b;
    }
    if (a.needless != b.needless) {
      return a.needless < b.needless ? a : b;
    }
    if (a.board != b.board) {
      return a;
    }
    return b.metric < a.metric ? b : a;
  }

  /** The best place on an island of its own: on few tiles, then with few joins. */
  private Candidate alone(int shape, List<Turned> turns, boolean pinned) {
    Candidate best = null;
    Board empty = new Board(grid);
    for (Turned turn : turns) {
      int columns = empty.columnsFor(turn.width());
      int rows = empty.rowsFor(turn.height());
      if (columns > Packer.maxSide() || rows > Packer.maxSide()) {
        continue;
      }
      if (pinned && !inFirst(empty, turn, 0, 0)) {
        continue;
      }
      int slackX = empty.cellsAcross(columns) - turn.width();
      int slackY = empty.cellsDown(rows) - turn.height();
      int steps = columns * rows > 1 && !pinned ? 4 : 0;
      for (int i = 0; i <= steps; i++) {
        for (int k = 0; k <= steps; k++) {
          Candidate candidate = new Candidate();
          int x = steps == 0 ? 0 : slackX * i / steps;
          int y = steps == 0 ? 0 : slackY * k / steps;
          candidate.put = new Board.Put(shape, turn, x, y);
          candidate.newTiles = columns * rows == 1 ? 1 : empty.tilesOf(candidate.put);
          candidate.newJoins = (columns - 1) * rows + (rows - 1) * columns;
          candidate.metric = (long) (y + turn.height()) * 100_000 + x + turn.width();
          work += turn.height();
          best = better(best, candidate);
        }
      }
    }
    return best;
  }

  private boolean inFirst(Board board, Turned turn, int x, int y) {
    return x + turn.width() <= board.firstCellOfColumn(1) - 1
        && y + turn.height() <= board.firstCellOfRow(1) - 1;
  }

  /** The best free place on an island. */
  private Candidate find(Board board, int shape, Turned turn, boolean pinned, boolean grow) {
    int columns = board.columns();
    int rows = board.tileRows();
    if (pinned && !inFirst(board, turn, 0, 0)) {
      return null;
    }
    boolean large = board.columnsFor(turn.width()) > 1 || board.rowsFor(turn.height()) > 1;
    if ((grow || large) && !pinned) {
      columns = Math.min(Packer.maxSide(), columns + board.columnsFor(turn.width()));
      rows = Math.min(Packer.maxSide(), rows + board.rowsFor(turn.height()));
    }
    int across = board.cellsAcross(columns) - turn.width();
    int down = board.cellsDown(rows) - turn.height();
    if (across < 0 || down < 0) {
      return null;
    }
    Candidate best = null;
    int[] blocked = new int[across + 2];
    for (int y = 0; y <= down; y++) {
      boolean free = block(board, turn, y, across, blocked);
      if (pinned && !inFirst(board, turn, 0, y)) {
        break;
      }
      if (!free) {
        continue;
      }
      int depth = 0;
      boolean before = false;
      int nextColumn = 1;
      for (int x = 0; x <= across; x++) {
        depth += blocked[x];
        boolean open = depth == 0;
        boolean aligned = false;
        if (nextColumn < columns && x == board.firstCellOfColumn(nextColumn)) {
          aligned = true;
          nextColumn++;
        }
        if (open && (!before || aligned)) {
          if (pinned && !inFirst(board, turn, x, y)) {
            break;
          }
          best = better(best, weigh(board, shape, turn, x, y));
        }
        before = open;
      }
      if (best != null && best.cannotImprove()) {
        return best;
      }
    }
    return best;
  }

  /**
   * Finds where a shape may not begin in a row of cells.
   *
   * @param blocked receives how many more stretches begin than end at each x
   * @return false when no place is left
   */
  private boolean block(Board board, Turned turn, int y, int across, int[] blocked) {
    java.util.Arrays.fill(blocked, 0);
    int[][] body = turn.body().rows();
    for (int i = 0; i < body.length; i++) {
      int count = board.runCount(y + i);
      work++;
      if (count == 0) {
        continue;
      }
      int[] taken = board.runs(y + i);
      int[] own = body[i];
      for (int a = 0; a < count; a += 2) {
        for (int b = 0; b < own.length; b += 2) {
          int from = Math.max(0, taken[a] - own[b + 1] + 1);
          int to = Math.min(across, taken[a + 1] - own[b] - 1);
          work++;
          if (from <= to) {
            if (from == 0 && to == across) {
              return false;
            }
            blocked[from]++;
            blocked[to + 1]--;
          }
        }
      }
    }
    return true;
  }

  private Candidate weigh(Board board, int shape, Turned turn, int x, int y) {
    Candidate candidate = new Candidate();
    candidate.board = board;
    candidate.put = new Board.Put(shape, turn, x, y);
    candidate.metric = (long) (y + turn.height()) * 100_000 + x + turn.width();
    int columns = Math.max(board.columns(), board.columnsFor(x + turn.width()));
    int rows = Math.max(board.tileRows(), board.rowsFor(y + turn.height()));
    int left = board.column(x + 1e-6, columns);
    int right = board.column(x + turn.width() - 1e-6, columns);
    int top = board.row(y + 1e-6, rows);
    int bottom = board.row(y + turn.height() - 1e-6, rows);
    candidate.needless =
        right
            - left
            + bottom
            - top
            - (board.columnsFor(turn.width()) - 1)
            - (board.rowsFor(turn.height()) - 1);
    Board.Tally tally = board.current();
    for (int r = top; r <= bottom; r++) {
      for (int c = left; c <= right; c++) {
        boolean known = r < board.tileRows() && c < board.columns();
        candidate.newTiles += known && tally.tiles()[r][c] ? 0 : 1;
        candidate.newJoins += c == right || (known && tally.right()[r][c]) ? 0 : 1;
        candidate.newJoins += r == bottom || (known && tally.down()[r][c]) ? 0 : 1;
      }
    }
    return candidate;
  }
}
