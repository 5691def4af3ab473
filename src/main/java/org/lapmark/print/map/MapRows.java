package org.lapmark.print.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.locationtech.jts.geom.Coordinate;

/**
 * Sets what is taped together into one sheet beside what isn't joined to it, in rows that fill the
 * map's place: laid below each other, as the arranging leaves them, a few tiles each would make a
 * map that is tall, narrow and too small to read. Tiles that are joined keep their places.
 */
public final class MapRows {
  /** Between sheets that aren't joined, in millimetres of the sheet. */
  private static final double GAP = 25;

  private final SheetPlan plan;
  private final Map<String, Integer> islandOf = new LinkedHashMap<>();
  private final List<Box> islands = new ArrayList<>();

  private MapRows(SheetPlan plan) {
    this.plan = plan;
    List<Tile> tiles =
        plan.tiles().stream()
            .sorted(Comparator.comparingInt(Tile::row).thenComparingInt(Tile::column))
            .toList();
    for (Tile tile : tiles) {
      if (!islandOf.containsKey(tile.code())) {
        islands.add(tile.window());
        gather(tile, islands.size() - 1);
      }
    }
  }

  private void gather(Tile tile, int island) {
    List<Tile> open = new ArrayList<>(List.of(tile));
    while (!open.isEmpty()) {
      Tile next = open.remove(open.size() - 1);
      if (islandOf.putIfAbsent(next.code(), island) == null) {
        islands.set(island, islands.get(island).union(next.window()));
        plan.tiles().stream()
            .filter(other -> next.joined().contains(other.code()))
            .forEach(open::add);
      }
    }
  }

  /**
   * The plan in rows, if that makes a larger map.
   *
   * @param plan the sheet
   * @param width the map's width, in millimetres
   * @param height its greatest height
   * @return the plan with its tiles and pieces moved, fit for a map alone
   */
  public static SheetPlan of(SheetPlan plan, double width, double height) {
    MapRows rows = new MapRows(plan);
    List<Box> best = rows.islands;
    double most = scale(best, width, height);
    for (double limit : rows.limits()) {
      List<Box> set = rows.set(limit);
      double scale = scale(set, width, height);
      if (scale > most * 1.01) {
        most = scale;
        best = set;
      }
    }
    return best == rows.islands ? plan : rows.moved(best);
  }

  private static double scale(List<Box> boxes, double width, double height) {
    Box all = boxes.stream().reduce(Box::union).orElseThrow();
    return Math.min(PageMap.MOST, Math.min(width / all.width(), height / all.height()));
  }

  /** The widths that some sheets in a row have. */
  private List<Double> limits() {
    List<Double> limits = new ArrayList<>();
    for (int i = 0; i < islands.size(); i++) {
      double sum = -GAP;
      for (Box island : islands.subList(i, islands.size())) {
        sum += island.width() + GAP;
        limits.add(sum);
      }
    }
    return limits;
  }

  /** The sheets in rows no wider than a limit, unless one alone is. */
  private List<Box> set(double limit) {
    List<Box> set = new ArrayList<>();
    double x = 0;
    double y = 0;
    double below = 0;
    for (Box island : islands) {
      if (x > 0 && x + island.width() > limit + 1e-6) {
        x = 0;
        y = below;
      }
      set.add(Box.at(x, y, island.width(), island.height()));
      x += island.width() + GAP;
      below = Math.max(below, y + island.height() + GAP);
    }
    return set;
  }

  private SheetPlan moved(List<Box> set) {
    List<Point> moves = new ArrayList<>();
    for (int i = 0; i < set.size(); i++) {
      moves.add(
          new Point(
              set.get(i).minX() - islands.get(i).minX(),
              set.get(i).minY() - islands.get(i).minY()));
    }
    List<Tile> tiles = new ArrayList<>();
    for (Tile tile : plan.tiles()) {
      Point move = moves.get(islandOf.get(tile.code()));
      tiles.add(
          new Tile(
              tile.code(),
              tile.column(),
              tile.row(),
              tile.window().moved(move),
              tile.page(),
              tile.pieces(),
              tile.alternative(),
              tile.core().moved(move),
              tile.joined(),
              tile.blank()));
    }
    List<PlacedPiece> pieces = new ArrayList<>();
    for (PlacedPiece placed : plan.pieces()) {
      pieces.add(
          new PlacedPiece(
              placed.piece(),
              by(moves.get(islandOf.get(home(placed).code()))).after(placed.placement())));
    }
    return new SheetPlan(
        plan.paper(), plan.columns(), plan.rows(), pieces, tiles, plan.quality(), plan.arranged());
  }

  private static Affine by(Point move) {
    return Affine.translation(move.x(), move.y());
  }

  /** A tile that shows a piece. */
  private Tile home(PlacedPiece placed) {
    PieceArt art = PieceArt.of(placed);
    Coordinate inner = art.polygon().getInteriorPoint().getCoordinate();
    Point point = new Point(inner.x, inner.y);
    return plan.tiles().stream()
        .filter(tile -> tile.core().contains(point))
        .findFirst()
        .or(
            () ->
                plan.tiles().stream()
                    .filter(tile -> tile.pieces().contains(placed.piece().number()))
                    .filter(tile -> tile.core().overlaps(art.bounds()))
                    .findFirst())
        .orElse(plan.tiles().get(0));
  }
}
