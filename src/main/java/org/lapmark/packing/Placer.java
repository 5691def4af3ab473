package org.lapmark.packing;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Places shapes one after the other at the best free place.
 *
 * @param searcher finds places
 * @param random chooses
 * @param kept so many islands were there before; they come first and never become larger
 */
record Placer(Searcher searcher, SplittableRandom random, int kept) {
  /** Shapes in the order in which they are placed: larger ones first, more or less. */
  List<Integer> ordered(List<Integer> list, boolean bySide, double noise) {
    double[] keys = new double[searcher.shapes()];
    for (int i : list) {
      Turned turned = searcher.turned(searcher.firstTurn(i));
      double key = bySide ? Math.max(turned.width(), turned.height() * Turned.ROW) : turned.cells();
      keys[i] = noise > 0 ? key * (1 + noise * (2 * random.nextDouble() - 1)) : key;
    }
    return list.stream()
        .sorted(Comparator.<Integer>comparingDouble(i -> -keys[i]).thenComparing(i -> i))
        .toList();
  }

  /** Places shapes; false as soon as that takes more tiles than a limit. */
  boolean place(List<Board> boards, List<Integer> order, boolean grow, double blink, int limit) {
    int old = boards.size();
    int tiles = 0;
    for (Board board : boards) {
      tiles += board.tiles();
    }
    for (int shape : order) {
      Place best = Place.NONE;
      int where = -1;
      double room = Double.POSITIVE_INFINITY;
      for (int b : fullestFirst(boards)) {
        Board board = boards.get(b);
        if (best.turn() >= 0 && best.costsNothing() && board.free() > room + 1e-9) {
          // None of those that follow is better.
          break;
        }
        if (blink > 0 && random.nextDouble() < blink) {
          continue;
        }
        for (int t = searcher.firstTurn(shape); t < searcher.endTurn(shape); t++) {
          Place place = searcher.find(board, shape, t);
          int order1 = place.turn() < 0 ? 1 : place.compareCost(best);
          // Among equals the fuller board, then what reaches least far.
          if (order1 < 0
              || (order1 == 0 && board.free() < room - 1e-9)
              || (order1 == 0 && where == b && reach(place) < reach(best))) {
            best = place;
            where = b;
            room = board.free();
          }
        }
      }
      if (grow && searcher.large(shape) && !best.costsNothing()) {
        for (int b = 0; b < boards.size(); b++) {
          if (b < kept || (b < old && random.nextInt(20) > 0)) {
            continue;
          }
          for (int t = searcher.firstTurn(shape); t < searcher.endTurn(shape); t++) {
            Place place = searcher.findGrowing(boards.get(b), shape, t);
            if (place.compareCost(best) < 0) {
              best = place;
              where = b;
            }
          }
        }
      }
      if (best.newTiles() > 0) {
        List<Place> alone = searcher.alone(shape);
        if (!alone.isEmpty() && alone.get(0).compareCost(best) <= 0) {
          best = alone.get(blink > 0 ? random.nextInt(alone.size()) : 0);
          where = boards.size();
          boards.add(searcher.empty());
        }
      }
      tiles += best.newTiles();
      if (tiles > limit) {
        return false;
      }
      if (best.turn() < 0) {
        throw new IllegalArgumentException("shape " + shape + " does not fit");
      }
      boards.set(
          where,
          boards
              .get(where)
              .with(
                  new PlacedShape(shape, searcher.turned(best.turn()), best.x(), best.y(), false)));
    }
    return true;
  }

  private static int[] fullestFirst(List<Board> boards) {
    double[] free = new double[boards.size()];
    int[] order = new int[free.length];
    for (int i = 0; i < free.length; i++) {
      free[i] = boards.get(i).free();
      int at = i;
      for (; at > 0 && free[order[at - 1]] > free[i]; at--) {
        order[at] = order[at - 1];
      }
      order[at] = i;
    }
    return order;
  }

  private long reach(Place place) {
    Turned turned = searcher.turned(place.turn());
    return (long) (place.y() + turned.height()) * 100_000 + place.x() + turned.width();
  }
}
