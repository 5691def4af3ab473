package org.lapmark.print.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;

/**
 * Tiles that show the inside of a piece and no line: nobody needs to print them. One that alone
 * holds others together that are needed is needed too.
 */
public final class BlankTiles {
  /** A line that runs along the edge of a tile lies on it, as far as this, in millimetres. */
  private static final double NEAR = 0.5;

  private final SheetLayout layout;
  private final Set<Cell> needed = new LinkedHashSet<>();

  private BlankTiles(SheetLayout layout) {
    this.layout = layout;
  }

  /**
   * The tiles that aren't needed, in the order of the layout's.
   *
   * @param layout the layout
   * @param lines all lines of a piece, in its own coordinates
   */
  public static List<Cell> of(SheetLayout layout, Function<Piece, List<Path>> lines) {
    BlankTiles tiles = new BlankTiles(layout);
    for (Cell cell : layout.cells()) {
      if (!tiles.isBlank(cell, lines)) {
        tiles.needed.add(cell);
      }
    }
    if (tiles.needed.size() < layout.cells().size()) {
      tiles.connect();
    }
    return layout.cells().stream().filter(cell -> !tiles.needed.contains(cell)).toList();
  }

  private boolean isBlank(Cell cell, Function<Piece, List<Path>> lines) {
    Box core = cell.core().expanded(NEAR);
    if (core.overlaps(layout.square())
        || layout.endSquare().filter(core::overlaps).isPresent()
        || layout.art().stream().noneMatch(art -> art.bounds().contains(core))) {
      return false;
    }
    for (PlacedPiece placed : layout.pieces()) {
      PieceArt art = PieceArt.of(placed);
      if (art.bounds().overlaps(core)) {
        for (Path line : lines.apply(placed.piece())) {
          if (!CurveClip.inside(line.transformed(placed.placement()), core).isEmpty()) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Adds blank tiles until what is joined hangs together without the others. */
  private void connect() {
    Map<Cell, List<Cell>> neighbours = new LinkedHashMap<>();
    for (Join join : layout.joins()) {
      neighbours.computeIfAbsent(join.first(), key -> new ArrayList<>()).add(join.second());
      neighbours.computeIfAbsent(join.second(), key -> new ArrayList<>()).add(join.first());
    }
    Set<Cell> done = new LinkedHashSet<>();
    for (Cell start : layout.cells()) {
      if (needed.contains(start) && done.add(start)) {
        List<Cell> way = way(start, done, neighbours);
        while (!way.isEmpty()) {
          needed.addAll(way);
          way = way(start, done, neighbours);
        }
      }
    }
  }

  /**
   * Visits what hangs together with a tile, and finds the shortest way over blank tiles to another
   * needed one; nothing when there is none.
   */
  private List<Cell> way(Cell start, Set<Cell> done, Map<Cell, List<Cell>> neighbours) {
    Set<Cell> together = new LinkedHashSet<>();
    Deque<Cell> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      Cell cell = open.poll();
      if (together.add(cell)) {
        neighbours.getOrDefault(cell, List.of()).stream()
            .filter(needed::contains)
            .forEach(open::add);
      }
    }
    done.addAll(together);
    Map<Cell, Cell> from = new LinkedHashMap<>();
    open.addAll(together);
    while (!open.isEmpty()) {
      Cell cell = open.poll();
      for (Cell next : neighbours.getOrDefault(cell, List.of())) {
        if (together.contains(next) || from.containsKey(next)) {
          continue;
        }
        from.put(next, cell);
        if (needed.contains(next)) {
          List<Cell> way = new ArrayList<>();
          for (Cell at = cell; !together.contains(at); at = from.get(at)) {
            way.add(at);
          }
          return way;
        }
        open.add(next);
      }
    }
    return List.of();
  }
}
