package org.lapmark.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Point;

/** Finds free places on boards, and counts the work this takes. */
final class Searcher {
  /** A limit on the tiles a side of an island, which bounds the work on absurd shapes. */
  static final int MAX_SIDE = 60;

  /** All turns of all shapes in a row. */
  private final List<Turned> turns = new ArrayList<>();

  /** Where a shape's turns begin; one more than there are shapes. */
  private final int[] first;

  private final boolean[] inOneTile;
  private final List<List<Place>> alone = new ArrayList<>();
  private final Board empty;
  private final Work work = new Work();
  private final RowScan scan = new RowScan(work);

  Searcher(List<Shape> shapes, List<List<Turned>> turned, TileGrid grid) {
    first = new int[shapes.size() + 1];
    inOneTile = new boolean[shapes.size()];
    for (int i = 0; i < shapes.size(); i++) {
      turns.addAll(turned.get(i));
      first[i + 1] = turns.size();
      inOneTile[i] = shapes.get(i).inOneTile();
    }
    empty = new Board(new CellGrid(grid), turns.size());
    for (int i = 0; i < shapes.size(); i++) {
      alone.add(aloneOf(i));
    }
  }

  long work() {
    return work.done();
  }

  /** Counts the work of laying shapes that stay on a board anew. */
  void countRows(int rows) {
    work.add(4L * rows);
  }

  Board empty() {
    return empty;
  }

  Turned turned(int turn) {
    return turns.get(turn);
  }

  int shapes() {
    return inOneTile.length;
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
      int columns = empty.cells().columnsFor(turn.width());
      int rows = empty.cells().rowsFor(turn.height());
      if (columns > MAX_SIDE || rows > MAX_SIDE) {
        continue;
      }
      if (inOneTile[shape] && !fitsOneTile(turn)) {
        continue;
      }
      int slackX = empty.cells().cellsAcross(columns) - turn.width();
      int slackY = empty.cells().cellsDown(rows) - turn.height();
      int steps = columns * rows > 1 && !inOneTile[shape] ? 4 : 0;
      for (int i = 0; i <= steps; i++) {
        for (int k = 0; k <= steps; k++) {
          int x = steps == 0 ? 0 : slackX * i / steps;
          int y = steps == 0 ? 0 : slackY * k / steps;
          int tiles =
              columns * rows == 1 ? 1 : empty.tilesOf(new PlacedShape(shape, turn, x, y, false));
          Place place = new Place(tiles, (columns - 1) * rows + (rows - 1) * columns, 0, x, y, t);
          work.add(turn.height());
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
    int across = board.cells().cellsAcross(1) - turned.width();
    for (int y = last; y >= first; y--) {
      if (scan.isOpen(board, turned, turned.order().clone(), y, 0, across)) {
        return Optional.of(new Point(scan.firstFree(across), y));
      }
    }
    return Optional.empty();
  }

  /** Whether a shape fits in the core of a tile, whatever neighbours that tile has. */
  private boolean fitsOneTile(Turned turn) {
    return turn.width()
            <= empty.cells().firstCellOfColumn(2)
                - empty.cells().firstCellOfColumn(1)
                - 2 * Area.OFF_LINE
        && turn.height()
            <= empty.cells().firstCellOfRow(2)
                - empty.cells().firstCellOfRow(1)
                - 2 * Area.OFF_LINE;
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
              Math.min(MAX_SIDE, board.columns() + board.cells().columnsFor(turned.width())),
              Math.min(MAX_SIDE, board.tileRows() + board.cells().rowsFor(turned.height())),
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
            board.cells().cellsAcross(columns) - turned.width(),
            Math.max(board.right(), board.cells().firstCellOfColumn(board.columns())));
    int down =
        Math.min(
            board.cells().cellsDown(rows) - turned.height(),
            Math.max(board.lastRow(), board.cells().firstCellOfRow(board.tileRows())));
    if (across < 0 || down < 0) {
      return Place.NONE;
    }
    boolean growing = columns > board.columns() || rows > board.tileRows();
    Place hint = growing ? null : board.hint(turn);
    if (hint != null && scan.isFree(board, turned, hint.x(), hint.y())) {
      return hint;
    }
    // On one tile all places cost the same, and none before the hint was free.
    int from = hint != null && columns * rows == 1 ? hint.y() : 0;
    List<Area> areas =
        new Areas(board, turned, turn, pinned, limit, work).of(across, down, columns, rows);
    if (areas.isEmpty()) {
      return Place.NONE;
    }
    if (!growing) {
      scan.mark(board, turned, down);
    }
    int[] order = turned.order().clone();
    for (Area area : areas) {
      for (int y = Math.max(from, area.top()); y <= area.bottom(); y++) {
        if ((growing || scan.isWide(y))
            && scan.isOpen(board, turned, order, y, area.left(), area.right() - area.left())) {
          Place cost = area.cost();
          int x = area.left() + scan.firstFree(area.right() - area.left());
          return new Place(cost.newTiles(), cost.newJoins(), cost.needless(), x, y, turn);
        }
      }
    }
    return Place.NONE;
  }
}
