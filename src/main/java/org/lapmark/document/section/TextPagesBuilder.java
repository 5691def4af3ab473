package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.lapmark.document.manual.CutWidth;
import org.lapmark.document.manual.DateWords;
import org.lapmark.document.manual.PageRanges;
import org.lapmark.document.manual.RuledMarks;
import org.lapmark.document.pdf.Program;
import org.lapmark.drawing.Drawing;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.Cut;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.grade.StatedSize;
import org.lapmark.measure.NumberWords;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.PrintedValue;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Value;
import org.lapmark.print.SheetPlan;
import org.lapmark.print.Tile;
import org.lapmark.source.Masthead;
import org.lapmark.source.PieceSource;
import org.lapmark.wording.Wording;

/** Works out what the text pages say of one pattern in one variant on one paper. */
public final class TextPagesBuilder {
  private final GradedPattern pattern;
  private final SheetPlan plan;
  private final Wording wording;
  private final PrintForm form;

  public TextPagesBuilder(GradedPattern pattern, SheetPlan plan, Wording wording) {
    this.pattern = pattern;
    this.plan = plan;
    this.wording = wording;
    this.form = pattern.source().masthead().form().with(NumberWords.of(wording));
  }

  /**
   * All that the pages say.
   *
   * @param cover the picture on the cover
   * @param map draws the page map, given the page number of each tile
   * @param firstTilePage the page number of the first tile
   * @param apart whether the tiles have a file of their own
   */
  public TextPages build(
      Optional<Drawing> cover, Optional<Drawing> map, int firstTilePage, boolean apart) {
    Masthead masthead = pattern.source().masthead();
    List<TextPages.CutPiece> pieces = pattern.pieces().stream().map(this::cutPiece).toList();
    return new TextPages(
        masthead.language().toLanguageTag(),
        masthead.title().text(),
        masthead.studio().text(),
        Optional.ofNullable(masthead.designer()).map(SourceText::text),
        pattern.variant().size(),
        masthead.edition().text(),
        DateWords.inWords(masthead.date(), wording.locale()),
        printed(masthead.summary()),
        printed(masthead.copyright()),
        printed(masthead.note()),
        Program.name(),
        new TextPages.Page(plan.paper().id(), plan.paper().width(), plan.paper().height()),
        cover.map(drawing -> figure("cover", drawing)),
        pattern.source().finished().stream()
            .map(row -> new TextPages.Finished(printed(row.label()), printed(row.value())))
            .toList(),
        pieces,
        totals(),
        map.map(drawing -> pageMap(drawing, firstTilePage, apart)));
  }

  /** The pieces as one line of text, for a picture's text alternative. */
  public String piecesInWords() {
    return String.join(
        wording.text("list.between"),
        pattern.pieces().stream()
            .map(
                piece ->
                    wording.text(
                        "piece.in-words", Map.of("number", piece.number(), "name", piece.name())))
            .toList());
  }

  private static TextPages.Figure figure(String name, Drawing drawing) {
    return new TextPages.Figure(name, drawing.width(), drawing.height());
  }

  private List<Object> printed(TemplateText text) {
    return text == null ? List.of() : text.print(pattern.scope(), pattern.variant(), form);
  }

  private TextPages.CutPiece cutPiece(Piece piece) {
    return new TextPages.CutPiece(
        piece.number(),
        piece.name(),
        piece.cuts().stream()
            .map(
                cut ->
                    new TextPages.MaterialCut(
                        cut.materialName(), cut.count(), cut.reversed(), cut.mirroring()))
            .toList(),
        piece.statedSize().map(size -> cutSize(piece, size)),
        marks(piece),
        piece.isFolded());
  }

  private Position position(Piece piece) {
    return pattern.source().pieces().stream()
        .filter(stated -> stated.number() == piece.number())
        .map(PieceSource::position)
        .findFirst()
        .orElse(Position.ofFile(pattern.source().folder()));
  }

