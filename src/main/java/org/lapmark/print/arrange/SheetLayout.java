package org.lapmark.print.arrange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.piece.Piece;
import org.lapmark.packing.Arrangement;
import org.lapmark.packing.Packer;
import org.lapmark.packing.Placement;
import org.lapmark.packing.Search;
import org.lapmark.packing.Shape;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.locationtech.jts.geom.Polygon;

/**
 * Where everything lies on the sheet: pieces, the test square, tiles and joins. Islands of tiles
 * lie apart, one below or beside the other, and share one system of codes: a row's letter is never
 * used twice for different heights.
 *
 * @param pieces the pieces at their places, by number
 * @param art what is drawn of each, in the same order
 * @param square the test square
 * @param endSquare a second one at the other end of a large sheet
 * @param cells the tiles that carry something, the one with the test square first, then in reading
 *     order
 * @param joins where tiles are joined, in reading order of the first tile
 * @param columns how many columns the codes count
 * @param rows how many rows they count
 * @param arranged the same places, for later editions
 */
public record SheetLayout(
    List<PlacedPiece> pieces,
    List<PieceArt> art,
    Box square,
    Optional<Box> endSquare,
    List<Cell> cells,
    List<Join> joins,
    int columns,
    int rows,
    Arranged arranged) {
  public static SheetLayout of(List<Piece> pieces, Paper paper, Tiling tiling, Search search) {
    List<Double> sides = List.of(TestSquare.SIDE, TestSquare.SMALL_SIDE);
    return of(pieces, SheetLayout::lines, sides, paper, tiling, search, Optional.empty());
  }

  /** All that is drawn of a piece, in its own coordinates. */
  public static List<Path> lines(Piece piece) {
    return PieceArt.of(new PlacedPiece(piece, Affine.IDENTITY)).strokes().stream()
        .map(PieceArt.Stroke::path)
        .toList();
  }

  /**
   * Whether pieces can be arranged, told without arranging them: each has room on an island of its
   * own. Where this isn't sure, it has to be tried.
   */
  public static boolean isSurelyThere(List<Piece> pieces, Paper paper, Tiling tiling) {
    return paper.filling().isPaged()
        && pieces.stream()
            .map(piece -> PieceArt.shape(piece).getEnvelopeInternal())
            .allMatch(
                box ->
                    Packer.isSurelyPlaced(
                        box.getWidth() + tiling.gap(),
                        box.getHeight() + tiling.gap(),
                        tiling.grid(paper)));
  }

  /** Leaves what it can where an earlier arrangement had it. */
  public static SheetLayout of(
      List<Piece> pieces,
      Function<Piece, List<Path>> lines,
      List<Double> sides,
      Paper paper,
      Tiling tiling,
      Search search,
      Optional<Arranged> earlier) {
    TileGrid grid = tiling.grid(paper);
    List<Piece> sorted = pieces.stream().sorted(Comparator.comparingInt(Piece::number)).toList();
    List<Shape> shapes = new ArrayList<>();
    shapes.add(TestSquare.shape(earlier.map(Arranged::side).orElse(TestSquare.SIDE)));
    for (Piece piece : sorted) {
      Polygon shape = PieceArt.shape(piece);
      List<Double> turns =
          paper.filling().isCutToLength() ? Turns.onRoll(shape, grid) : Turns.of(shape, grid);
      shapes.add(new Shape(shape, turns, false));
    }
    SquareInside inside = new SquareInside(sorted, grid, lines);
    List<Optional<Placement>> pins =
        earlier.isPresent()
            ? Pins.of(sorted, shapes, earlier.get(), grid, tiling.gap(), inside)
            : Collections.nCopies(shapes.size(), Optional.empty());
    Arranging arranging =
        new Arranging(
            shapes,
            grid,
            search,
            pins,
            earlier.map(Arranged::islands).orElse(List.of()),
            inside,
            sides);
    Arranging.Result result = paper.filling().read(arranging);
    Arrangement arrangement = result.arrangement();
    if (earlier.isEmpty()) {
      arrangement = IslandOrder.byNumbers(arrangement, sorted);
      if (paper.filling().isPaged()) {
        arrangement = IslandOrder.squareFirst(arrangement, result.side(), grid);
      }
    }
    return new Laying(grid, tiling, paper, sorted, arrangement, result.side()).lay();
  }

  /** The same without some tiles, which take their joins with them. */
  public SheetLayout without(List<Cell> left) {
    List<Join> stay =
        joins.stream()
            .filter(join -> !left.contains(join.first()) && !left.contains(join.second()))
            .toList();
    return new SheetLayout(
        pieces,
        art,
        square,
        endSquare,
        cells.stream().filter(cell -> !left.contains(cell)).toList(),
        Join.numbered(stay),
        columns,
        rows,
        arranged);
  }

  /** The lowest that anything reaches, in sheet coordinates. */
  public double bottom() {
    double bottom = square.maxY();
    for (PieceArt piece : art) {
      bottom = Math.max(bottom, piece.bounds().maxY());
    }
    return bottom;
  }

  public PlanQuality quality(Paper paper, Tiling tiling) {
    return PlanQuality.of(
        cells.size(),
        joins.size(),
        pieces.stream().map(placed -> PieceArt.shape(placed.piece())).toList(),
        tiling.grid(paper));
  }
}
