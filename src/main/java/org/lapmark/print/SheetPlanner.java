package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.packing.Search;
import org.lapmark.wording.Wording;

/**
 * Arranges pieces and draws tiles, page map and printing page.
 *
 * <p>Tiles overlap by 12 mm and meet on the middle line of their overlap, or meet edge to edge
 * where the pattern says so. A strip of 4.5 mm at the top of each tile's window is kept for its
 * caption. Pieces lie 2 mm apart. Only tiles that share a piece, or hang together through others
 * that do, are joined.
 *
 * @param wording the words on paper
 * @param styles the look of each role
 * @param lettering how wide words come out
 */
public record SheetPlanner(Wording wording, StyleSheet styles, LetteringMeasure lettering) {
  /**
   * Arranges the pieces that need paper and draws the tiles. A point of the sheet is drawn on a
   * tile's page at the same distance from the paper's window as it has from the tile's: nothing is
   * scaled or turned, but for a paper that is corrected for a printer. The first tile carries a
   * test square of 10 cm, role {@code test-square}.
   *
   * @param pattern the pattern in one variant
   * @param paper the paper
   * @return sheet and tiles; no tiles when no piece needs paper
   * @throws IllegalArgumentException when a piece is longer than 60 tiles
   */
  public SheetPlan plan(GradedPattern pattern, Paper paper) {
    return plan(pattern, paper, Optional.empty());
  }

  /**
   * Arranges the pieces and draws the tiles as {@link #plan(GradedPattern, Paper)} does, but leaves
   * pieces that still fit where an earlier arrangement on the same paper had them. Islands keep
   * their order and size, so that their tiles keep their codes; a piece that doesn't fit any more,
   * or is new, goes where there is room, or onto an island behind the others.
   *
   * @param pattern the pattern in one variant
   * @param paper the paper
   * @param earlier the earlier arrangement
   * @return sheet and tiles; no tiles when no piece needs paper
   * @throws IllegalArgumentException when a piece is longer than 60 tiles
   */
  public SheetPlan plan(GradedPattern pattern, Paper paper, Optional<Arranged> earlier) {
    List<Piece> pieces =
        pattern.pieces().stream().filter(piece -> piece.statedSize().isEmpty()).toList();
    if (pieces.isEmpty()) {
      return new SheetPlan(paper, 0, 0, List.of(), List.of());
    }
    if (!paper.isCorrected()) {
      return plan(pattern, paper, pieces, earlier);
    }
    // Everything is laid out in true millimetres, as it shall come out, and then made so much
    // smaller or larger as the printer will undo.
    SheetPlan printed = plan(pattern, paper.asPrinted(), pieces, earlier);
    Paper sent = printed.paper().beforePrinting();
    return new SheetPlan(
        sent,
        printed.columns(),
        printed.rows(),
        printed.pieces(),
        printed.tiles().stream()
            .map(
                tile ->
                    new Tile(
                        tile.code(),
                        tile.column(),
                        tile.row(),
                        tile.window(),
                        corrected(tile.page(), sent),
                        tile.pieces(),
                        tile.alternative(),
                        tile.core(),
                        tile.joined()))
            .toList(),
        printed.quality(),
        printed.arranged());
  }

  private static Drawing corrected(Drawing page, Paper sent) {
    Correction correction = sent.correction();
    Affine map = Affine.scaling(1 / correction.scaleX(), 1 / correction.scaleY());
    return new Drawing(
        sent.width(),
        sent.height(),
        page.items().stream().map(item -> Moved.by(map, item)).toList());
  }

  private SheetPlan plan(
      GradedPattern pattern, Paper paper, List<Piece> pieces, Optional<Arranged> earlier) {
    Tiling tiling = Tiling.of(pattern.source().masthead().joins());
    return switch (paper.kind()) {
      case PAGE -> drawn(pattern, paper, tiling, pieces, earlier, false);
      case SHEET -> drawn(pattern, paper, tiling, pieces, earlier, true);
      case ROLL -> roll(pattern, paper, tiling, pieces, earlier);
      case PROJECTOR -> projected(pattern, paper, tiling, pieces, earlier);
    };
  }

