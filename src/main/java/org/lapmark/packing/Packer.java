package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Arranges shapes on islands of tiles so that as few tiles as possible carry something, then so
 * that as few lines between tiles as possible are crossed by a shape, then as closely as possible.
 *
 * <p>Shapes are placed one after the other at the best free place; orders, angles and whether
 * islands may grow are varied at random from a stated seed, keeping what is better. Shapes are
 * compared as rows of 1 mm cells that cover them, so that they never overlap and lie apart by the
 * gap at least, and by 2 mm more at most where they could touch.
 */
public final class Packer {
  private Packer() {}

  /** A limit on the tiles a side of an island, which bounds the work on absurd shapes. */
  private static final int MAX_SIDE = 60;

  /**
   * Arranges shapes.
   *
   * @param shapes the shapes; one that must lie in a first tile has to fit there
   * @param grid the tiles
   * @param search how long to search
   * @return a place for every shape; the islands in the order in which they were opened
   * @throws IllegalArgumentException when a shape would need more than 60 tiles a side, or must lie
   *     in a first tile and is too large for it
   */
  public static Arrangement pack(List<Shape> shapes, TileGrid grid, Search search) {
    if (shapes.isEmpty()) {
      return new Arrangement(List.of(), List.of(), 0, 0);
    }
    List<List<Turned>> turned = new ArrayList<>();
    long cells = 0;
    for (Shape shape : shapes) {
      List<Turned> list = new ArrayList<>();
      for (double angle : shape.angles()) {
        list.add(Turned.of(shape.outline(), angle, search.gap()));
      }
      turned.add(list);
      cells += list.get(0).body().cells();
    }
    List<Plan> starts = starts(shapes, turned);
    SplittableRandom random = new SplittableRandom(search.seed());
    Filling filling = new Filling(shapes, turned, grid);
    Plan bestPlan = null;
    Outcome best = null;
    int idle = 0;
    for (int run = 0; run < search.runs(); run++) {
      if (best != null && (filling.work() > search.work() || idle > search.patience())) {
        break;
      }
      Plan plan = run < starts.size() ? starts.get(run) : bestPlan.varied(random, shapes);
      Outcome outcome = filling.fill(plan);
      idle = best == null || outcome.cost().saves(best.cost()) ? 0 : idle + 1;
      if (best == null || outcome.cost().compareTo(best.cost()) <= 0) {
        best = outcome;
        bestPlan = plan;
      }
      if (best.cost().tiles() <= leastTiles(cells, grid) && best.cost().joins() == 0) {
        break;
      }
    }
    return arrangement(shapes.size(), grid, best);
  }

  /** No arrangement does with fewer tiles than the shapes' areas fill. */
  private static int leastTiles(long cells, TileGrid grid) {
    // Cells overstate the area along the outline; a tenth is more than they can.
    return (int) Math.max(1, Math.ceil(0.9 * cells / (grid.width() * grid.height())));
  }

  private static List<Plan> starts(List<Shape> shapes, List<List<Turned>> turned) {
    Comparator<Integer> byArea =
        Comparator.comparingLong(i -> -turned.get(i).get(0).body().cells());
    Comparator<Integer> bySide =
        Comparator.comparingInt(
            i -> -Math.max(turned.get(i).get(0).width(), turned.get(i).get(0).body().height()));
    Comparator<Integer> pinned = Comparator.comparing(i -> !shapes.get(i).inFirstTile());
    List<Plan> starts = new ArrayList<>();
    for (boolean grow : new boolean[] {false, true}) {
      for (Comparator<Integer> order :
          List.of(
              pinned.thenComparing(byArea),
              pinned.thenComparing(bySide),
              byArea,
              bySide.thenComparing(byArea),
              pinned.thenComparing(byArea.reversed()))) {
        int[] sequence =
            IntStream.range(0, shapes.size())
                .boxed()
                .sorted(order.thenComparingInt(i -> i))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] angles = new int[shapes.size()];
        java.util.Arrays.fill(angles, -1);
        starts.add(new Plan(sequence, angles, grow));
      }
    }
    return starts;
  }

  private static Arrangement arrangement(int count, TileGrid grid, Outcome outcome) {
    Placement[] placements = new Placement[count];
    List<Island> islands = new ArrayList<>();
    for (Board board : outcome.boards()) {
      for (Board.Put put : board.puts()) {
        Turned turned = put.turned();
        double x = grid.edge() + put.x() - turned.minX();
        double y = grid.edge() + put.y() - turned.minY();
        placements[put.shape()] =
            new Placement(
                islands.size(), org.lapmark.geometry.Affine.translation(x, y).after(turned.turn()));
      }
      islands.add(new Island(board.columns(), board.tileRows()));
    }
    return new Arrangement(
        List.of(placements), islands, outcome.cost().tiles(), outcome.cost().joins());
  }

  /**
   * In which order shapes are placed, at which angle (-1 for the best), and whether islands grow.
   */
  record Plan(int[] order, int[] angles, boolean grow) {
    Plan varied(SplittableRandom random, List<Shape> shapes) {
      int[] newOrder = order.clone();
      int[] newAngles = angles.clone();
      boolean newGrow = grow;
      int changes = 1 + random.nextInt(3);
      for (int i = 0; i < changes; i++) {
        int kind = random.nextInt(10);
        int a = random.nextInt(newOrder.length);
        if (kind < 5) {
          int b = random.nextInt(newOrder.length);
          int swap = newOrder[a];
          newOrder[a] = newOrder[b];
          newOrder[b] = swap;
        } else if (kind < 9) {
          newAngles[a] = random.nextInt(shapes.get(a).angles().size() + 1) - 1;
        } else {
          newGrow = !newGrow;
        }
      }
      return new Plan(newOrder, newAngles, newGrow);
    }
  }

  /** What an arrangement costs; less is better. */
  record Cost(int tiles, int joins, long extent) implements Comparable<Cost> {
    /** Whether this is better by a tile or a join. */
    boolean saves(Cost other) {
      return tiles < other.tiles || (tiles == other.tiles && joins < other.joins);
    }

    @Override
    public int compareTo(Cost other) {
      int byTiles = Integer.compare(tiles, other.tiles);
      int byJoins = byTiles != 0 ? byTiles : Integer.compare(joins, other.joins);
      return byJoins != 0 ? byJoins : Long.compare(extent, other.extent);
    }
  }

  record Outcome(List<Board> boards, Cost cost) {}

  static int maxSide() {
    return MAX_SIDE;
  }
}
