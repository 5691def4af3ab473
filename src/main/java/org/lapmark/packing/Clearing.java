package org.lapmark.packing;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Clears part of a solution and places its shapes anew.
 *
 * @param placer places shapes
 * @param searcher has empty islands
 * @param random chooses
 * @param kept the islands that were there before; they come first and are never given up
 */
record Clearing(Placer placer, Searcher searcher, SplittableRandom random, List<Board> kept) {
  /** How many tiles are cleared at most. */
  private static final int MOST_CLEARED = 3;

  /** Of so many tiles the emptiest is cleared. */
  private static final int EMPTIEST_OF = 3;

  /** Clears a few tiles and places their shapes anew; nothing if that takes more tiles. */
  Optional<Solution> withTilesCleared(Solution from) {
    List<Board> boards = new ArrayList<>(from.boards());
    TreeMap<Integer, BitSet> cleared = new TreeMap<>();
    int count = 1 + random.nextInt(MOST_CLEARED);
    for (int i = 0; i < count; i++) {
      clearOne(boards, cleared);
    }
    List<Integer> loose = new ArrayList<>();
    for (int index : cleared.descendingKeySet()) {
      Board old = boards.get(index);
      Board board = index < kept.size() ? kept.get(index) : searcher.empty();
      boolean left = index < kept.size();
      for (int i = 0; i < old.puts().size(); i++) {
        PlacedShape put = old.puts().get(i);
        if (cleared.get(index).get(i)) {
          loose.add(put.shape());
        } else if (!put.fixed()) {
          board = board.with(put);
          left = true;
        }
      }
      searcher.countRows(board.lastRow());
      if (left) {
        boards.set(index, board);
      } else {
        boards.remove(index);
      }
    }
    Collections.sort(loose);
    return placer.place(
            boards,
            placer.ordered(loose, random.nextInt(3) == 0, 0.05 + 0.3 * random.nextDouble()),
            random.nextBoolean(),
            0.01,
            from.tiles())
        ? Optional.of(Solution.of(boards))
        : Optional.empty();
  }

  /** Chooses a tile, and marks what reaches into it by its box, by board. */
  private void clearOne(List<Board> boards, TreeMap<Integer, BitSet> cleared) {
    int emptiest = -1;
    int row = 0;
    int column = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < EMPTIEST_OF; i++) {
      int index = random.nextInt(boards.size());
      Board board = boards.get(index);
      int tile = random.nextInt(board.columns() * board.tileRows());
      double filled = board.filled(tile / board.columns(), tile % board.columns());
      if (filled > 0 && filled < least) {
        least = filled;
        emptiest = index;
        row = tile / board.columns();
        column = tile % board.columns();
      }
    }
    if (emptiest >= 0) {
      Board board = boards.get(emptiest);
      BitSet marked = cleared.computeIfAbsent(emptiest, key -> new BitSet());
      for (int i = 0; i < board.puts().size(); i++) {
        if (!board.puts().get(i).fixed() && board.reaches(board.puts().get(i), row, column)) {
          marked.set(i);
        }
      }
    }
  }

  /** Clears a few islands and places their shapes anew; nothing if that takes more tiles. */
  Optional<Solution> withIslandsCleared(Solution from) {
    List<Board> boards = new ArrayList<>(from.boards());
    int count = 2 + random.nextInt(2);
    TreeSet<Integer> cleared = new TreeSet<>();
    for (int i = 0; i < count && i < boards.size(); i++) {
      int one = random.nextInt(boards.size());
      // Of two, the one with more room is more often worth it.
      int other = random.nextInt(boards.size());
      cleared.add(boards.get(one).free() >= boards.get(other).free() ? one : other);
    }
    List<Integer> loose = new ArrayList<>();
    for (int index : cleared.descendingSet()) {
      for (PlacedShape put : boards.get(index).puts()) {
        if (!put.fixed()) {
          loose.add(put.shape());
        }
      }
      if (index < kept.size()) {
        boards.set(index, kept.get(index));
      } else {
        boards.remove(index);
      }
    }
    Collections.sort(loose);
    return placer.place(
            boards,
            placer.ordered(loose, random.nextInt(3) == 0, 0.05 + 0.2 * random.nextDouble()),
            random.nextBoolean(),
            0.05,
            from.tiles())
        ? Optional.of(Solution.of(boards))
        : Optional.empty();
  }
}
