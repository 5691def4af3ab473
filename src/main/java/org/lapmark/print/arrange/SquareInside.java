package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.packing.Island;
import org.lapmark.packing.Placement;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;

/**
 * Finds room for a test square inside a piece, clear of all its lines: better than a page for the
 * square alone.
 *
 * @param pieces the pieces in the order of their places
 * @param grid the tiles
 * @param lines all lines of a piece, in its own coordinates
 */
public record SquareInside(List<Piece> pieces, TileGrid grid, Function<Piece, List<Path>> lines) {
  /** How far the square keeps from the lines of its piece, in millimetres. */
  private static final double CLEAR = 4;

  /** What the cells of the search may take from that. */
  private static final double ROUNDING = 0.6;

  /** How far it keeps from where tiles meet, in millimetres. */
  private static final double FROM_SEAM = 2;

  private static final double CHORD = 0.2;

  /** Inside the largest piece that has room on one tile. */
  Optional<Placement> find(double side, List<Optional<Placement>> places, List<Island> islands) {
    Optional<Placement> best = Optional.empty();
    double largest = 0;
    for (int island = 0; island < islands.size(); island++) {
      List<PieceArt> on = on(island, places);
      for (Box core : cores(islands.get(island))) {
        for (PieceArt art : on) {
          double area = art.polygon().getArea();
          if (area > largest) {
            Optional<Box> box = room(side, core, art, on, new Point(core.minX(), core.minY()));
            if (box.isPresent()) {
              best = Optional.of(placed(island, box.get()));
              largest = area;
            }
          }
        }
      }
    }
    return best;
  }

  /** As far down as there is room on the island of another square, in the half that it isn't in. */
  Optional<Placement> lowest(
      Placement other, List<Optional<Placement>> places, List<Island> islands) {
    int island = other.island();
    List<PieceArt> on = on(island, places);
    double bottom = on.stream().mapToDouble(art -> art.bounds().maxY()).max().orElse(0);
    double top = other.map().apply(new Point(0, 0)).y() + TestSquare.SIDE;
    Box best = null;
    for (Box core : cores(islands.get(island))) {
      double from = Math.max(core.minY(), Math.max(bottom / 2, top));
      Box below = new Box(core.minX(), from, core.maxX(), core.maxY());
      for (PieceArt art : on) {
        Optional<Box> box =
            below.height() > TestSquare.SIDE
                ? room(
                    TestSquare.SIDE,
                    below,
                    art,
                    on,
                    new Point(art.bounds().minX(), art.bounds().maxY()))
                : Optional.empty();
        if (box.isPresent() && (best == null || box.get().maxY() > best.maxY())) {
          best = box.get();
        }
      }
    }
    return best == null ? Optional.empty() : Optional.of(placed(island, best));
  }

  /** Whether a square lies inside a piece and on none of its lines. */
  boolean isInside(double side, Placement square, List<Optional<Placement>> places) {
    Box box =
        new Box(0, 0, side, side)
            .moved(square.map().apply(new Point(0, 0)))
            .expanded(CLEAR - ROUNDING);
    return on(square.island(), places).stream()
        .anyMatch(
            art ->
                art.polygon().contains(Cell.polygon(box))
                    && art.strokes().stream()
                        .allMatch(line -> CurveClip.inside(line.path(), box).isEmpty()));
  }

  private List<PieceArt> on(int island, List<Optional<Placement>> places) {
    List<PieceArt> on = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Optional<Placement> place = places.get(i);
      if (place.isPresent() && place.get().island() == island) {
        Affine map = place.get().map();
        PieceArt art = PieceArt.of(new PlacedPiece(pieces.get(i), map));
        List<PieceArt.Stroke> strokes =
            lines.apply(pieces.get(i)).stream()
                .map(path -> new PieceArt.Stroke(path.transformed(map), ""))
                .toList();
        on.add(new PieceArt(art.piece(), strokes, art.outline(), art.polygon(), art.bounds()));
      }
    }
    return on;
  }

  private List<Box> cores(Island island) {
    List<Box> cores = new ArrayList<>();
    for (int r = 0; r < island.rows(); r++) {
      for (int c = 0; c < island.columns(); c++) {
        cores.add(grid.core(island, r, c));
      }
    }
    return cores;
  }

  private static Optional<Box> room(
      double square, Box core, PieceArt art, List<PieceArt> on, Point near) {
    double side = square + 2 * CLEAR;
    Box all = core.expanded(-FROM_SEAM);
    if (!all.overlaps(art.bounds())) {
      return Optional.empty();
    }
    Box part = Cell.shared(all, art.bounds());
    if (part.width() < side || part.height() < side) {
      return Optional.empty();
    }
    FreeSpace space = new FreeSpace(part);
    for (PieceArt each : on) {
      if (each.bounds().overlaps(part)) {
        for (PieceArt.Stroke stroke : each.strokes()) {
          CurveClip.inside(stroke.path(), part)
              .forEach(path -> space.takeLine(path.flattened(CHORD), CHORD));
        }
      }
    }
    return space
        .finder(space.inside(art.outline()), true)
        .find(side, side, near)
        .map(box -> box.expanded(-CLEAR));
  }

  private static Placement placed(int island, Box box) {
    return new Placement(island, Affine.translation(box.minX(), box.minY()));
  }
}
