package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Affine;
import org.lapmark.packing.Arrangement;
import org.lapmark.packing.GuestPlaces;
import org.lapmark.packing.Island;
import org.lapmark.packing.Packer;
import org.lapmark.packing.Placement;
import org.lapmark.packing.RollPacker;
import org.lapmark.packing.Search;
import org.lapmark.packing.Shape;
import org.lapmark.packing.ShapesWithGuest;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.paper.Filling;
import org.locationtech.jts.geom.Polygon;

/**
 * Arranges the test square and the pieces as each kind of paper asks.
 *
 * @param shapes the square, then the pieces by number
 * @param grid the tiles
 * @param search how long to search
 * @param pins where each of them lies already, if it does
 * @param islands the islands that there are already
 * @param inside where the square lies inside a piece
 * @param sides the sides that the square may have, the preferred one first
 */
public record Arranging(
    List<Shape> shapes,
    TileGrid grid,
    Search search,
    List<Optional<Placement>> pins,
    List<Island> islands,
    SquareInside inside,
    List<Double> sides)
    implements Filling.Reader<Arranging.Result> {
  /** What was arranged, the square first, and how large the square is. */
  public record Result(Arrangement arrangement, double side) {}

  /**
   * Pages: the square lies wherever it takes none of its own: between the pieces, else inside one,
   * else as a smaller square.
   */
  @Override
  public Result pages() {
    if (pins.get(0).isEmpty() && shapes.size() > 1) {
      Optional<ShapesWithGuest> hosted =
          Packer.host(
              shapes.subList(1, shapes.size()),
              grid,
              search,
              pins.subList(1, pins.size()),
              islands,
              sides.stream().map(TestSquare::shape).toList(),
              (guest, others, all) ->
                  inside.find(sides.get(guest), others.stream().map(Optional::of).toList(), all));
      if (hosted.isPresent()) {
        return new Result(
            squareFirst(hosted.get().place(), hosted.get().arrangement()),
            sides.get(hosted.get().guest()));
      }
    }
    return whole(Packer.pack(shapes, grid, search, pins, islands));
  }

  private static Arrangement squareFirst(Placement square, Arrangement pieces) {
    List<Placement> placements = new ArrayList<>(List.of(square));
    placements.addAll(pieces.placements());
    return new Arrangement(placements, pieces.islands(), pieces.tiles(), pieces.joins());
  }

  private Result whole(Arrangement arrangement) {
    return new Result(arrangement, shapes.get(0).outline().getEnvelopeInternal().getWidth());
  }

  /** Large sheets: squares stand at both ends of the first one, if that takes no further sheet. */
  @Override
  public Result sheets() {
    List<Shape> all = new ArrayList<>(shapes);
    Polygon square = shapes.get(0).outline();
    all.add(new Shape(square, List.of(0.0), false));
    List<Optional<Placement>> fixed = new ArrayList<>(pins);
    List<Island> first = islands;
    if (islands.isEmpty()) {
      first = List.of(new Island(1, 1));
      fixed.set(0, Optional.of(atStart()));
    }
    double side = TestSquare.SIDE;
    fixed.add(
        Optional.of(
            new Placement(
                0,
                Affine.translation(
                    grid.width() - grid.edge() - side, grid.height() - grid.edge() - side))));
    Arrangement corners = Packer.pack(all, grid, search, fixed, first);
    if (!islands.isEmpty() || corners.tiles() == 1) {
      return whole(corners);
    }
    Result anywhere = pages();
    return anywhere.arrangement().tiles() < corners.tiles() ? anywhere : whole(corners);
  }

  /** A picture for a projector, which has a square in its corner. */
  @Override
  public Result picture() {
    if (!islands.isEmpty()) {
      return whole(Packer.pack(shapes, grid, search, pins, islands));
    }
    List<Optional<Placement>> fixed = new ArrayList<>(pins);
    fixed.set(0, Optional.of(atStart()));
    return whole(Packer.pack(shapes, grid, search, fixed, List.of(new Island(1, 1))));
  }

  private Placement atStart() {
    return new Placement(0, Affine.translation(grid.edge(), grid.edge()));
  }

  /** A roll: as short as the pieces allow, with a second square at its end if that is free. */
  @Override
  public Result roll() {
    if (!islands.isEmpty()) {
      return whole(Packer.pack(shapes, grid, search, pins, islands));
    }
    GuestPlaces guesthouse =
        (guest, others, all) -> {
          if (guest == 0) {
            return inside.find(TestSquare.SIDE, others.stream().map(Optional::of).toList(), all);
          }
          List<Optional<Placement>> pieces =
              others.subList(1, others.size()).stream().map(Optional::of).toList();
          return inside.lowest(others.get(0), pieces, all);
        };
    return whole(RollPacker.pack(shapes, grid, search, guesthouse));
  }
}
