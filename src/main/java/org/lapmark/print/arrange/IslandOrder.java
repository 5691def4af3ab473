package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.packing.Arrangement;
import org.lapmark.packing.Island;
import org.lapmark.packing.Placement;
import org.lapmark.packing.TileGrid;

/** The order in which islands are printed. */
final class IslandOrder {
  private IslandOrder() {}

  /** The island with the test square first, then by the least number of the pieces on them. */
  static Arrangement byNumbers(Arrangement arrangement, List<Piece> pieces) {
    int first = arrangement.placements().get(0).island();
    int[] least = new int[arrangement.islands().size()];
    Arrays.fill(least, Integer.MAX_VALUE);
    for (int i = 0; i < pieces.size(); i++) {
      int island = arrangement.placements().get(i + 1).island();
      least[island] = Math.min(least[island], pieces.get(i).number());
    }
    List<Integer> order =
        IntStream.range(0, least.length)
            .boxed()
            .sorted(
                Comparator.<Integer>comparingInt(i -> i == first ? 0 : 1)
                    .thenComparingInt(i -> least[i])
                    .thenComparingInt(i -> i))
            .toList();
    return new Arrangement(
        arrangement.placements().stream()
            .map(placement -> new Placement(order.indexOf(placement.island()), placement.map()))
            .toList(),
        order.stream().map(arrangement.islands()::get).toList(),
        arrangement.tiles(),
        arrangement.joins());
  }

  /**
   * Turns the first island by 180 degrees when that brings the test square nearer its first tile.
   */
  static Arrangement squareFirst(Arrangement arrangement, double side, TileGrid grid) {
    Island island = arrangement.islands().get(0);
    Point square = arrangement.placements().get(0).map().apply(new Point(0, 0));
    int column = grid.column(square.x() + side / 2, island.columns());
    int row = grid.row(square.y() + side / 2, island.rows());
    int before = row * island.columns() + column;
    if (2 * before < island.columns() * island.rows()) {
      return arrangement;
    }
    double width = (island.columns() - 1) * grid.stepX() + grid.width();
    double height = (island.rows() - 1) * grid.stepY() + grid.height();
    Affine turn = Affine.translation(width, height).after(Affine.scaling(-1, -1));
    List<Placement> placements = new ArrayList<>();
    for (Placement placement : arrangement.placements()) {
      boolean first = placements.isEmpty();
      // The square itself stays upright.
      Affine map =
          first
              ? Affine.translation(width - square.x() - side, height - square.y() - side)
              : turn.after(placement.map());
      placements.add(placement.island() == 0 ? new Placement(0, map) : placement);
    }
    return new Arrangement(
        placements, arrangement.islands(), arrangement.tiles(), arrangement.joins());
  }
}