  /** What is marked on a piece that is ruled, line by line. */
  public List<List<Object>> marks(Piece piece) {
    return piece
        .statedSize()
        .map(
            size ->
                new RuledMarks(wording, form.ruled(), pattern.variant(), position(piece))
                    .lines(size))
        .orElse(List.of());
  }

  /** How a cut size is printed. */
  public TextPages.CutSize cutSize(Piece piece, StatedSize size) {
    Position position = position(piece);
    return new TextPages.CutSize(
        ruled(CutWidth.of(pattern, piece, size), "cut_width", position),
        ruled(Value.Quantity.length(size.height()), "cut_height", position),
        size.bias());
  }

  /** A computed length that stands in no text of the author's. */
  private PrintedValue ruled(Value length, String name, Position position) {
    return new PrintedValue(
        name, pattern.variant(), length, CutWidth.print(length, form.ruled()), position);
  }

  private TextPages.Totals totals() {
    Set<String> materials = new LinkedHashSet<>();
    int cuts = 0;
    int reversed = 0;
    for (Piece piece : pattern.pieces()) {
      for (Cut cut : piece.cuts()) {
        materials.add(cut.material());
        cuts += cut.count();
        reversed += cut.reversed();
      }
    }
    List<Piece> ruled =
        pattern.pieces().stream().filter(piece -> piece.statedSize().isPresent()).toList();
    List<Piece> marked =
        ruled.stream()
            .filter(piece -> !piece.statedSize().orElseThrow().marks().isEmpty())
            .toList();
    return new TextPages.Totals(
        pattern.pieces().size(),
        cuts,
        reversed,
        materials.size(),
        ruled.size(),
        !marked.isEmpty(),
        marked.stream()
            .anyMatch(piece -> piece.cuts().stream().anyMatch(cut -> cut.reversed() > 0)),
        ruled.stream().anyMatch(Piece::hasGrain));
  }

  private TextPages.PageMap pageMap(Drawing drawing, int firstTilePage, boolean apart) {
    Map<Integer, List<Integer>> indexes = new TreeMap<>();
    for (int i = 0; i < plan.tiles().size(); i++) {
      for (int number : plan.tiles().get(i).pieces()) {
        indexes.computeIfAbsent(number, key -> new ArrayList<>()).add(i);
      }
    }
    List<TextPages.PiecePages> pieces = new ArrayList<>();
    for (Piece piece : pattern.pieces()) {
      List<Integer> tiles = indexes.getOrDefault(piece.number(), List.of());
      if (!tiles.isEmpty()) {
        String codes =
            String.join(
                wording.text("list.between"),
                tiles.stream().map(i -> plan.tiles().get(i).code()).toList());
        String pages =
            PageRanges.text(tiles.stream().map(i -> firstTilePage + i).toList(), wording);
        pieces.add(new TextPages.PiecePages(piece.number(), piece.name(), codes, pages));
      }
    }
    List<Integer> blank = new ArrayList<>();
    for (int i = 0; i < plan.tiles().size(); i++) {
      if (plan.tiles().get(i).blank()) {
        blank.add(firstTilePage + i);
      }
    }
    int last = firstTilePage + plan.tiles().size() - 1;
    return new TextPages.PageMap(
        figure("map", drawing),
        apart,
        firstTilePage,
        last,
        plan.tiles().size(),
        plan.quality().joins(),
        plan.quality().savedPages(),
        blank.size(),
        PageRanges.text(blank, wording),
        plan.quality().leftOutPages(),
        pieces);
  }

  /**
   * The page number of each tile.
   *
   * @param plan the tiles
   * @param firstTilePage that of the first
   * @return page numbers by tile code
   */
  public static Map<String, Integer> tilePages(SheetPlan plan, int firstTilePage) {
    Map<String, Integer> pages = new LinkedHashMap<>();
    for (Tile tile : plan.tiles()) {
      pages.put(tile.code(), firstTilePage + pages.size());
    }
    return pages;
  }
}