  private SheetPlan drawn(
      GradedPattern pattern,
      Paper paper,
      Tiling tiling,
      List<Piece> pieces,
      Optional<Arranged> earlier,
      boolean squareAtEnd) {
    SheetLayout layout =
        SheetLayout.of(pieces, paper, tiling, Search.DEFAULT, earlier, squareAtEnd);
    List<Tile> tiles = new TilePainter(this, pattern, paper, tiling, layout).paint();
    return new SheetPlan(
        paper,
        layout.columns(),
        layout.rows(),
        layout.pieces(),
        tiles,
        layout.quality(paper, tiling).saving(saved(pattern, pieces, paper, tiling, layout)),
        Optional.of(layout.arranged()));
  }

  /** What leaving rectangles off the pages saves. */
  private static int saved(
      GradedPattern pattern, List<Piece> pieces, Paper paper, Tiling tiling, SheetLayout layout) {
    List<Piece> left = pattern.pieces().stream().filter(piece -> !pieces.contains(piece)).toList();
    return left.isEmpty() || paper.kind() != Paper.Kind.PAGE
        ? 0
        : Savings.pages(left, pieces, layout.arranged(), tiling.grid(paper));
  }

  /** A roll is cut off below what lies on it, and a second test square. */
  private SheetPlan roll(
      GradedPattern pattern,
      Paper paper,
      Tiling tiling,
      List<Piece> pieces,
      Optional<Arranged> earlier) {
    SheetLayout whole = SheetLayout.of(pieces, paper, tiling, Search.DEFAULT, earlier, false);
    double used = whole.bottom() + tiling.gap() + SheetLayout.SQUARE + tiling.edge();
    double height = used + tiling.caption() + paper.height() - paper.window().height();
    if (whole.cells().size() > 1 || height > paper.height()) {
      return drawn(pattern, paper, tiling, pieces, earlier, true);
    }
    return drawn(
        pattern, paper.cut(Math.ceil(height)), tiling, pieces, Optional.of(whole.arranged()), true);
  }

  private SheetPlan projected(
      GradedPattern pattern,
      Paper paper,
      Tiling tiling,
      List<Piece> pieces,
      Optional<Arranged> earlier) {
    SheetLayout whole = SheetLayout.of(pieces, paper, tiling, Search.DEFAULT, earlier, false);
    Paper picture = paper;
    if (whole.cells().size() == 1) {
      double margins = paper.height() - paper.window().height();
      picture = paper.cut(Math.ceil(whole.bottom() + tiling.edge() + tiling.caption() + margins));
    }
    return new ProjectorPainter(this, pattern, picture, tiling, whole).plan();
  }

  /**
   * The page map: the sheet in small with tile codes, page numbers and piece numbers.
   *
   * @param plan the sheet
   * @param pages the PDF page number of each tile, by tile code; a tile without one shows its code
   *     alone
   * @param width the width to draw it in, in millimetres
   * @param height the greatest height, in millimetres
   * @return the drawing, at most as large as stated
   */
  public Drawing pageMap(SheetPlan plan, Map<String, Integer> pages, double width, double height) {
    return new PageMap(this, plan, pages).draw(width, height);
  }

  /**
   * A plan's pieces on one sheet, lines alone, at full size: what all tiles together show of them.
   *
   * @param plan the sheet; one with tiles
   * @return the drawing, whose top left corner is that of the box around all windows
   * @throws IllegalArgumentException when the plan has no tiles
   */
  public Drawing sheet(SheetPlan plan) {
    Box all =
        plan.tiles().stream()
            .map(Tile::window)
            .reduce(Box::union)
            .orElseThrow(() -> new IllegalArgumentException("a plan without tiles"));
    Affine map = Affine.translation(-all.minX(), -all.minY());
    List<Item> items = new ArrayList<>();
    for (PlacedPiece placed : plan.pieces()) {
      for (PieceArt.Stroke stroke : PieceArt.of(placed).strokes()) {
        items.add(new Item.Shape(List.of(stroke.path().transformed(map)), stroke.role()));
      }
    }
    return new Drawing(all.width(), all.height(), items);
  }

  /**
   * What the printing page shows at true scale: test squares, bars and card outline, with their
   * words and the table from measured length to error and custom scale; corrected on a paper that
   * is corrected for a printer.
   *
   * @param paper the paper
   * @return a drawing as large as the paper, to be printed unscaled
   */
  public Drawing printingPage(Paper paper) {
    return paper.isCorrected()
        ? corrected(new PrintingPage(this, paper.asPrinted()).draw(), paper)
        : new PrintingPage(this, paper).draw();
  }
}
