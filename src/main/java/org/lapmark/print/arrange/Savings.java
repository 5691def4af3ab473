package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.grade.piece.Piece;
import org.lapmark.packing.Arrangement;
import org.lapmark.packing.Packer;
import org.lapmark.packing.Placement;
import org.lapmark.packing.Search;
import org.lapmark.packing.Shape;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.piece.PieceArt;
import org.locationtech.jts.geom.Polygon;

/** What it saves that rectangles and strips are ruled onto the cloth and not printed. */
public final class Savings {
  /** Longer than so many pages, a strip is counted by its length. */
  private static final int LONG = 30;

  private Savings() {}

  /**
   * The pages that would be added.
   *
   * @param left the pieces that need no paper
   * @param pieces those that do, by number
   * @param arranged their places
   * @param grid the tiles
   * @return pages
   */
  public static int pages(List<Piece> left, List<Piece> pieces, Arranged arranged, TileGrid grid) {
    List<Shape> shapes = new ArrayList<>();
    List<Optional<Placement>> fixed = new ArrayList<>();
    for (Piece piece : pieces) {
      shapes.add(new Shape(PieceArt.shape(piece), List.of(0.0), false));
      fixed.add(Optional.of(arranged.pieces().get(piece.number())));
    }
    shapes.add(new Shape(TestSquare.outline(arranged.side()), List.of(0.0), false));
    fixed.add(Optional.of(arranged.square()));
    int before = tiles(shapes, fixed, arranged, grid);
    int counted = 0;
    for (Piece piece : left) {
      Polygon shape = PieceArt.shape(piece);
      List<Double> turns = Turns.of(shape, grid);
      int alone =
          turns.stream()
              .mapToInt(turn -> Turns.pages(shape.convexHull().getCoordinates(), turn, grid))
              .min()
              .orElseThrow();
      if (alone > LONG) {
        counted += alone;
      } else {
        shapes.add(new Shape(shape, turns, false));
        fixed.add(Optional.empty());
      }
    }
    return counted + tiles(shapes, fixed, arranged, grid) - before;
  }

  private static int tiles(
      List<Shape> shapes, List<Optional<Placement>> fixed, Arranged arranged, TileGrid grid) {
    Arrangement arrangement = Packer.pack(shapes, grid, Search.ONCE, fixed, arranged.islands());
    return arrangement.tiles();
  }
}
