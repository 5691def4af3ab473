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
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.packing.Effort;
import org.lapmark.packing.Search;
import org.lapmark.print.arrange.Arranged;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Savings;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.map.MapRows;
import org.lapmark.print.map.PageMap;
import org.lapmark.print.nest.Nest;
import org.lapmark.print.nest.NestArtist;
import org.lapmark.print.paper.Correction;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.CutGroup;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.BlankTiles;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.OneSize;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.SheetSubject;
import org.lapmark.print.sheet.Tile;
import org.lapmark.print.tile.TilePainter;
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
 * @param blankTiles whether tiles are drawn that show the inside of a piece and no line
 * @param effort how hard an arrangement of few pages is searched for
 */
public record SheetPlanner(
    Wording wording,
    StyleSheet styles,
    LetteringMeasure lettering,
    boolean blankTiles,
    Effort effort) {
  /**
   * A planner that draws every tile.
   *
   * @param wording the words on paper
   * @param styles the look of each role
   * @param lettering how wide words come out
   */
  public SheetPlanner(Wording wording, StyleSheet styles, LetteringMeasure lettering) {
    this(wording, styles, lettering, true, Effort.FULL);
  }

  /**
   * The same, but for tiles that show the inside of a piece and no line.
   *
   * @return a planner that leaves those tiles out
   */
  public SheetPlanner withoutBlankTiles() {
    return new SheetPlanner(wording, styles, lettering, false, effort);
  }

  /**
   * The same with another effort.
   *
   * @param other how hard an arrangement is searched for
   * @return the planner
   */
  public SheetPlanner with(Effort other) {
    return new SheetPlanner(wording, styles, lettering, blankTiles, other);
  }

  Typesetting setting() {
    return new Typesetting(wording, styles, lettering);
  }

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
  public SheetPlan plan(EvaluatedPattern pattern, Paper paper) {
    return plan(pattern, paper, Optional.empty());
  }

  /**
   * Arranges the pieces that need paper as {@link #plan(EvaluatedPattern, Paper)} does, and draws
   * nothing: what can be arranged can be drawn.
   *
   * @param pattern the pattern in one variant
   * @param paper the paper
   * @throws IllegalArgumentException when a piece is longer than 60 tiles
   */
  public void arrange(EvaluatedPattern pattern, Paper paper) {
    SheetSubject subject = new OneSize(setting(), pattern);
    Tiling tiling = Tiling.of(pattern.source().masthead().joins());
    Paper printed = paper.isCorrected() ? paper.asPrinted() : paper;
    if (!SheetLayout.isSurelyThere(subject.pieces(), printed, tiling)) {
      layout(subject, printed, tiling, Optional.empty());
    }
  }

  /**
   * Arranges the pieces and draws the tiles as {@link #plan(EvaluatedPattern, Paper)} does, but
   * leaves pieces that still fit where an earlier arrangement on the same paper had them. Islands
   * keep their order and size, so that their tiles keep their codes; a piece that doesn't fit any
   * more, or is new, goes where there is room, or onto an island behind the others.
   *
   * @param pattern the pattern in one variant
   * @param paper the paper
   * @param earlier the earlier arrangement
   * @return sheet and tiles; no tiles when no piece needs paper
   * @throws IllegalArgumentException when a piece is longer than 60 tiles
   */
  public SheetPlan plan(EvaluatedPattern pattern, Paper paper, Optional<Arranged> earlier) {
    return plan(new OneSize(setting(), pattern), paper, earlier);
  }

  /**
   * Stacks the pieces of all sizes, arranges them and draws the tiles, each size on a layer of its
   * own. A piece's sizes lie with their grainlines parallel; what they have in common, within
   * 0.0015 mm, is drawn once. Everything else holds as for one size.
   *
   * @param patterns the pattern in each size, in the order of the sizes
   * @param paper the paper
   * @return sheet, tiles and layers; no tiles when no piece needs paper
   * @throws IllegalArgumentException when a piece is longer than 60 tiles
   */
  public NestedPlan nested(List<EvaluatedPattern> patterns, Paper paper) {
    NestArtist artist = new NestArtist(setting(), Nest.of(patterns));
    SheetPlan sheet = plan(artist, paper, Optional.empty());
    return new NestedPlan(
        sheet, artist.size(), artist.layers(), artist.hidden(), artist.placed(sheet));
  }

  private SheetPlan plan(SheetSubject subject, Paper paper, Optional<Arranged> earlier) {
    if (subject.pieces().isEmpty()) {
      return new SheetPlan(paper, 0, 0, List.of(), List.of());
    }
    if (!paper.isCorrected()) {
      return onPaper(subject, paper, earlier);
    }
    // Everything is laid out in true millimetres, as it shall come out, and then made so much
    // smaller or larger as the printer will undo.
    SheetPlan printed = onPaper(subject, paper.asPrinted(), earlier);
    Paper sent = printed.paper().beforePrinting();
    return new SheetPlan(
        sent,
        printed.columns(),
        printed.rows(),
        printed.pieces(),
        printed.tiles().stream().map(tile -> tile.on(corrected(tile.page(), sent))).toList(),
        printed.quality(),
        printed.arranged());
  }

  private static Drawing corrected(Drawing page, Paper sent) {
    Correction correction = sent.correction();
    Affine map = Affine.scaling(1 / correction.scaleX(), 1 / correction.scaleY());
    return new Drawing(
        sent.width(),
        page.height() / correction.scaleY(),
        page.items().stream().map(item -> item.transformed(map)).toList());
  }

  private SheetPlan onPaper(SheetSubject subject, Paper paper, Optional<Arranged> earlier) {
    Tiling tiling = Tiling.of(subject.pattern().source().masthead().joins());
    return paper.filling().isProjected()
        ? projected(subject, paper, tiling, earlier)
        : drawn(subject, paper, tiling, earlier);
  }

  private SheetPlan drawn(
      SheetSubject subject, Paper paper, Tiling tiling, Optional<Arranged> earlier) {
    SheetLayout whole = layout(subject, paper, tiling, earlier);
    List<Cell> blank = BlankTiles.of(whole, subject::lines);
    SheetLayout layout = blankTiles ? whole : whole.without(blank);
    List<Tile> tiles =
        TilePainter.paint(
            DraftSheet.of(
                setting(),
                subject,
                paper,
                tiling,
                subject.drawn(layout, false),
                blankTiles ? blank : List.of()));
    double longest = tiles.stream().mapToDouble(tile -> tile.page().height()).max().orElseThrow();
    return new SheetPlan(
        paper.cut(longest),
        layout.columns(),
        layout.rows(),
        layout.pieces(),
        tiles,
        layout
            .quality(paper, tiling)
            .saving(saved(subject, paper, tiling, layout))
            .blank(blank.size(), !blankTiles),
        Optional.of(layout.arranged()));
  }

  private SheetLayout layout(
      SheetSubject subject, Paper paper, Tiling tiling, Optional<Arranged> earlier) {
    return SheetLayout.of(
        subject.pieces(),
        subject::lines,
        subject.squares(),
        paper,
        tiling,
        Search.of(effort),
        earlier);
  }

  /** What leaving rectangles off the pages saves. */
  private static int saved(SheetSubject subject, Paper paper, Tiling tiling, SheetLayout layout) {
    List<Piece> left =
        subject.pattern().pieces().stream()
            .filter(piece -> piece.statedSize().isPresent())
            .toList();
    return left.isEmpty() || !paper.filling().isPaged()
        ? 0
        : Savings.pages(left, subject.pieces(), layout.arranged(), tiling.grid(paper));
  }

  private SheetPlan projected(
      SheetSubject subject, Paper paper, Tiling tiling, Optional<Arranged> earlier) {
    SheetLayout whole = layout(subject, paper, tiling, earlier);
    SheetSubject.Drawn drawn = subject.drawn(whole, true);
    Paper picture = paper;
    if (whole.cells().size() == 1) {
      double margins = paper.height() - paper.window().height();
      double height =
          whole.bottom() + belowPieces(drawn) + tiling.edge() + tiling.caption() + margins;
      picture = paper.cut(Math.min(paper.height(), Math.ceil(height)));
    }
    return new ProjectorPainter(setting(), subject, picture, tiling, drawn).plan();
  }

  /** How far names reach beyond the lowest piece, in millimetres. */
  private static double belowPieces(SheetSubject.Drawn drawn) {
    double pieces =
        drawn.layout().art().stream().mapToDouble(art -> art.bounds().maxY()).max().orElse(0);
    double names =
        drawn.names().stream().mapToDouble(name -> name.box().maxY()).max().orElse(pieces);
    return Math.max(0, names - pieces);
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
    if (plan.tiles().isEmpty()) {
      return new PageMap(setting(), plan, pages).draw(width, height);
    }
    return new PageMap(setting(), MapRows.of(plan, width, height), pages).draw(width, height);
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
   * One piece at full size for a machine that cuts or plots it, in the panel's own direction, whole
   * also where paper shows a half: a group for each kind of line, named as {@link CutGroup} says,
   * with 5 mm around.
   *
   * @param pattern the pattern in one variant
   * @param piece one of its pieces
   * @return the drawing
   */
  public Drawing cutSheet(EvaluatedPattern pattern, Piece piece) {
    return new CutSheet(setting(), pattern, piece).draw();
  }

  /**
   * What a piece's lettering says of its cuts and of its allowances.
   *
   * @param pattern the pattern in one variant
   * @param piece one of its pieces
   * @return a line for each cut, then one for the allowances
   */
  public List<String> cutsAndAllowance(EvaluatedPattern pattern, Piece piece) {
    return new PieceLabel(setting(), pattern).cutsAndAllowance(piece);
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
        ? corrected(new PrintingPage(setting(), paper.asPrinted()).draw(), paper)
        : new PrintingPage(setting(), paper).draw();
  }
}
